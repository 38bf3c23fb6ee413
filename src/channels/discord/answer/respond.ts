import { InteractionResponseType, MessageFlags } from 'discord.js';
import type { Payload } from '../render/payloads.js';
import type { Answer } from './desk.js';

/** What is sent back to an interaction first. */
export interface FirstAnswer {
  readonly type: InteractionResponseType;
  readonly data?: unknown;
}

/** The two ways out of an interaction: the first answer, and editing it when it was deferred. */
export interface WayOut {
  /** False where the first answer didn't arrive, so that there is nothing to edit. */
  first(answer: FirstAnswer): Promise<boolean>;
  edit(payload: Payload): Promise<void>;
}

/** A payload that only who acted sees. */
function hidden(payload: Payload): Payload {
  return { ...payload, flags: payload.flags | MessageFlags.Ephemeral };
}

function firstOf(answer: Answer): FirstAnswer {
  if ('pong' in answer) return { type: InteractionResponseType.Pong };
  if ('modal' in answer) return { type: InteractionResponseType.Modal, data: answer.modal };
  if ('suggest' in answer) {
    const choices = answer.suggest.map(({ value, label }) => ({ name: label, value }));
    return { type: InteractionResponseType.ApplicationCommandAutocompleteResult, data: { choices } };
  }
  const [payload] = answer.show;
  return {
    type: InteractionResponseType.ChannelMessageWithSource,
    ...(payload === undefined ? {} : { data: hidden(payload) }),
  };
}

/** What takes a form's place when it comes too late to be opened. */
function lateOf(answer: Answer): Payload | undefined {
  if ('show' in answer) return answer.show[0];
  return 'modal' in answer ? answer.instead[0] : undefined;
}

/**
 * Sends an answer when it is there, or a deferral after `deferAfter` milliseconds and then the answer in its place. A
 * deferral says only that work goes on. Suggestions are never deferred.
 */
export async function respond(
  answering: Promise<Answer>,
  way: WayOut,
  deferAfter: number | null,
): Promise<void> {
  if (deferAfter === null) {
    await way.first(firstOf(await answering));
    return;
  }
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<null>((done) => {
    timer = setTimeout(() => done(null), deferAfter);
  });
  const answer = await Promise.race([answering, late]);
  clearTimeout(timer);
  if (answer !== null) {
    await way.first(firstOf(answer));
    return;
  }
  const deferral = {
    type: InteractionResponseType.DeferredChannelMessageWithSource,
    data: { flags: MessageFlags.Ephemeral },
  };
  if (!(await way.first(deferral))) return;
  const payload = lateOf(await answering);
  if (payload !== undefined) await way.edit(payload);
}

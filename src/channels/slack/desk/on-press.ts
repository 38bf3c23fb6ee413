import type { AckFn, BlockAction, ButtonAction, RespondFn } from '@slack/bolt';
import type { ModalView } from '@slack/types';
import type { Who } from '../../../../shared/channel.js';
import { unpackMemo, unpackPress, type Press } from '../press-code.js';
import { formsOf } from '../render/blocks.js';
import { answerView, formView } from '../render/view.js';
import { say } from '../words.js';
import {
  privateAnswer,
  privateWords,
  refused,
  respondWith,
  viewOf,
  viewWords,
  type Private,
} from './answers.js';
import { codeOf, slackerOf, takeLook, tried, whoIs, withWayOn, type Desk, type Shown } from './desk.js';
import { bind } from './here.js';
import { inTime } from './in-time.js';

/** A pressed button, with the ways in which its update can be answered. */
export interface Pressed {
  readonly body: BlockAction;
  readonly action: ButtonAction;
  readonly ack: AckFn<void>;
  readonly respond: RespondFn | undefined;
}

/** What is shown after a press: a page of an answer, or a form that opens. */
type Outcome =
  | { readonly kind: 'answer'; readonly shown: Shown; readonly page: number; readonly inChannel?: true }
  | { readonly kind: 'form'; readonly view: ModalView };

const refusal = (words: string): Outcome => ({ kind: 'answer', shown: refused(words), page: 0 });

/** The id by which a press is known when it comes again. */
function updateId({ body, action }: Pressed): string {
  return `slack:a:${body.user.id}:${action.action_ts}:${action.block_id}:${action.action_id}`;
}

async function outcomeOf(desk: Desk, who: Who, press: Press, pressed: Pressed): Promise<Outcome> {
  switch (press.press) {
    case 'act': {
      const { kind, name, args } = press.action;
      if (kind === 'look')
        return { kind: 'answer', shown: await takeLook(desk, who, { name, args }), page: 0 };
      const reply = await desk.house.move({ id: updateId(pressed), who, move: name, fields: args });
      return { kind: 'answer', shown: await withWayOn(desk, who, { reply, look: null }), page: 0 };
    }
    case 'page': {
      const shown = await takeLook(desk, who, press.look);
      // Pages of a private message and of a view are parted differently, so each goes on where it stands.
      const where = pressed.body.view ? {} : { inChannel: true as const };
      return { kind: 'answer', shown, page: press.page, ...where };
    }
    case 'fill': {
      const { reply, look } = await takeLook(desk, who, press.look);
      const form = formsOf(reply.messages)[press.form];
      if (!reply.done || !form) return refusal(reply.done ? say('too old') : refusedText(reply.messages));
      return { kind: 'form', view: form.main ? answerView(reply.messages, look) : formView(form) };
    }
    case 'fill here':
      return { kind: 'form', view: formView(press.form) };
    case 'bind': {
      const room = pressed.body.channel?.id ?? '';
      return {
        kind: 'answer',
        shown: await bind(desk, who, { ...slackerOf(pressed.body), room }, press),
        page: 0,
        inChannel: true,
      };
    }
    default:
      return press satisfies never;
  }
}

function refusedText(messages: readonly { readonly summary: string }[]): string {
  return messages.map(({ summary }) => summary).join(' ') || say('nothing here');
}

/** Stands a view where the press was made: beside an open form, in place of an answer, or as a new page. */
async function showView(desk: Desk, { body }: Pressed, view: ModalView): Promise<boolean> {
  const { client } = desk;
  const { trigger_id } = body;
  const from = body.view;
  if (!from) return tried(desk, 'views.open', () => client.views.open({ trigger_id, view }));
  const filling = unpackMemo(from.private_metadata).send !== null;
  // What is typed in a form stays beneath what is pushed upon it.
  if (filling && (await tried(desk, 'views.push', () => client.views.push({ trigger_id, view }))))
    return true;
  return tried(desk, 'views.update', () => client.views.update({ view_id: from.id, hash: from.hash, view }));
}

/** Answers a press that comes while too many others are worked on: nothing is done, and it may be pressed again. */
export async function onBusyPress(desk: Desk, pressed: Pressed): Promise<void> {
  await pressed.ack();
  if (pressed.body.view) await showView(desk, pressed, viewWords(say('busy')));
  else await respondWith(desk, pressed.respond, privateWords(say('busy')), false);
}

/** Whether a private message was pressed, which a new one may replace; a message of the channel stays. */
function wasPrivate({ body }: Pressed): boolean {
  return body.container['is_ephemeral'] === true;
}

async function show(desk: Desk, pressed: Pressed, outcome: Outcome): Promise<void> {
  const inView = pressed.body.view !== undefined;
  if (outcome.kind === 'form') {
    if (await showView(desk, pressed, outcome.view)) return;
    await respondWith(desk, pressed.respond, privateWords(say('form too late')), false);
    return;
  }
  const { shown, page } = outcome;
  const nothingToRead = shown.look === null && shown.reply.messages.length === 0;
  const short = outcome.inChannel === true || (!inView && nothingToRead);
  const privately: Private = privateAnswer(shown, page);
  if (!short && (await showView(desk, pressed, viewOf(shown, page)))) return;
  await respondWith(desk, pressed.respond, privately, outcome.inChannel === true && wasPrivate(pressed));
}

/** Answers a press: what it does is kept before it is acknowledged; where keeping failed it isn't, and Slack shows so. */
export async function onPress(desk: Desk, pressed: Pressed): Promise<void> {
  const { body, action, ack, respond } = pressed;
  const press = unpackPress(action.value);
  if (!press) {
    await ack();
    await respondWith(desk, respond, privateWords(say('too old')), false);
    return;
  }
  const who = await whoIs(desk, slackerOf(body));
  if (!who) {
    await ack();
    await show(desk, pressed, refusal(say('stranger')));
    return;
  }
  const early = async (): Promise<void> => {
    await ack();
    if (!body.view) await respondWith(desk, respond, privateWords(say('working')), false);
    else await showView(desk, pressed, viewWords(say('working')));
  };
  try {
    const { value, late } = await inTime(outcomeOf(desk, who, press, pressed), early);
    if (!late) await ack();
    await show(desk, pressed, value);
  } catch (why) {
    desk.options.log.error({ code: codeOf(why), press: press.press }, 'a press failed');
    await respondWith(desk, respond, privateWords(say('not kept')), false);
    throw why;
  }
}

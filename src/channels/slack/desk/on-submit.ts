import type { AckFn, ViewOutput, ViewResponseAction, ViewSubmitAction } from '@slack/bolt';
import { createHash } from 'node:crypto';
import type { Reply, Who } from '../../../../shared/channel.js';
import { Fault } from '../../../../shared/fault.js';
import { unpackMemo, type ViewMemo } from '../press-code.js';
import { say } from '../words.js';
import { lineOf, viewOf, viewWords } from './answers.js';
import { errors } from './errors.js';
import { codeOf, slackerOf, tried, whoIs, withWayOn, type Desk, type Shown } from './desk.js';
import { inTime } from './in-time.js';
import { readFile } from './read-file.js';
import { refilled } from './refill.js';
import { readState } from './state.js';

export interface Submitted {
  readonly body: ViewSubmitAction;
  readonly view: ViewOutput;
  readonly ack: AckFn<ViewResponseAction>;
}

/** The id by which a submission is known when it comes again: the view as it stood, with what was filled in, since a form that was refused is sent again from the same view. */
function updateId({ view }: Submitted): string {
  const filled = createHash('sha256')
    .update(JSON.stringify(view.state.values))
    .digest('base64url')
    .slice(0, 16);
  return `slack:v:${view.id}:${view.hash}:${filled}`;
}

async function fieldsOf(desk: Desk, { view }: Submitted): Promise<Readonly<Record<string, string>>> {
  const { fields, files } = readState(view.state.values);
  const read: Record<string, string> = {};
  for (const [name, file] of Object.entries(files))
    read[name] = await readFile(file, desk.token, desk.options);
  // A file counts before what is typed into a field of the same name.
  return { ...fields, ...read };
}

async function perform(
  desk: Desk,
  who: Who,
  send: NonNullable<ViewMemo['send']>,
  submitted: Submitted,
): Promise<Shown> {
  let fields: Readonly<Record<string, string>>;
  try {
    fields = await fieldsOf(desk, submitted);
  } catch (why) {
    if (!(why instanceof Fault)) throw why;
    return { reply: refusalOf(who, why.remedy), look: null };
  }
  const id = updateId(submitted);
  if (send.by === 'command') {
    const { name, action } = send;
    const reply = await desk.house.command(who, id, {
      name,
      action,
      options: { ...send.options, ...fields },
    });
    return { reply, look: null };
  }
  const { kind, name, args } = send.action;
  const all = { ...args, ...fields };
  if (kind === 'move') {
    const reply = await desk.house.move({ id, who, move: name, fields: all });
    return withWayOn(desk, who, { reply, look: null });
  }
  const reply = await desk.house.look(who, name, all);
  return { reply, look: JSON.stringify(all).length > 1000 ? null : { name, args: all } };
}

function refusalOf(who: Who, text: string): Reply {
  return {
    done: false,
    messages: [{ audience: { to: 'person', person: who.person }, summary: text, blocks: [] }],
  };
}

function answer(view: ViewOutput, shown: Shown): ViewResponseAction {
  return shown.reply.done ? { response_action: 'update', view: viewOf(shown) } : errors(view, lineOf(shown));
}

/** Answers a submitted form: the reply is the acknowledgement itself, in place of the form, or as an error in it; where it takes long, "working" stands in its place first. */
export async function onSubmit(desk: Desk, submitted: Submitted): Promise<void> {
  const { body, view, ack } = submitted;
  const { send } = unpackMemo(view.private_metadata);
  if (!send) return ack();
  const who = await whoIs(desk, slackerOf(body));
  if (!who) return ack(errors(view, say('stranger')));
  const work = perform(desk, who, send, submitted).catch((why: unknown): Shown => {
    desk.options.log.error({ code: codeOf(why), view: view.id }, 'a form was not kept');
    return { reply: refusalOf(who, say('not kept')), look: null };
  });
  const early = (): Promise<void> =>
    Promise.resolve(ack({ response_action: 'update', view: viewWords(say('working')) }));
  const { value, late } = await inTime(work, early);
  if (!late) return ack(answer(view, value));
  // The form has gone by now, so a refusal brings it back as it was filled in.
  const shown = value.reply.done ? viewOf(value) : refilled(view, lineOf(value));
  await tried(desk, 'views.update', () => desk.client.views.update({ view_id: view.id, view: shown }));
}

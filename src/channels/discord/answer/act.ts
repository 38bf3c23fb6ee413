import type { Reply, Who } from '../../../../shared/channel.js';
import type { Action } from '../../../../shared/messages.js';
import type { From } from '../read/interaction.js';
import type { Answer, Desk } from './desk.js';
import { lookButton, shown } from './show.js';

/** Looks that a pupil has and whoever teaches has under another name. */
const sameForStaff: Readonly<Record<string, string>> = { 'for-you': 'waiting', turn: 'where-are-we' };

/** The look that somebody gets who asks for one: staff have none of their own turns. */
export async function lookFor(desk: Desk, who: Who, action: Action): Promise<Action> {
  const other = sameForStaff[action.name];
  if (other === undefined || action.kind !== 'look') return action;
  const profile = await desk.house.profile(who);
  return profile === null || profile.role === 'pupil' ? action : { ...action, name: other };
}

/** Takes a look and shows it. */
export async function showLook(desk: Desk, from: From, who: Who, action: Action): Promise<Answer> {
  const own = await lookFor(desk, who, action);
  const reply = await desk.house.look(who, own.name, own.args);
  return shown(desk, from, reply.messages, own);
}

/** Shows what a move led to; where it says nothing to who made it, their next thing. */
export async function showReply(desk: Desk, from: From, who: Who, reply: Reply): Promise<Answer> {
  const turn: Action = { kind: 'look', name: 'turn', args: {} };
  if (reply.done && reply.messages.length === 0) return showLook(desk, from, who, turn);
  return shown(desk, from, reply.messages, null, [lookButton('go on', 'turn')]);
}

/** The id under which an interaction is done once. */
export function updateId({ id }: From): string {
  return `discord:${id}`;
}

/** Makes a move or takes a look. */
export async function act(desk: Desk, from: From, who: Who, action: Action): Promise<Answer> {
  if (action.kind === 'look') return showLook(desk, from, who, action);
  const reply = await desk.house.move({ id: updateId(from), who, move: action.name, fields: action.args });
  return showReply(desk, from, who, reply);
}

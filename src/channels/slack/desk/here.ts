import type { Who } from '../../../../shared/channel.js';
import { asId, type GroupId } from '../../../../shared/ids.js';
import { namedAdults } from '../../../../shared/roles.js';
import type { Press } from '../press-code.js';
import { say } from '../words.js';
import { messageOf, refused } from './answers.js';
import type { Desk, Shown, Slacker } from './desk.js';

/** A channel of a workspace, and who speaks in it. */
export interface Spot extends Slacker {
  readonly room: string;
}

type Bind = Extract<Press, { press: 'bind' }>;

const mayBind: readonly string[] = ['tutor', 'teacher', 'administrator'];

function asked(words: string, presses: readonly { readonly label: string; readonly press: Bind }[]): Shown {
  return { reply: { done: true, messages: [messageOf(words)] }, look: null, presses };
}

function staffPlace(): Bind {
  return { press: 'bind', audience: { to: 'staff', group: null }, name: say('here staff'), sure: false };
}

async function audiences(desk: Desk, who: Who): Promise<readonly Bind[]> {
  const groups = await desk.house.suggest(who, 'groups', '');
  return [
    ...groups.map(({ value, label }): Bind => ({
      press: 'bind',
      audience: { to: 'channel', group: asId<GroupId>(value) },
      name: label,
      sure: false,
    })),
    staffPlace(),
  ];
}

/** Ties a channel to an audience, after the age of pupils is confirmed. */
export async function bind(desk: Desk, who: Who, spot: Spot, press: Bind): Promise<Shown> {
  const { audience, name } = press;
  if (audience.to === 'channel' && !press.sure) {
    return asked(say('here age', { group: name }), [
      { label: say('here age sure', { group: name }), press: { ...press, sure: true } },
    ]);
  }
  const reply = await desk.house.bindPlace(who, 'slack', spot.tenant, spot.room, audience);
  if (!reply.done) return { reply, look: null };
  const words = [
    say('here bound', { place: name }),
    ...(audience.to === 'staff' ? [say('here pupils in staff')] : []),
  ];
  return { reply: { done: true, messages: [messageOf(words.join(' '))] }, look: null };
}

/** Answers "/here staff", "/here group:Limpets" or "/here" alone, which asks. */
export async function here(desk: Desk, who: Who, spot: Spot, text: string): Promise<Shown> {
  const profile = await desk.house.profile(who);
  const named = namedAdults.some((role) => role === profile?.role);
  if (!profile || !(named || mayBind.includes(profile.role))) return refused(say('here nobody may'));
  if (spot.room.startsWith('D')) return refused(say('here not direct'));
  // A named adult ties a place of their own, where calls alone come.
  if (named) return bind(desk, who, spot, staffPlace());
  const all = await audiences(desk, who);
  const wanted = text
    .replace(/^(?:group|audience):\s*/iu, '')
    .replace(/^["“”]|["“”]$/gu, '')
    .trim()
    .toLowerCase();
  const found =
    wanted === 'staff'
      ? all.find(({ audience }) => audience.to === 'staff')
      : all.find(({ audience, name }) => audience.to === 'channel' && name.toLowerCase() === wanted);
  if (found) return bind(desk, who, spot, found);
  return asked(
    say('here which'),
    all.map((press) => ({ label: press.name, press })),
  );
}

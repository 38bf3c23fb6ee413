import { createHash } from 'node:crypto';
import type { House, Reply, Who } from '../../shared/channel.js';
import { Fault } from '../../shared/fault.js';
import { asId, type ClassId, type GroupId, type PersonId } from '../../shared/ids.js';
import type { Block, Message } from '../../shared/messages.js';
import { namedAdults } from '../../shared/roles.js';
import { wordsOf } from '../../shared/said.js';
import type { CommandAction } from '../../shared/slash-command.js';
import type { Telling } from '../../shared/tellings.js';
import type { Instant } from '../../shared/time.js';
import { fill } from '../coaching/catalogue.js';
import { doorWords } from '../coaching/door-words.js';
import { pupilsOf } from '../practice/lookup.js';
import type { Person } from '../practice/state.js';
import type { Classes } from './classes.js';
import { whenWords } from './calendar.js';
import type { Doors } from './doors.js';
import { note } from './handle.js';

export interface SlipsDeps {
  readonly doors: Doors;
  readonly classes: Classes;
  readonly baseUrl: () => string;
  readonly now: () => Instant;
  /** Says something that no event says. */
  readonly tell: (classId: ClassId, telling: Telling) => Promise<void>;
}

type Slot = Readonly<Record<string, string>>;
type DoorName = Extract<CommandAction['does'], { readonly door: string }>['door'];

const say = (word: keyof typeof doorWords, slots: Slot = {}): string => fill(doorWords[word], slots);
const prose = (text: string): Block => ({ type: 'prose', prose: [{ text }] });
const code = (link: string): Block => ({
  type: 'picture',
  picture: { kind: 'code', alternative: say('slip picture'), data: link },
});

const nameOf = (person: Person | undefined): string =>
  (person ? wordsOf(person.nickname) : null) ?? say('somebody');

/** A note to staff under a key of its own; the secret goes into it as a hash alone. */
function linkMade(who: string, by: string, secret: string): Telling {
  const text = say('link made', { who, by });
  const key = `link/${createHash('sha256').update(secret).digest('hex').slice(0, 16)}`;
  return {
    do: 'say',
    key,
    message: { audience: { to: 'staff', group: null }, summary: text, blocks: [prose(text)] },
  };
}

/** Makes slips and links, shows each once, and revokes them; who may is settled before. */
export function openSlips({ doors, classes, baseUrl, now, tell }: SlipsDeps): {
  readonly makeSlip: House['makeSlip'];
  readonly door: (
    who: Who,
    does: DoorName,
    fields: Readonly<Record<string, string | undefined>>,
  ) => Promise<Reply>;
} {
  const makeSlip: House['makeSlip'] = async ({ classId, person: by }, id) => {
    const { people } = await classes.load(classId);
    const person = people[id];
    if (!person || person.removed) {
      throw new Fault(
        'not found',
        'Cannot make a slip, expected somebody on the roster',
        'Look at the roster.',
      );
    }
    const { secret, until } = await doors.makeSlip(classId, id, person.role !== 'pupil');
    // Whoever has this link is a named adult from then on, so nobody makes one unseen.
    if (by !== id && namedAdults.some((role) => role === person.role))
      await tell(classId, linkMade(nameOf(person), nameOf(people[by]), secret));
    return { secret, until, link: `${baseUrl()}/in/${secret}` };
  };

  const until = async ({ classId }: Who, at: Instant): Promise<string> =>
    whenWords(at, now(), (await classes.load(classId)).settings.zone);

  const one = async (who: Who, person: PersonId): Promise<Message> => {
    const slip = await makeSlip(who, person);
    return {
      audience: { to: 'person', person: who.person },
      summary: say('slip new'),
      blocks: [
        { type: 'heading', text: say('slip title') },
        prose(say('slip once')),
        prose(say('slip until', { when: await until(who, slip.until) })),
        {
          type: 'list',
          items: [
            [{ text: say('slip code') }, { text: slip.secret, strong: true }],
            [{ text: say('slip link', { link: slip.link }) }],
          ],
        },
        code(slip.link),
      ],
    };
  };

  /** A slip for every pupil of a group, each a message of its own, to be cut apart. */
  const sheet = async (who: Who, group: GroupId): Promise<readonly Message[]> => {
    const state = await classes.load(who.classId);
    const name = state.groups[group]?.name ?? '';
    const audience = { to: 'person', person: who.person } as const;
    const pupils = pupilsOf(state, group);
    const title = say('sheet title', { group: name });
    if (pupils.length === 0)
      return [{ audience, summary: title, blocks: [prose(say('sheet none', { group: name }))] }];
    const slips: Message[] = [];
    for (const { id, nickname } of pupils) {
      const slip = await makeSlip(who, id);
      const text = wordsOf(nickname) ?? '';
      slips.push({
        audience,
        summary: text,
        blocks: [
          { type: 'heading', text },
          prose(state.name),
          prose(`${say('sheet go')} ${baseUrl()}/`),
          { type: 'prose', prose: [{ text: `${say('sheet write')} ` }, { text: slip.secret, strong: true }] },
          code(slip.link),
          prose(`${say('sheet keep')} ${say('sheet until', { when: await until(who, slip.until) })}`),
        ],
      });
    }
    return [
      { audience, summary: title, blocks: [{ type: 'heading', text: title }, prose(say('sheet once'))] },
      ...slips,
    ];
  };

  return {
    makeSlip,
    async door(who, does, fields) {
      const person = asId<PersonId>(fields['person'] ?? '');
      switch (does) {
        case 'revoke-slips':
          await doors.revoke(who.classId, person);
          return { done: true, messages: [note(who.person, say('slips revoked'))] };
        case 'make-slip':
          return { done: true, messages: [await one(who, person)] };
        case 'make-sheet':
          return { done: true, messages: await sheet(who, asId<GroupId>(fields['group'] ?? '')) };
        default:
          return does satisfies never;
      }
    },
  };
}

import type { FeedItem } from '../../shared/channel.js';
import type { Look } from '../../shared/looks.js';
import type { Audience, Message } from '../../shared/messages.js';
import { feedWords } from '../coaching/feed-words.js';
import type { ClassState, Person } from '../practice/state.js';
import type { ShownMessage, Store } from '../store/store.js';

/** A look that was told stands in a feed as a card that opens it. */
function lookCard(audience: Audience, { type, ...fields }: Look): Message {
  const words = feedWords[type === 'digest' ? 'digestReady' : 'lookReady'].words;
  const args = Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, String(value)]));
  return {
    audience,
    summary: words,
    blocks: [
      {
        type: 'choices',
        prompt: words,
        choices: [{ label: feedWords.openIt.words, action: { kind: 'look', name: type, args } }],
      },
    ],
  };
}

/** Whose messages somebody may see: a pupil their own and their group's, tutors and teachers all of the class but others' trays. */
function audiencesOf(state: ClassState, person: Person): readonly Audience[] {
  const own: Audience = { to: 'person', person: person.id };
  switch (person.role) {
    case 'pupil':
      return person.group === null ? [own] : [own, { to: 'channel', group: person.group }];
    case 'tutor':
    case 'teacher':
      return [
        own,
        { to: 'staff', group: null },
        ...Object.values(state.groups).flatMap(({ id }): Audience[] => [
          { to: 'channel', group: id },
          { to: 'staff', group: id },
        ]),
      ];
    case 'administrator':
    case 'safeguarding lead':
    case 'safeguarding deputy':
      return [own];
  }
}

/** Messages that somebody may see after a sequence number, oldest first, at most 200 an audience. */
export async function readFeed(
  store: Pick<Store, 'shown'>,
  state: ClassState,
  person: Person,
  after: number,
): Promise<readonly FeedItem[]> {
  const rows: ShownMessage[] = [];
  for (const audience of audiencesOf(state, person))
    rows.push(...(await store.shown(state.id, audience, after, 200)));
  return rows
    .sort((a, b) => a.seq - b.seq)
    .map(({ seq, key, at, message, look }) => ({
      seq,
      key,
      at,
      message: look === null ? message : lookCard(message.audience, look),
    }));
}

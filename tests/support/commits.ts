import type { ClassEvent, EventOf } from '../../shared/events.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import { asId, type ClassId, type GroupId, type PersonId, type PostId } from '../../shared/ids.js';
import type { Audience, Block, Message } from '../../shared/messages.js';
import { said } from '../../shared/said.js';
import type { Telling } from '../../shared/tellings.js';
import type { Commit } from '../../src/store/store.js';

/** The group that all invented pupils are in. */
export const group = asId<GroupId>('g1');
/** Everybody in it. */
export const channel: Audience = { to: 'channel', group };

/** A commit of events with nothing beside them but what is given. */
export function commitOf(classId: ClassId, expectedVersion: number, parts: Partial<Commit> = {}): Commit {
  return {
    classId,
    expectedVersion,
    events: [{ type: 'person-away', at: 1000 + expectedVersion, by: 'clock', person: asId('p1') }],
    inbox: null,
    tellings: [],
    evidence: [],
    dueAt: null,
    ...parts,
  };
}

/** A person joining under a nickname. */
export function joined(person: string, nickname: string, at = 10): ClassEvent {
  const id = asId<PersonId>(person);
  const name = said(id, nickname);
  return {
    type: 'person-added',
    at,
    by: 'founder',
    person: id,
    nickname: name,
    role: 'pupil',
    group,
    register: null,
  };
}

/** A question that a pupil sent, judged by nobody. */
export function drafted(
  person: string,
  post: string,
  text: string,
  at = 20,
  more: Partial<EventOf<'draft-judged'>> = {},
): EventOf<'draft-judged'> {
  const by = asId<PersonId>(person);
  return {
    type: 'draft-judged',
    at,
    by,
    person: by,
    post: asId(post),
    group,
    passage: asId('t1'),
    stop: 0,
    do: 'question',
    text: said(by, text),
    word: null,
    offset: null,
    to: null,
    place: null,
    fixUp: null,
    round: 1,
    judgement: null,
    findings: [],
    given: 'typed',
    help: 'guided',
    led: false,
    late: false,
    day: '2026-11-25',
    postsItselfAt: null,
    ...more,
  };
}

/** A message of blocks. */
export function messageOf(audience: Audience, summary: string, blocks: readonly Block[] = []): Message {
  return { audience, summary, blocks };
}

/** Saying a message under a key. */
export function sayOf(key: string, message: Message): Telling {
  return { do: 'say', key, message };
}

/** A try as the evidence table keeps it. */
export function tryOf(person: string, key: string, at = 20, more: Partial<EvidenceRow> = {}): EvidenceRow {
  return {
    key,
    post: asId<PostId>(key),
    person: asId(person),
    group,
    passage: asId('t1'),
    stop: 0,
    do: 'question',
    level: 2,
    postedLevel: null,
    value: 'inferential',
    probability: 0.8,
    reasons: [],
    given: 'typed',
    help: 'guided',
    late: false,
    led: false,
    at,
    day: '2026-11-25',
    settledBy: 'first judgement',
    word: null,
    ...more,
  };
}

/** A whole post as the server commits it: the draft, its posting, what the group and the pupil are told, the try. */
export function postCommit(classId: ClassId, round: number): Commit {
  const person = `p${round % 6}`;
  const text = `Why did the beavers of round ${round} build where the water was slow?`;
  const post = `post-${round}`;
  const by = asId<PersonId>(person);
  return commitOf(classId, round * 2, {
    events: [
      drafted(person, post, text, 1000 + round),
      { type: 'draft-posted', at: 1000 + round, by, post: asId(post), how: 'by the pupil', to: 'group' },
    ],
    inbox: { updateId: `u-${round}`, reply: JSON.stringify({ done: true, messages: [] }) },
    tellings: [
      {
        at: 1000 + round,
        event: 1,
        telling: sayOf(
          post,
          messageOf(channel, 'A question', [{ type: 'quotation', text, by: `Bird ${person}` }]),
        ),
      },
    ],
    evidence: [tryOf(person, post, 1000 + round)],
    dueAt: 5000 + round,
  });
}

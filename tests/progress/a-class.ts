import type { HoldReason } from '../../shared/events.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import {
  asId,
  type ClassId,
  type GroupId,
  type PersonId,
  type PostId,
  type PracticeId,
} from '../../shared/ids.js';
import { said } from '../../shared/said.js';
import type { Doing, Level } from '../../shared/strategies.js';
import { harbour, lantern, passages } from './a-shelf.js';
import { questionJudged, sumUpJudged } from './judged.js';
import { emptyState } from '../../src/practice/empty-state.js';
import type { ClassState, Group, Person, Post, PostStage, Practice } from '../../src/practice/state.js';

export const day = 86_400_000;
/** Monday, 2 November 2026, 08:00 UTC. */
export const monday = Date.UTC(2026, 10, 2, 8);

export const wren = asId<PersonId>('p-wren');
export const finch = asId<PersonId>('p-finch');
export const plover = asId<PersonId>('p-plover');
export const tern = asId<PersonId>('t-tern');
export const curlew = asId<PersonId>('t-curlew');
export const owl = asId<PersonId>('s-owl');
export const knot = asId<PersonId>('s-knot');
export const heron = asId<PersonId>('a-heron');
export const group = asId<GroupId>('g-1');

export function person(id: PersonId, nickname: string, more: Partial<Person> = {}): Person {
  return {
    id,
    nickname: said(id, nickname),
    role: 'pupil',
    register: null,
    group,
    removed: false,
    away: false,
    goal: null,
    help: { question: 'guided', clarify: 'guided', 'sum-up': 'guided', predict: 'guided' },
    closed: [],
    lastSeen: null,
    missed: 0,
    ...more,
  };
}

export const openSegment: Extract<Practice, { phase: 'open' }> = {
  phase: 'open',
  practice: asId<PracticeId>('pr-1'),
  passage: harbour,
  leg: {
    endsAt: monday + 4 * day,
    segments: 3,
    done: 2,
    leaders: [wren, finch, plover],
    quietPassed: [],
    nudged: [],
    openedOn: [],
    sessionOn: null,
  },
  segment: {
    stop: 2,
    leader: plover,
    partner: null,
    active: [wren, finch, plover],
    seen: [wren, finch],
    passed: [],
    nudged: [],
    offeredTo: null,
    spareAsked: false,
    card: 1,
    openedAt: monday + 2 * day,
    times: {
      nudgeAt: monday + 2 * day + 3,
      offerAt: monday + 2 * day + 6,
      spareAt: monday + 2 * day + 8,
      wrapAt: monday + 2 * day + 9,
      quorumAt: monday + 2 * day + 10,
      closesAt: monday + 3 * day,
      closesOn: { year: 2026, month: 11, day: 5, weekday: 4, minute: 480 },
    },
    helped: {},
  },
};

export function aGroup(more: Partial<Group> = {}): Group {
  return {
    id: group,
    name: 'Sandpipers',
    open: ['question', 'clarify', 'sum-up', 'predict'],
    justOpened: [],
    queue: [lantern],
    lot: [plover, wren, finch],
    lastLeader: finch,
    led: { [wren]: 2, [finch]: 1 },
    practice: openSegment,
    finished: [],
    aloneTimes: 0,
    legs: 1,
    waitingFrom: 0,
    beforeClose: null,
    ...more,
  };
}

/** A class of three pupils and its adults in the middle of a passage. */
export function aClass(more: Partial<ClassState> = {}): ClassState {
  return {
    ...emptyState(asId<ClassId>('c-1')),
    version: 40,
    made: true,
    name: 'Shore class',
    settings: {
      moderation: 'hold everything',
      sessions: [{ weekday: 2, minute: 600 }],
      schoolDays: [1, 2, 3, 4, 5],
      opensMinute: 450,
      closesMinute: 1140,
      holidays: [],
      register: '8-10',
      zone: 'UTC',
      order: ['question', 'clarify', 'sum-up', 'predict'],
      alarmText: null,
      alarmNumber: null,
      termEnds: null,
      wordsKept: 7,
      longestKept: 90,
      yearEnds: '06-30',
      alarmWordsKept: 2,
      idleMinutes: 30,
      questionLine: 'follow the tutor',
      alarmMinutes: 30,
      pictureSecret: false,
      staffPassphrase: false,
    },
    people: {
      [wren]: person(wren, 'Wren'),
      [finch]: person(finch, 'Finch'),
      [plover]: person(plover, 'Plover', { register: '11-14' }),
      [tern]: person(tern, 'Tern', { role: 'tutor', group: null }),
      [curlew]: person(curlew, 'Curlew', { role: 'teacher', group: null }),
      [owl]: person(owl, 'Owl', { role: 'safeguarding lead', group: null }),
      [knot]: person(knot, 'Knot', { role: 'safeguarding deputy', group: null }),
      [heron]: person(heron, 'Heron', { role: 'administrator', group: null }),
    },
    groups: { [group]: aGroup() },
    shelf: passages,
    ...more,
  };
}

let minted = 0;

export function post(by: PersonId, doing: Doing, text: string, more: Partial<Post> = {}): Post {
  minted += 1;
  const at = more.at ?? monday + minted * 60_000;
  return {
    id: asId<PostId>(`post-${minted}`),
    person: by,
    seeded: null,
    group,
    passage: harbour,
    stop: 0,
    do: doing,
    text: said(by, text),
    word: null,
    offset: null,
    to: null,
    place: null,
    fixUp: null,
    round: 1,
    stage: { stage: 'public', at, to: 'group' },
    first: null,
    latest: null,
    second: null,
    overruled: null,
    saidWhere: null,
    findings: [],
    given: 'typed',
    help: 'guided',
    led: false,
    late: false,
    at,
    day: new Date(at).toISOString().slice(0, 10),
    response: null,
    outcome: null,
    ...more,
  };
}

export function withPosts(posts: readonly Post[], more: Partial<ClassState> = {}): ClassState {
  const postsOf: Record<string, PostId[]> = {};
  for (const one of posts) (postsOf[`${one.group}/${one.passage}`] ??= []).push(one.id);
  const waits = posts.filter(({ stage }) => stage.stage === 'draft' || stage.stage === 'held');
  return aClass({
    posts: Object.fromEntries(posts.map((one) => [one.id, one])),
    postsOf,
    pending: waits.map(({ id }) => id),
    ...more,
  });
}

/** A post that waits for an adult. */
export function held(why: HoldReason, since: number): PostStage {
  return {
    stage: 'held',
    why,
    since,
    times: { spareAt: null, remindAt: since + day, deputyAt: since + 2 * day },
    reminded: 'no',
  };
}

/** The evidence row of a post, as the store would keep it. */
export function row(of: Post, level: Level | null, more: Partial<EvidenceRow> = {}): EvidenceRow {
  const at = more.at ?? of.at;
  return {
    key: of.id,
    post: of.id,
    person: of.person ?? wren,
    group: of.group,
    passage: of.passage,
    stop: of.stop,
    do: of.do,
    level,
    postedLevel: level,
    value: of.first?.value ?? null,
    probability: of.first?.probability ?? null,
    reasons: of.first?.reasons ?? [],
    given: of.given,
    help: of.help,
    late: of.late,
    led: of.led,
    at,
    day: new Date(at).toISOString().slice(0, 10),
    settledBy: 'first judgement',
    word: null,
    ...more,
  };
}

/** Posts and rows of one pupil on one strategy: a level each, one a day, over the two passages in turn. */
export function tries(
  by: PersonId,
  doing: Doing,
  levels: readonly Level[],
): { posts: Post[]; rows: EvidenceRow[] } {
  const posts = levels.map((level, at) =>
    post(by, doing, `${doing} number ${at + 1} of mine`, {
      at: monday + at * day,
      passage: at % 2 === 0 ? harbour : lantern,
      first: doing === 'question' ? questionJudged(level, 'literal') : sumUpJudged(level),
    }),
  );
  return { posts, rows: posts.map((one, at) => row(one, levels[at] ?? 0)) };
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClassEvent } from '../../shared/events.js';
import { doings, givens, helps, relationships, strategies } from '../../shared/strategies.js';
import { outcomes, responses, settingNames, type Actor, type Move } from '../../shared/moves.js';
import { due } from '../../src/practice/due.js';
import { leaderQuestion, type OpenPractice } from '../../src/practice/duty.js';
import { replay } from '../../src/practice/evolve.js';
import { openMinutes } from '../../src/practice/hours.js';
import type { Group } from '../../src/practice/state.js';
import { fakeCalendar } from '../support/fake-calendar.js';
import { day, hour, makeClass, minute, monday, type Played } from './playing.js';

/** What a run may do: somebody (by number) makes a move of a kind, or the clock jumps. Numbers pick from what is there. */
type Step =
  | {
      readonly kind: 'move';
      readonly who: number;
      readonly move: number;
      readonly a: number;
      readonly b: number;
    }
  | { readonly kind: 'play'; readonly who: number; readonly a: number; readonly b: number }
  | { readonly kind: 'again' }
  | { readonly kind: 'pass'; readonly minutes: number }
  | { readonly kind: 'sleep'; readonly hours: number };

const number = fc.nat({ max: 999 });
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 12,
    arbitrary: fc.record({
      kind: fc.constant('move' as const),
      who: number,
      move: number,
      a: number,
      b: number,
    }),
  },
  {
    weight: 10,
    arbitrary: fc.record({ kind: fc.constant('play' as const), who: number, a: number, b: number }),
  },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('again' as const) }) },
  { weight: 6, arbitrary: fc.record({ kind: fc.constant('pass' as const), minutes: fc.nat({ max: 900 }) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('sleep' as const), hours: fc.nat({ max: 120 }) }) },
);

const words = [
  'Why do birds turn stones? #3',
  'It is food. #2',
  'nothing #0',
  'so #?',
  'you are rude',
  'my phone is',
  'I am unsafe at home',
  'buy now',
];
const values: Readonly<Record<string, readonly string[]>> = {
  sessions: ['none', 'Tue 14:00, Thu 14:00', 'Mon 09:00', 'nonsense'],
  'open hours': ['07:30-19:00', '09:00-12:00', '19:00-07:00'],
  'school days': ['Mon-Fri', 'Tue', 'Sun-Mon'],
  holidays: ['none', '2026-01-07, 2026-01-08', '2026-13-01'],
  moderation: ['hold everything', 'hold what is doubtful', 'publish', 'perhaps'],
  zone: ['UTC', 'Test/Plus-Two', 'Mars/Base'],
};

function pick<T>(items: readonly T[], nth: number): T {
  return items[nth % items.length] as T;
}

/** Every move that the contract knows, with fields picked by numbers from what the class holds, wrong ones among them. */
function movesFor(played: Played, a: number, b: number): readonly Move[] {
  const { state } = played;
  const people = Object.values(state.people).map(({ id }) => id);
  const groups = Object.values(state.groups).map(({ id }) => id);
  const posts = Object.values(state.posts).map(({ id }) => id);
  const passages = Object.values(state.shelf).map(({ id }) => id);
  const alarms = Object.values(state.alarms).map(({ id }) => id);
  const person = pick(people, a);
  const group = pick(groups, a);
  const post = posts.length > 0 ? pick(posts, a) : ('p0' as never);
  const passage = pick(passages, b);
  const alarm = alarms.length > 0 ? pick(alarms, a) : ('a0' as never);
  const strategy = pick(strategies, b);
  const text = pick(words, b);
  const setting = pick(settingNames, a);
  const draft = (doing: (typeof doings)[number]): Move => ({ type: 'send-draft', do: doing, text });
  return [
    ...doings.flatMap((doing) => [draft(doing), draft(doing)]),
    { type: 'send-draft', do: pick(doings, a), text, stop: (b % 5) - 1 },
    { type: 'send-draft', do: 'answer', text, question: post },
    { type: 'send-draft', do: 'clarify', text, word: 'Stones', place: { start: 0, end: 6 } },
    { type: 'post-draft', post },
    { type: 'post-draft', post },
    { type: 'post-draft', post },
    { type: 'improve-draft', post, text },
    { type: 'leave-draft', post },
    { type: 'take-back', post },
    { type: 'visit' },
    { type: 'visit' },
    { type: 'pass-prediction' },
    { type: 'say-where', post, where: pick(relationships, b) },
    { type: 'respond', post, response: pick(responses, b) },
    { type: 'check-prediction', post, outcome: pick(outcomes, b) },
    { type: 'quiet-pass' },
    { type: 'take-lead' },
    { type: 'ask-help', do: pick(doings, b) },
    { type: 'tell-grown-up', text },
    { type: 'review-word', word: 'stones', known: b % 2 === 0 },
    { type: 'time-passed' },
    {
      type: 'change-setting',
      setting,
      value: pick(values[setting] ?? ['30', 'none', 'question, clarify, sum-up, predict'], b),
    },
    { type: 'open-strategy', strategy, group },
    { type: 'close-strategy', strategy, pupil: person },
    { type: 'close-strategy', strategy },
    { type: 'make-group', name: `Group ${b % 4}` },
    { type: 'split-group', group },
    { type: 'add-person', nickname: `Bird ${b}`, role: b % 5 === 0 ? 'teacher' : 'pupil', group },
    { type: 'rename-person', person, nickname: `Bird ${b}` },
    { type: 'move-pupil', person, group: pick(groups, b) },
    { type: 'remove-person', person },
    { type: 'erase-person', person },
    { type: 'set-goal', person, strategy },
    { type: 'set-help', person, strategy, help: pick(helps, a) },
    { type: 'add-passage', text: b % 7 === 0 ? ' ' : 'One stone.\n\nTwo stones.', title: 'Stones' },
    { type: 'withdraw-passage', passage },
    { type: 'write-gist', passage, stop: b % 4, text: 'Birds turn stones.' },
    { type: 'write-spare-question', passage, stop: b % 4, text: 'What do birds turn?' },
    { type: 'set-passage', passage, group },
    { type: 'unset-passage', passage, group },
    { type: 'start-practice', group },
    { type: 'start-practice', group },
    { type: 'pause-practice', group },
    { type: 'resume-practice', group },
    { type: 'resume-practice', group },
    { type: 'close-segment', group },
    { type: 'undo-close', group },
    { type: 'extend-segment', group, days: b % 4 },
    { type: 'read-live', group, to: b % 4 },
    { type: 'read-live', group },
    { type: 'end-practice', group },
    { type: 'name-leader', group, person },
    { type: 'skip-leader', group },
    { type: 'pair-leader', group, person },
    { type: 'note-live', person, do: strategy, level: b % 5, given: pick(givens, a) },
    { type: 'note-led', person },
    { type: 'release', posts: [post] },
    { type: 'send-back', post, note: 'Try again.' },
    { type: 'remove', post },
    { type: 'overrule', post, level: b % 5 },
    { type: 'confirm-meaning', post },
    { type: 'acknowledge-alarm', alarm },
  ];
}

function actorFor(played: Played, who: number): Actor {
  const people = Object.values(played.state.people).map(({ id }) => id);
  // The tutor and the clock act more often than each of many pupils would let them.
  if (who % 5 === 0) return pick(people, 0);
  return who % 17 === 0 ? 'clock' : pick(people, who);
}

/** When each open segment's talk began to wait on a child, by group; cleared when the talk opens. */
interface Watch {
  readonly waitingSince: Map<string, { readonly stop: string; at: number }>;
  /** Segments whose talk was open at some time, or that were closed and may come back when the close is undone. */
  readonly left: Set<string>;
  slept: number;
}

/** Whoever is active waits until the leader, or what stands in for the leader, has asked. */
function watch(played: Played, seen: Watch): void {
  for (const group of Object.values(played.state.groups)) {
    const { practice } = group;
    const key = group.id;
    if (practice.phase !== 'open') {
      seen.waitingSince.delete(key);
      continue;
    }
    const { openedAt } = practice.segment;
    const stop = `${practice.passage}/${practice.segment.stop}/${openedAt}`;
    if (isAsked(played, group, practice)) {
      // Should the question be taken back, the wait begins then.
      seen.waitingSince.delete(key);
      seen.left.add(stop);
      continue;
    }
    const before = seen.waitingSince.get(key);
    if (before?.stop === stop) continue;
    if (before) seen.left.add(before.stop);
    seen.waitingSince.set(key, { stop, at: seen.left.has(stop) ? played.now : openedAt });
  }
}

function isAsked(played: Played, group: Group, practice: OpenPractice): boolean {
  if (practice.segment.spareAsked || !group.open.includes('question')) return true;
  return leaderQuestion(played.state, group, practice) !== null;
}

/** Nobody waits on another child for more than 8 open hours; pauses, and time in which the machine slept, don't count. */
function checkWaits(played: Played, seen: Watch): void {
  const time = { settings: played.state.settings, calendar: fakeCalendar };
  for (const [group, { at }] of seen.waitingSince) {
    const from = Math.max(at, seen.slept);
    const pauses = pausesOf(played, group)
      .map(([start, end]) => openMinutes(time, Math.max(start, from), end))
      .reduce((sum, length) => sum + length, 0);
    const waited = openMinutes(time, from, played.now) - pauses;
    expect(waited, 'open minutes waited on the leader').toBeLessThanOrEqual(480);
  }
}

/** When a group was paused, from and to. */
function pausesOf(played: Played, group: string): readonly (readonly [number, number])[] {
  const starts = played.of('practice-paused').filter((event) => event.group === group);
  const ends = played.of('practice-resumed').filter((event) => event.group === group);
  return ends.map(({ at }, nth) => [starts[nth]?.at ?? at, at]);
}

/** Every state that waits has a deadline; what is paused has been told to staff or was paused by them. */
function checkDeadlines(played: Played): void {
  const next = due(played.state);
  for (const { practice } of Object.values(played.state.groups)) {
    if (practice.phase === 'open' || practice.phase === 'waiting') expect(next).not.toBeNull();
    if (practice.phase === 'paused' && practice.why !== 'staff') {
      expect(played.told('staff').some((words) => words.includes('has paused'))).toBe(true);
    }
  }
}

function tryMove(played: Played, by: Actor, move: Move): void {
  const decision = played.decide(by, move);
  if ('events' in decision) played.follow(decision.events);
}

/** A pupil writes something and, mostly, sends it. */
function play(played: Played, who: number, a: number, b: number): void {
  const pupils = Object.values(played.state.people).filter(({ role }) => role === 'pupil');
  if (pupils.length === 0) return;
  const by = pick(pupils, who).id;
  const before = new Set(Object.keys(played.state.posts));
  tryMove(played, by, { type: 'send-draft', do: pick(doings, a), text: pick(words, b) });
  const made = Object.values(played.state.posts).find(({ id }) => !before.has(id));
  if (made && b % 4 !== 0) tryMove(played, by, { type: 'post-draft', post: made.id });
}

/** Steps through every due instant; after each nothing may be due that has been done. */
function pass(played: Played, until: number, seen: Watch): void {
  for (let steps = 0; ; steps += 1) {
    const next = due(played.state);
    if (next === null || next > until) break;
    expect(steps, 'steps of the clock').toBeLessThan(400);
    played.now = Math.max(played.now, next);
    checkWaits(played, seen);
    played.move('clock', { type: 'time-passed' });
    expect(due(played.state) ?? Number.POSITIVE_INFINITY).toBeGreaterThan(played.now);
    watch(played, seen);
  }
  played.now = Math.max(played.now, until);
}

function run(steps: readonly Step[], sessions: string, moderation: 'hold everything' | 'publish'): Played {
  const played = makeClass({ sessions, moderation, pupils: ['Finch', 'Wren', 'Robin', 'Plover'] });
  played.staff({ type: 'start-practice', group: played.groupId });
  const seen: Watch = { waitingSince: new Map(), left: new Set(), slept: 0 };
  let last: { readonly by: Actor; readonly move: Move } | null = null;
  watch(played, seen);
  for (const one of steps) {
    switch (one.kind) {
      case 'move': {
        const by = actorFor(played, one.who);
        const move = pick(movesFor(played, one.a, one.b), one.move);
        // Settings decide what an open hour is, so the watch can't be kept over a change of them.
        if (move.type === 'change-setting') seen.slept = played.now;
        last = { by, move };
        tryMove(played, by, move);
        break;
      }
      case 'play':
        play(played, one.who, one.a, one.b);
        break;
      case 'again':
        if (last) tryMove(played, last.by, last.move);
        break;
      case 'pass':
        pass(played, played.now + one.minutes * minute, seen);
        break;
      case 'sleep':
        played.now += one.hours * hour;
        seen.slept = played.now;
        break;
      default:
        one satisfies never;
    }
    watch(played, seen);
    checkDeadlines(played);
  }
  return played;
}

const anySteps = fc.array(step, { minLength: 1, maxLength: 120, size: 'max' });
const anySessions = fc.constantFrom('none', 'Tue 14:00, Thu 14:00', 'Mon 09:00');
const anyModeration = fc.constantFrom('hold everything' as const, 'publish' as const);

describe('rule 17: every wait has a deadline and a default', () => {
  it('holds under any moves by anyone, duplicates, jumps and sleep; a replay gives the same class', () => {
    fc.assert(
      fc.property(anySteps, anySessions, anyModeration, (steps, sessions, moderation) => {
        const played = run(steps, sessions, moderation);
        expect(replay(played.state.id, played.events)).toEqual(played.state);
      }),
      { numRuns: 100 },
    );
  });

  it('lets the leg end and its digest go out, whatever came before and under silence after', () => {
    fc.assert(
      fc.property(anySteps, anySessions, anyModeration, (steps, sessions, moderation) => {
        const played = run(steps, sessions, moderation);
        const begun = played.of('leg-began').length;
        const seen: Watch = { waitingSince: new Map(), left: new Set(), slept: played.now };
        pass(played, played.now + 90 * day, seen);
        for (const { practice } of Object.values(played.state.groups)) {
          expect(['none', 'paused']).toContain(practice.phase);
          const staff = practice.phase === 'paused' && practice.why === 'staff';
          if (practice.phase === 'paused' && !staff) expect(practice.was.leg).toBeNull();
        }
        const digests = played.tellings.filter(({ telling }) => telling.do === 'show');
        expect(digests.length).toBe(played.of('leg-ended').length);
        expect(begun).toBeGreaterThan(0);
      }),
      { numRuns: 100 },
    );
  });

  it('evolves any order of decided events without throwing', () => {
    fc.assert(
      fc.property(anySteps, fc.infiniteStream(fc.nat()), (steps, order) => {
        const { events, state } = run(steps, 'none', 'publish');
        const mixed: ClassEvent[] = [...events];
        for (let at = mixed.length - 1; at > 0; at -= 1) {
          const other = (order.next().value ?? 0) % (at + 1);
          [mixed[at], mixed[other]] = [mixed[other] as ClassEvent, mixed[at] as ClassEvent];
        }
        expect(replay(state.id, mixed).version).toBe(events.length);
      }),
      { numRuns: 25 },
    );
  });

  it('gives the same events for the same moves and seeds', () => {
    fc.assert(
      fc.property(anySteps, (steps) => {
        expect(run(steps, 'none', 'publish').events).toEqual(run(steps, 'none', 'publish').events);
      }),
      { numRuns: 10 },
    );
  });

  it('starts on a Monday', () => expect(fakeCalendar.local(monday(), 'UTC').weekday).toBe(1));
});

import type { EvidenceRow } from '../../shared/evidence.js';
import type { GroupId, PassageId, PersonId } from '../../shared/ids.js';
import { strategies, type Strategy } from '../../shared/strategies.js';
import type { Instant } from '../../shared/time.js';
import type { ClassState, Person, Post } from '../practice/state.js';
import { groupsIn, latestPassage, pupilsIn, rowsIn, sentIn, standing } from './in-group.js';
import { judgeErrors } from './judge-error.js';
import { progressOf, type StrategyProgress, type VerdictSettings, verdictDefaults } from './verdict.js';
import { stumbledWords, type StumbledWord } from './words-to-review.js';

/** What a digest is made of; `rows` are the evidence rows of the class or the group, in any order. */
export interface DigestInput {
  readonly state: ClassState;
  /** Null for the whole class. */
  readonly group: GroupId | null;
  readonly rows: readonly EvidenceRow[];
  readonly at: Instant;
  readonly settings?: VerdictSettings;
}

/** What the rules for suggestions look at, gathered once. */
export interface Facts {
  readonly state: ClassState;
  readonly group: GroupId | null;
  readonly at: Instant;
  readonly settings: VerdictSettings;
  readonly pupils: readonly Person[];
  /** Rows of these pupils, oldest first. */
  readonly rows: readonly EvidenceRow[];
  /** Their typed evidence by pupil and strategy; other ways of giving it are never pooled with it. */
  readonly progress: ReadonlyMap<PersonId, Readonly<Record<Strategy, StrategyProgress>>>;
  /** Posts of these groups that are public or wait, oldest first. */
  readonly sent: readonly Post[];
  /** Those of them that belong to the passages read now or last. */
  readonly talk: readonly Post[];
  readonly words: readonly StumbledWord[];
  /** How often each pupil has led. */
  readonly led: ReadonlyMap<PersonId, number>;
  /** Segments behind each group's passages. */
  readonly closed: ReadonlyMap<PassageId, number>;
}

/** Progress on each strategy from rows that were all given in the same way. */
export function progressByStrategy(
  rows: readonly EvidenceRow[],
  settings: VerdictSettings,
): Readonly<Record<Strategy, StrategyProgress>> {
  return Object.fromEntries(
    strategies.map((strategy) => [strategy, progressOf(strategy, rows, settings)]),
  ) as unknown as Record<Strategy, StrategyProgress>;
}

function closedByPassage(state: ClassState, group: GroupId | null): ReadonlyMap<PassageId, number> {
  const closed = new Map<PassageId, number>();
  for (const one of groupsIn(state, group)) {
    for (const { passage } of one.finished) {
      closed.set(passage, state.shelf[passage]?.reading.segments.length ?? 0);
    }
    const now = standing(one.practice);
    if (now !== null) closed.set(now.passage, Math.max(now.closed, closed.get(now.passage) ?? 0));
  }
  return closed;
}

/** Gathers what the digest and its suggestions look at. */
export function gather(input: DigestInput): Facts {
  const { state, group, rows, at } = input;
  const settings = input.settings ?? { ...verdictDefaults, judgeError: judgeErrors(state) };
  const pupils = pupilsIn(state, group);
  const here = rowsIn(state, group, rows);
  const sent = sentIn(state, group);
  const latest = new Set(groupsIn(state, group).map(latestPassage));
  const typed = (person: PersonId): readonly EvidenceRow[] =>
    here.filter((row) => row.person === person && row.given === 'typed');
  return {
    state,
    group,
    at,
    settings,
    pupils,
    rows: here,
    progress: new Map(pupils.map(({ id }) => [id, progressByStrategy(typed(id), settings)])),
    sent,
    talk: sent.filter((post) => latest.has(post.passage)),
    words: stumbledWords(state, group, here),
    led: new Map(
      pupils.map(({ id }) => [
        id,
        Object.values(state.groups).reduce((sum, one) => sum + (one.led[id] ?? 0), 0),
      ]),
    ),
    closed: closedByPassage(state, group),
  };
}

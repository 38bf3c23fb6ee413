import type { EvidenceRow } from '../../shared/evidence.js';
import { doings, givens, strategies, type Doing } from '../../shared/strategies.js';
import type { Person } from '../practice/state.js';
import type { PupilDigest, QuotedTry, SeenSoFar } from './digest-shape.js';
import { progressByStrategy, type Facts } from './facts.js';
import { nameOf, quoteOf } from './quoting.js';
import { isMet } from './verdict.js';
import { whyOf } from './why.js';

const newest = 2;

function seenSoFar(facts: Facts, person: Person): SeenSoFar {
  const own = facts.sent.filter((post) => post.person === person.id);
  const counts = Object.fromEntries(
    doings.map((doing) => [doing, own.filter((post) => post.do === doing).length]),
  ) as Record<Doing, number>;
  const quotations = own
    .filter((post) => post.stage.stage === 'public')
    .slice(-newest)
    .map((post) => ({ post: post.id, do: post.do, text: quoteOf(facts.state, post.id) }));
  return { counts, quotations };
}

/** The newest try that speaks for the whole: one that met the mark where most do, else one that didn't; with words where any are left. */
function telling(facts: Facts, tries: readonly EvidenceRow[]): EvidenceRow | undefined {
  const met = tries.filter(isMet);
  const side = met.length * 2 >= tries.length ? met : tries.filter((row) => !isMet(row));
  const post = (row: EvidenceRow) => (row.post === null ? undefined : facts.state.posts[row.post]);
  const kept = side.filter((row) => {
    const text = post(row)?.text;
    return text !== undefined && 'text' in text;
  });
  return kept.at(-1) ?? side.at(-1);
}

function quotedTries(facts: Facts, rows: readonly EvidenceRow[]): readonly QuotedTry[] {
  return strategies.flatMap((strategy) => {
    const row = telling(
      facts,
      rows.filter((one) => one.do === strategy && one.level !== null),
    );
    if (row === undefined) return [];
    return [
      {
        text: quoteOf(facts.state, row.post),
        reason: whyOf(facts.state, row),
        post: row.post,
        do: row.do,
        level: row.level,
      },
    ];
  });
}

/** All that the digest says of one pupil. */
export function pupilDigest(facts: Facts, person: Person): PupilDigest {
  const rows = facts.rows.filter((row) => row.person === person.id);
  const given = (how: EvidenceRow['given']): readonly EvidenceRow[] =>
    rows.filter((row) => row.given === how);
  return {
    nickname: nameOf(facts.state, person.id),
    led: facts.led.get(person.id) ?? 0,
    posts: facts.sent.filter((post) => post.person === person.id).length,
    strategies: progressByStrategy(given('typed'), facts.settings),
    evidence: quotedTries(facts, rows),
    person: person.id,
    otherwise: givens
      .filter((how) => how !== 'typed' && given(how).length > 0)
      .map((how) => ({ given: how, strategies: progressByStrategy(given(how), facts.settings) })),
    seen: seenSoFar(facts, person),
    away: person.away,
  };
}

import type { PersonId, PostId } from '../../shared/ids.js';
import { fill } from '../coaching/catalogue.js';
import { digestWords } from '../coaching/digest-words.js';
import { strategies } from '../../shared/strategies.js';
import { doingWords, strategyWords } from './doing-words.js';
import type { Facts } from './facts.js';
import { nameOf, quoteOf, shortened } from './quoting.js';
import { suggestionRules, type Candidate, type SuggestionRule } from './suggestion-rules.js';

/** Something that the next session could do, with the pupil and the post that it is about. */
export interface Suggestion {
  readonly rule: string;
  readonly pupil: string;
  readonly person: PersonId;
  readonly post: PostId;
  readonly text: string;
  readonly reason: string;
}

/** How far the strength of the evidence can lift one rule over the next ones; ours. */
const reach = 30;
/** The most letters that a suggestion quotes; the post itself is one look away. Ours. */
const quoted = 90;

interface Ranked extends Candidate {
  readonly rule: SuggestionRule;
  readonly score: number;
}

function told(facts: Facts, { rule, person, post, figures }: Ranked): Suggestion {
  const strategy = strategies.find((one) => one === figures['strategy']);
  const slots = {
    ...figures,
    ...(strategy === undefined ? {} : { strategy: strategyWords(strategy) }),
    pupil: nameOf(facts.state, person),
    asker: nameOf(facts.state, post.person),
    quote: shortened(quoteOf(facts.state, post.id), quoted),
    doing: doingWords(post.do),
  };
  const say = (part: 'text' | 'reason'): string =>
    fill(digestWords[`${rule.name} ${part}` as keyof typeof digestWords], slots);
  return {
    rule: rule.name,
    pupil: slots.pupil,
    person,
    post: post.id,
    text: say('text'),
    reason: say('reason'),
  };
}

/**
 * At most `most` things for the next session, the strongest evidence first. No post twice; no rule and no pupil twice as
 * long as there are others, so that the three speak about different children.
 */
export function suggestionsFor(facts: Facts, most = 3): readonly Suggestion[] {
  const ranked: readonly Ranked[] = suggestionRules
    .flatMap((rule) =>
      rule.find(facts).map((found) => ({ ...found, rule, score: rule.weight + reach * found.strength })),
    )
    .toSorted((a, b) => b.score - a.score);
  const taken: Ranked[] = [];
  const fits: readonly ((one: Ranked) => boolean)[] = [
    (one) => taken.every((other) => other.rule !== one.rule && other.person !== one.person),
    (one) => taken.every((other) => other.rule !== one.rule || other.person !== one.person),
    () => true,
  ];
  for (const fit of fits) {
    for (const one of ranked) {
      if (taken.length >= most) break;
      if (taken.every((other) => other.post.id !== one.post.id) && fit(one)) taken.push(one);
    }
  }
  return taken.toSorted((a, b) => b.score - a.score).map((one) => told(facts, one));
}

import type { Finding } from '../../shared/judgements.js';
import { adultRules } from './alarm-adult-rules.js';
import { friendRules } from './alarm-friend-rules.js';
import { hear, type Sentence, type Token } from './alarm-hearing.js';
import { hurtRules } from './alarm-hurt-rules.js';
import { leavingRules } from './alarm-leaving-rules.js';
import { neglectRules } from './alarm-neglect-rules.js';
import { findPattern, type Match } from './alarm-pattern.js';
import type { AlarmRule } from './alarm-rule.js';
import { selfRules } from './alarm-self-rules.js';
import { threatRules } from './alarm-threat-rules.js';
import { saysSo, type Setting } from './setting.js';
import type { Spoken } from './spoken.js';

/** All rules of alarm in English; those in other languages stand in `alarm-languages.ts`. */
export const alarmRules: readonly AlarmRule[] = [
  ...selfRules,
  ...hurtRules,
  ...neglectRules,
  ...adultRules,
  ...threatRules,
  ...leavingRules,
  ...friendRules,
];

/** Share of a sentence's matter that stands in the passage from which it is taken for a retelling; ours. */
const retold = 0.6;

/** A rule that matched, and whether it may call an adult by itself. */
export interface AlarmHit {
  readonly finding: Finding;
  readonly strong: boolean;
  /** The pattern that matched, as it stands in the table. */
  readonly pattern: string;
}

/** A post's sentences with what the rules found in them. */
export interface AlarmReading {
  readonly sentences: readonly Sentence[];
  readonly hits: readonly AlarmHit[];
}

const ownLife =
  / (?:to(?= \/| $)|either|as well|also|same|like (?:me|my|mine|us|ours)|at ours|mine|my (?:house|home|life|mum|dad|stepdad|stepmum)|at home|me i|for me) /u;

/** Reads a post by the alarm rules: at most one finding a rule. */
export function readAlarms(
  spoken: Spoken,
  setting: Setting,
  knows: (word: string) => boolean = () => true,
): AlarmReading {
  const sentences = hear(spoken, setting, knows);
  const own = ownLife.test(spoken.text);
  const hits: AlarmHit[] = [];
  for (const rule of alarmRules) {
    const hit = firstHit(rule, sentences, spoken, setting, own);
    if (hit !== null) hits.push(hit);
  }
  return { sentences, hits };
}

/** Words further away than this don't take the weight off a rule's words; ours. */
const near = 6;

function isNear(one: Match | null, other: Match): boolean {
  return one !== null && one.from <= other.to + near && one.to >= other.from - near;
}

function firstHit(
  rule: AlarmRule,
  sentences: readonly Sentence[],
  spoken: Spoken,
  setting: Setting,
  own: boolean,
): AlarmHit | null {
  for (const sentence of sentences) {
    for (const pattern of rule.patterns) {
      const match = findPattern(pattern, sentence);
      if (match === null) continue;
      if (sentence.has.has('STORY') && !own) break;
      if (rule.unless.some((one) => isNear(findPattern(one, sentence), match))) continue;
      const tokens = sentence.tokens.slice(match.from, match.to);
      if (isPassages(tokens, sentence, setting, own)) continue;
      return {
        strong: rule.strong,
        pattern: pattern.source,
        finding: { kind: 'alarm', rule: rule.name, place: placeOf(tokens, spoken) },
      };
    }
  }
  return null;
}

const asking =
  /^(?:what|when|where|which|who|whose|why|how|do|does|did|is|are|was|were|can|could|will|would|should|has|have)$/u;
const real = ['I', 'ME', 'MY', 'YOU', 'KIN', 'REALFRIEND', 'NAME'] as const;

/** "When is a strong bridge still not a safe bridge?": asks about the passage and nobody who is there. */
function asksOfPassage({ tokens }: Sentence): boolean {
  if (!asking.test(tokens[0]?.word ?? '')) return false;
  if (tokens.some(({ concepts }) => real.some((one) => concepts.has(one)))) return false;
  return tokens.some(({ word, passage }) => passage && word.length >= 4);
}

/** Whether the words are the passage's own: quoted from it, or part of a retelling that says nothing of the child itself. */
function isPassages(tokens: readonly Token[], sentence: Sentence, setting: Setting, own: boolean): boolean {
  if (setting.passage === null || own) return false;
  if (saysSo(tokens.map(({ word }) => word).join(' '), setting)) return true;
  if (asksOfPassage(sentence)) return true;
  const share = (some: readonly Token[]) => {
    const telling = some.filter(
      ({ word, concepts }) => word.length >= 4 && !concepts.has('I') && !concepts.has('ME'),
    );
    const inside = telling.filter(({ passage }) => passage).length;
    return inside < 2 ? 0 : inside / telling.length;
  };
  return share(sentence.tokens) >= retold && share(tokens) >= retold;
}

function placeOf(tokens: readonly Token[], { heard }: Spoken): Finding['place'] {
  const first = tokens[0]?.heard ?? 0;
  const last = tokens.at(-1)?.heard ?? first;
  return { in: 'text', start: heard[first]?.start ?? 0, end: heard[last]?.end ?? 0 };
}

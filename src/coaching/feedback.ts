import type {
  AnswerJudgement,
  ClarifyJudgement,
  Judgement,
  PredictJudgement,
  QuestionJudgement,
  SumUpJudgement,
} from '../../shared/judgements.js';
import type { Help, Register, Strategy } from '../../shared/strategies.js';
import { fill } from './catalogue.js';
import { feedbackWords } from './feedback-words.js';
import { oftenMissing, sharedWord } from './passage-word.js';

/** What a pupil is told, in whole sentences; `next` and `prompt` are empty for a post outside the pupil's goal. */
export interface Feedback {
  readonly good: string;
  readonly next: string;
  readonly prompt: string;
}

/** What feedback may know: the pupil's text and the segment, the one current goal (null: none set yet, so every try gets full feedback), the clarified word. */
export interface FeedbackAbout {
  readonly text: string;
  readonly segment: string;
  readonly goal: Strategy | null;
  readonly register: Register;
  readonly help: Help;
  readonly word?: string;
}

type Key = keyof typeof feedbackWords;
/** Each step has a "next" and a "prompt" in the catalogue. */
type StepOf<K> = K extends `${infer Step} next` ? Step : never;
type Step = StepOf<Key>;
/** Keys of the catalogue, and the passage's own word for a {word} slot. */
interface Plan {
  readonly good: Key;
  readonly step: Step;
  readonly goodWord?: string | null;
  readonly nextWord?: string | null;
}

/** Lines between "some" and "enough" of a measure (0..1), for words only, never for a level; ours. */
const half = 0.5;
const little = 0.25;
/** A sum-up of one or two sentences is short; about twenty words make a section's gist (common practice, no source), twice that is long. */
const short = { sentences: 2, words: 25 };
const long = { sentences: 3, words: 40 };

function askPlan(judgement: QuestionJudgement, about: FeedbackAbout): Plan {
  const m = judgement.measures;
  if (!m.isQuestion) return { good: 'good thought', step: 'question ask' };
  const goodWord = sharedWord(about.text, about.segment);
  const good = askGood(judgement, about.text, goodWord);
  if (m.copied >= half) return { good, goodWord, step: 'question writer' };
  if (m.onTopic < little || m.relationship === 'on my own') return { good, goodWord, step: 'question here' };
  if (judgement.value === 'unsure') return { good, goodWord, step: 'question where' };
  if (m.answerable < little) return { good, goodWord, step: 'question friend' };
  if (m.mainIdea < half && judgement.level !== 3) return { good, goodWord, step: 'question big idea' };
  return { good, goodWord, step: 'question ready' };
}

function askGood({ measures: m, value }: QuestionJudgement, text: string, word: string | null): Key {
  if (m.copied >= half) return word === null ? 'question good asks' : 'question good word';
  if (m.mainIdea >= half && m.onTopic >= half) return 'question good big idea';
  if (/\b(?:why|how)\b(?! (?:many|much|old|long|far)\b)/iu.test(text)) return 'question good why';
  if (value !== 'unsure' && m.relationship === 'think and search') return 'question good two places';
  if (value !== 'unsure' && m.relationship === 'author and me') return 'question good own head';
  return word === null ? 'question good asks' : 'question good word';
}

function sumUpPlan({ measures: m, level, value }: SumUpJudgement, about: FeedbackAbout): Plan {
  const goodWord = sharedWord(about.text, about.segment);
  const brief = m.words >= 5 && m.words <= short.words && m.sentences <= short.sentences;
  const own = m.words >= 5 && m.copied < little;
  const told: Key = goodWord === null ? 'good thought' : 'sum-up good word';
  const good: Key =
    value === 'off topic'
      ? told
      : brief && own
        ? 'sum-up good both'
        : own
          ? 'sum-up good own words'
          : brief && m.copied < half
            ? 'sum-up good short'
            : told;
  if (value === 'off topic') return { good, goodWord, step: 'sum-up here' };
  if (m.copied >= half) return { good, goodWord, step: 'sum-up writer' };
  if (m.words < 5) return { good, goodWord, step: 'sum-up more' };
  if (m.words > long.words || m.sentences > long.sentences) return { good, goodWord, step: 'sum-up shorter' };
  if (level === 3) return { good, goodWord, step: 'sum-up friend' };
  if (m.gist !== null && m.gist < little) return { good, goodWord, step: 'sum-up one more' };
  const nextWord = oftenMissing(about.text, about.segment);
  return nextWord === null
    ? { good, goodWord, step: 'sum-up friend' }
    : { good, goodWord, step: 'sum-up often', nextWord };
}

function clarifyPlan({ measures: m, value, level }: ClarifyJudgement, about: FeedbackAbout): Plan {
  const at = m.found === null ? null : about.segment.slice(m.found.start, m.found.end);
  const goodWord = at !== null && /^\p{L}[\p{L}’'-]{1,14}$/u.test(at) ? at : null;
  const named: Key = goodWord === null ? 'clarify good place' : 'clarify good word';
  switch (value) {
    case 'nothing yet':
      return m.found === null && (about.word ?? '') !== '' && m.trouble !== null
        ? { good: 'good thought', step: 'clarify tap' }
        : { good: m.found === null ? 'good thought' : named, goodWord, step: 'clarify younger' };
    case 'names the trouble':
      if (m.trouble === 'pronoun') return { good: 'clarify good small word', step: 'clarify who' };
      return {
        good: m.fixUp === null ? named : 'clarify good plan',
        goodWord,
        step: m.clue !== null && m.clue.kind !== 'inference' ? 'clarify clue' : 'clarify work',
      };
    case 'read it again':
      return { good: m.fixUp === null ? named : 'clarify good plan', goodWord, step: 'clarify again' };
    case 'fits':
      return { good: 'clarify good fits', step: level === 3 ? 'clarify use' : 'clarify again' };
    default:
      return value satisfies never;
  }
}

function predictPlan({ measures: m }: PredictJudgement, about: FeedbackAbout): Plan {
  const goodWord = sharedWord(about.text, about.segment);
  const told: Key = goodWord === null ? 'good thought' : 'predict good word';
  if (m.retelling || !m.forward) return { good: told, goodWord, step: 'predict ahead' };
  if (m.grounded < half) {
    return { good: 'predict good ahead', step: 'predict why' };
  }
  return { good: 'predict good clue', step: 'predict check' };
}

function answerPlan({ measures: m, value }: AnswerJudgement, about: FeedbackAbout): Plan {
  const goodWord = sharedWord(about.text, about.segment);
  const good: Key =
    m.evidence >= half ? 'answer good text' : goodWord === null ? 'answer good reply' : 'answer good word';
  if (value === 'fits') return { good, goodWord, step: 'answer show' };
  if (m.speaksToQuestion < little) return { good, goodWord, step: 'answer asked' };
  return { good, goodWord, step: value === 'unsure' ? 'answer show' : 'answer look' };
}

function plan(judgement: Judgement, about: FeedbackAbout): Plan {
  switch (judgement.kind) {
    case 'question':
      return askPlan(judgement, about);
    case 'sum-up':
      return sumUpPlan(judgement, about);
    case 'clarify':
      return clarifyPlan(judgement, about);
    case 'predict':
      return predictPlan(judgement, about);
    case 'answer':
      return answerPlan(judgement, about);
    default:
      return judgement satisfies never;
  }
}

/** Answering belongs to questioning: both are one talk. */
function onGoal(kind: Judgement['kind'], goal: Strategy | null): boolean {
  return goal === null || goal === (kind === 'answer' ? 'question' : kind);
}

function promptKey(step: Step, help: Help): Key {
  const alone = `${step} alone`;
  return help === 'independent' && isKey(alone) ? alone : `${step} prompt`;
}

function isKey(key: string): key is Key {
  return Object.hasOwn(feedbackWords, key);
}

/** One true good thing, one next step, one prompt: at most 40 words in all; on the pupil's current goal only, else thanks and the good thing. */
export function feedback(judgement: Judgement, about: FeedbackAbout): Feedback {
  const { good, step, goodWord, nextWord } = plan(judgement, about);
  const say = (key: Key, word?: string | null) =>
    fill(feedbackWords[key], word ? { word } : {}, about.register);
  if (!onGoal(judgement.kind, about.goal)) {
    return { good: `${say('thanks')} ${say(good, goodWord)}`, next: '', prompt: '' };
  }
  return {
    good: say(good, goodWord),
    next: say(`${step} next`, nextWord),
    prompt: say(promptKey(step, about.help)),
  };
}

/** The feedback as one line, for where there is no room for three. */
export function feedbackLine({ good, next, prompt }: Feedback): string {
  return [good, next, prompt].filter((part) => part !== '').join(' ');
}

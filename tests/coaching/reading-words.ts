/** Reads the words of sentences for children as the tests need them: counted, and looked up by base form. */
import { spache } from 'spache';

/** Words of the trade and of the tool that are taught to every pupil in the first lesson, and everyday words of a school that the old list lacks. */
const taught = new Set(
  (
    'question predict prediction sum sum-up clarify clue leader lead text sentence writer author main meaning sense grown-up ' +
    'grown tutor class page link okay ok reply post draft someone everyone nobody anybody somebody everybody else thought ' +
    'write check fit done tonight monday tuesday wednesday thursday friday saturday sunday january february march april may june july august ' +
    'september october november december seven nickname online computer screen type anything code slip'
  ).split(' '),
);

/** Hard words that the sentence around them explains, as a model of clarifying must. */
const explained = new Set(['den']);

const list = new Set(spache.map((word) => word.toLowerCase()));

/** Irregular forms whose base form is in the list. */
const irregular: Readonly<Record<string, string>> = {
  has: 'have',
  does: 'do',
  saw: 'see',
  written: 'write',
  wrote: 'write',
  spelt: 'spell',
  chose: 'choose',
  their: 'they',
  hers: 'her',
  better: 'good',
  goes: 'go',
  men: 'man',
  spoken: 'speak',
  given: 'give',
  taken: 'take',
  shown: 'show',
  said: 'say',
  heard: 'hear',
  sums: 'sum',
  these: 'this',
  led: 'lead',
  fed: 'feed',
};

const known = (word: string) => list.has(word) || taught.has(word) || explained.has(word);

/** Whether a grade-2 reader is taken to know a word: its base form stands in Spache's list or among the taught words. */
export function isKnown(raw: string): boolean {
  const word = raw.toLowerCase().replace(/’/gu, "'");
  if (known(word) || known(irregular[word] ?? word)) return true;
  if (/^\d+$/u.test(word)) return true;
  const bare = word.replace(/'(s|t|ll|re|ve|d|m)$/u, '').replace(/n$/u, (n) => (/n't$/u.test(word) ? '' : n));
  if (bare !== word && known(bare)) return true;
  if (word.includes('-')) return word.split('-').every(isKnown);
  return stripped(bare).some(known);
}

/** Base forms that a word may have: plural, past, -ing, comparison, -ly, -er, un-. */
function stripped(word: string): string[] {
  const forms: string[] = [];
  for (const ending of [
    's',
    'es',
    'ed',
    'd',
    'ing',
    'er',
    'r',
    'est',
    'st',
    'ly',
    'ers',
    'ings',
    'less',
    'ful',
  ]) {
    if (!word.endsWith(ending) || word.length - ending.length < 2) continue;
    const base = word.slice(0, -ending.length);
    forms.push(base, `${base}e`, base.replace(/i$/u, 'y'));
    if (/(.)\1$/u.test(base)) forms.push(base.slice(0, -1));
  }
  return forms;
}

/** The words of a text; an ellipsis, a gap or a slot marker is none. */
export function wordsIn(text: string): string[] {
  return text.match(/[\p{L}\p{N}]+(?:[’'-][\p{L}\p{N}]+)*/gu) ?? [];
}

/** Sentences end at a full stop, question or exclamation mark, colon or line end. */
export function sentencesIn(text: string): string[] {
  return text
    .split(/(?<=[.!?:…]["”’]?)\s+|\n+/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => wordsIn(sentence).length > 0);
}

import type { Finding } from '../../shared/judgements.js';
import type { Rude } from './rude.js';
import { doubtful, innocent, onlyWithYou } from './rude-words.js';
import { isForeign, plainElsewhere } from './other-tongues.js';
import { matterOf, overlap, saysSo, stem, type Setting } from './setting.js';
import { rangeOf, type Spoken } from './spoken.js';
import { kind, reasoning, touchy, work } from './touchy-words.js';

/** A sentence of the spoken text: its words, where it begins and ends among them. */
interface Sentence {
  readonly words: readonly string[];
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** The sentences of a spoken text, without the "/" between them. */
function sentencesOf(spoken: Spoken): readonly Sentence[] {
  const out: Sentence[] = [];
  let from = 0;
  for (let at = 0; at <= spoken.heard.length; at += 1) {
    if (at < spoken.heard.length && spoken.heard[at]?.word !== '/') continue;
    const words = spoken.heard.slice(from, at).map(({ word }) => word);
    if (words.length > 0) out.push({ words, text: ` ${words.join(' ')} `, from, to: at });
    from = at + 1;
  }
  return out;
}

const pupil = /^(?:§s?|you|your|yours|yourself|you are|you have|you will|you would|ur)$/u;
const self = /^(?:i|my|myself|i am|i have|i will|i would|im|mine)$/u;
const story =
  /^(?:he|she|it|they|him|her|his|their|them|its|he is|she is|it is|they are|that is|there is|the|this|that|these|those|who|which|a|an|author|writer|character|characters|text|story|book|page|chapter|ending|plan|poem)$/u;

const staff = /^(?:tutor|teacher|sir|headteacher|classmates?|everyone here|this group)$/u;
const common =
  /^(?:has|had|was|and|but|got|did|not|for|with|when|because|every|day|same|all|one|wears|says|said|told|like|from|about|who|what|why|how|been|have|does)$/u;

/** Whom a word at a place is said of: the nearest before it in the sentence, else the one named shortly after. */
function subjectOf(
  words: readonly string[],
  at: number,
  setting: Setting,
  nearest = 1,
): 'pupil' | 'self' | 'story' | 'nobody' {
  const link = /^(?:is|are|was|like|as|called|named|you|§|means|being|=)$/u;
  const after = words.slice(at + 1, at + 6);
  const to = after.findIndex((word) => pupil.test(word));
  const calls = to === 0 || (to > 0 && after.slice(0, to).some((word) => link.test(word)));
  for (let before = at - 1; before >= Math.max(0, at - 9); before -= 1) {
    const word = words[before] ?? '';
    if (pupil.test(word)) return 'pupil';
    if (calls) continue;
    if (self.test(word)) return 'self';
    if (
      /^(?:he|she|his|her|him|he is|she is|they|their|them)$/u.test(word) &&
      standsFor(words, before, setting)
    )
      return 'pupil';
    if (staff.test(word) && !setting.passageStems.has(word)) return 'pupil';
    if (story.test(word) && !/^(?:a|an)$/u.test(word) && (at - before >= nearest || word !== 'the'))
      return 'story';
  }
  return calls ? 'pupil' : 'nobody';
}

/** Whether "he" or "her" at a place stands for a pupil named before it, with nobody of the passage between. */
function standsFor(words: readonly string[], at: number, setting: Setting): boolean {
  const named = words.slice(0, at).findLastIndex((word) => word === '§' || word === '§s');
  if (named < 0) return false;
  return !words
    .slice(named + 1, at)
    .some(
      (word) => word.length >= 3 && !story.test(word) && setting.passageStems.has(word) && !common.test(word),
    );
}

const textWords =
  /^(?:moral|ending|story|text|book|page|chapter|part|poem|idea of|plan|title|word|words|character|name|rule|law|plot|author|beginning|end|picture|bit|line|place|way|thing)$/u;

/** Whether a rude or hurtful word is to be held: it is rude anywhere, comes in disguise, or is thrown at a person. */
export function isHeld(rude: Rude, spoken: Spoken, setting: Setting): boolean {
  const index = Math.max(
    0,
    spoken.heard.findLastIndex((one) => one.start <= rude.start),
  );
  const sentence = sentencesOf(spoken).find((one) => index >= one.from && index < one.to);
  const { words, text, from } = sentence ?? { words: [], text: ' ', from: 0 };
  const at = index - from;
  const inPassage = [rude.word, rude.raw ?? rude.word].some(
    (word) => setting.passageStems.has(stem(word)) || setting.passageStems.has(word),
  );
  const asWritten = rude.raw !== null && /^[\p{L}-]+$/u.test(rude.raw);
  if (asWritten && isForeign(text) && (rude.how === 'disguised' || plainElsewhere(rude.word))) return false;
  if (rude.how === 'disguised' && !(asWritten && inPassage)) return true;
  const plainly = innocent.exec(text)?.[0];
  if (plainly !== undefined && plainly.includes((rude.raw ?? rude.word).slice(0, 3)))
    return / (?:you|you are|your) (?:\S+ ){0,2}$/u.test(` ${words.slice(0, at).join(' ')} `);
  if (inPassage) {
    const subject = subjectOf(words, at, setting);
    const quoted = !/ §s? /u.test(text) && saidThere(words, at, setting);
    return subject === 'pupil' && !quoted && !saidOfStory(words, at, text);
  }
  if (rude.always && !doubtful.has(rude.word)) return true;
  const subject = subjectOf(words, at, setting);
  if (subject === 'pupil') return !saidOfStory(words, at, text);
  if (subject !== 'nobody' || onlyWithYou.has(rude.word)) return false;
  const next = words[at + 1] ?? '';
  if (next !== '' && !pupil.test(next) && (setting.passageStems.has(next) || textWords.test(next)))
    return false;
  if (/ (?:he|she|they|it) /u.test(text) && setting.passage !== null) return false;
  return (
    words.length <= 3 ||
    !/ (?:i|me|my|character|story|book|text|ending|chapter|page|part|question|word|poem) /u.test(text)
  );
}

/** Whether the passage says the words around a place in the same order. */
function saidThere(words: readonly string[], at: number, setting: Setting): boolean {
  return [
    words.slice(Math.max(0, at - 2), at + 1),
    words.slice(Math.max(0, at - 1), at + 2),
    words.slice(at, at + 3),
  ].some((run) => run.length >= 2 && saysSo(run.join(' '), setting));
}

/** "you can see the pig", "your question about the witch", "Wren says that the king is mad": a pupil is near, yet not meant. */
function saidOfStory(words: readonly string[], at: number, text: string): boolean {
  const near = words.slice(Math.max(0, at - 9), at);
  const last = near.findLastIndex((word) => pupil.test(word));
  if (last < 0) return false;
  const between = ` ${near.slice(last + 1).join(' ')} `;
  if (
    / (?:about|that|think|thinks|say|says|said|see|saw|read|know|mean|means|meant|if|when|because|would|call|called|find|like|use|write|wrote|asked|agree|at|of|for|with|in|on) (?:\S+ ){0,4}$/u.test(
      between,
    ) &&
    !/ (?:like|of|for|with) (?:a|an|such|your) /u.test(between)
  )
    return true;
  return (
    near[last] === 'you' &&
    / (?:can|could|when|if|what|how|do|did|would|where) you /u.test(text) &&
    !/ you (?:be|are|so|really) /u.test(text)
  );
}

const touchyWords: ReadonlySet<string> = new Set(
  Object.values(touchy).flatMap((list) =>
    list.split(' ').flatMap((word) => ['', 's', 'es', 'ed', 'd', 'ing'].map((ending) => word + ending)),
  ),
);

/** Loosely used of oneself, the passage or in general: no sign of teasing though it names a pupil. */
const general =
  / (?:(?:can|could|if|when|would|however|whatever|whenever|in \S+|what do|how do|do|did|makes|so that|unless|until|before|where|how|what|why do|why would|should|let|lets|helps|that|for|to|so \S+|so \S+ \S+|as \S+ as|than) you|you (?:can|could|need|know|see|have to|must|might|would|should|get to|want)) /u;

function touchyWord(sentence: Sentence, setting: Setting, passageToo: boolean): number {
  return sentence.words.findIndex(
    (word, at) =>
      !pupil.test(word) &&
      touchyWords.has(word) &&
      (passageToo || !(setting.passageStems.has(stem(word)) || setting.passageStems.has(word))) &&
      !/^(?:not|never|dont)$/u.test(sentence.words[at - 1] ?? ''),
  );
}

/** Share of a sentence's matter that stands in the passage from which it is about the passage; ours. */
const aboutPassage = 0.3;

/**
 * Talk about a pupil, or to one, that may hurt, so that an adult looks: it holds something that children are teased with
 * and is neither kind nor about the work; or it is about nothing that a reading group talks of at all.
 */
export function teasing(spoken: Spoken, setting: Setting, written: string): Finding | null {
  const sentences = sentencesOf(spoken);
  const spokenOf = sentences.some((sentence) => namesPupil(sentence, spoken, written));
  const friendly = kind.test(spoken.text);
  for (const sentence of sentences) {
    const { text } = sentence;
    if (kind.test(text) || work.test(text)) continue;
    const here = / §s? /u.test(text);
    const told = here && !friendly && toldOf(sentence, spoken, written);
    const of = spokenOf && / (?:he|she|his|her|him|he is|she is) /u.test(text);
    const toYou = / (?:you|your|you are|ur|yourself|you have|you will) /u.test(text) && !general.test(text);
    if (!here && !of && !toYou) continue;
    // "Have you ever been in a cave?" asks about the reader, which is a kind of question that pupils learn to ask.
    const stray = here && isStray(sentence, spoken, setting, true);
    if (!told && !isTouchy(sentence, setting, here, of) && !stray) continue;
    const range = rangeOf(spoken, spoken.at[sentence.from] ?? 0, (spoken.at[sentence.to - 1] ?? 0) + 1);
    const rule = here || of ? 'talk about a pupil' : 'talk to a pupil';
    return { kind: 'off topic', rule: `${rule}, not about the passage`, place: { in: 'text', ...range } };
  }
  return null;
}

/** Of turns, games, asking and agreeing, or "Wren says that …": a pupil is named without being talked about. */
const turns =
  / (?:then|next|after|before|first|second|turn|turns|rematch|chess|game|games|joined|joins|back|here|ready|both|same|picked|beat|with|and me|me and|welcome|hi|hello|bye|hey|missed|forgot|get what|spoilers?|prize|wins|won|ill|absent|away|late|today) | § (?:and|or) § | § (?:thinks|thought|says|said|asked|asks|wrote|writes|means|meant|agrees|disagrees|explained|already|got|found|finds|has (?:a|the|been|to|already|got|found|an|three|two|one|four|five|not)|has|had|did|does|knows|knew|likes?|wants|wanted|needs|sees|saw|reads? (?:it|the|that|about|line|page)|can|could|will|would|should|may|might|you|i|my|what|why|how|where|who|when|the|that|this|it|it is|they|we|he|she|do|are|is (?:right|it|the|in|our|not|a|so (?:fast|kind|right|good|clever|funny|nice))|was (?:right|it)|look|please|but|and i|no|yes|thats|there) /u;
const asks =
  /^ (?:do|does|did|is|are|was|were|can|could|will|would|should|what|where|when|who|which|how|why|has|have|may|shall|let|lets|wait|look|shh|ooh|thanks|good|nice|same) /u;

/** Whether a sentence tells something of a pupil by nickname, rather than calling to one. */
function toldOf(sentence: Sentence, spoken: Spoken, written: string): boolean {
  if (turns.test(sentence.text) || asks.test(sentence.text)) return false;
  if (sentence.words.filter((word) => !/^§s?$/u.test(word)).length === 0) return false;
  return namesPupil(sentence, spoken, written);
}

/** After a nickname that opens a sentence: somebody is called to. */
const callsOn =
  /^(?:you|your|you are|i|i am|i have|my|do|does|did|can|could|what|why|how|where|who|when|which|the|that|this|these|that is|it|it is|they|we|he|she|look|please|but|no|yes|there|are|if|not|so|sorry|thanks|well|good|nice|maybe)$/u;

/** Whether a nickname stands in the sentence as somebody spoken of, and not called to ("Wren, the fox is sly"). */
function namesPupil(sentence: Sentence, spoken: Spoken, written: string): boolean {
  return sentence.words.some((word, index) => {
    if (word === '§s') return true;
    if (word !== '§') return false;
    const heard = spoken.heard[sentence.from + index];
    const before = written.slice(0, heard?.start ?? 0).trimEnd();
    const after = written.slice(heard?.end ?? 0).trimStart();
    const opens = index === 0;
    const ends =
      index === sentence.words.length - 1 &&
      !/^(?:to|of|at|for|about|like|than|from|by|is|was|it is|called|on|ask|tell)$/u.test(
        sentence.words[index - 1] ?? '',
      );
    const called =
      (opens && callsOn.test(sentence.words[1] ?? '')) ||
      /[,:@]$/u.test(before) ||
      /^[,:]/u.test(after) ||
      ends;
    return !(called || (opens && /^(?:[.!?]|$)/u.test(after)));
  });
}

function isTouchy(sentence: Sentence, setting: Setting, here: boolean, of: boolean): boolean {
  const told =
    here && / § (?:is|was|has|got|does|did|looks|smells|always|never|still|just) /u.test(sentence.text);
  const at = touchyWord(sentence, setting, told);
  if (at < 0) return false;
  const subject = subjectOf(sentence.words, at, setting, 2);
  return subject === 'pupil' || ((here || of) && subject !== 'story');
}

function isStray(sentence: Sentence, spoken: Spoken, setting: Setting, meant: boolean): boolean {
  if (!meant || reasoning.test(sentence.text) || turns.test(sentence.text)) return false;
  const matter = matterOf(spoken, sentence.from, sentence.to);
  return matter.length > 0 && overlap(matter, setting) < aboutPassage;
}

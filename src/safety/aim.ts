import type { Finding } from '../../shared/judgements.js';
import type { Rude } from './rude.js';
import { doubtful, innocent, onlyWithYou } from './rude-words.js';
import { matterOf, overlap, saysSo, stem, type Setting } from './setting.js';
import { rangeOf, type Spoken } from './spoken.js';

/** Words of a story's people and things, which a hurtful word may be said of. */
const third =
  / (?:he|she|it|they|him|her|his|their|them|the|this|that|these|those|it is|he is|she is|they are|that is|author|writer|character|characters|text|story|book|page|part|chapter|ending|plan|poem|word|means|is) /u;
const second = / (?:you|your|ur|yourself|you are|you have|you will|§|§s) /u;
const firstPerson = / (?:i am|i was|i feel|i felt|me|my|myself|i) /u;

/** The sentence of the spoken text that holds an original offset, with spaces at both ends, and its index range of words. */
function sentenceAt(spoken: Spoken, start: number): { text: string; from: number; to: number } {
  const at = Math.max(
    0,
    spoken.heard.findLastIndex((one) => one.start <= start),
  );
  let from = at;
  while (from > 0 && spoken.heard[from - 1]?.word !== '/') from -= 1;
  let to = at;
  while (to < spoken.heard.length && spoken.heard[to]?.word !== '/') to += 1;
  const words = spoken.heard.slice(from, to).map(({ word }) => word);
  return { text: ` ${words.join(' ')} `, from, to };
}

/** Whether a rude or hurtful word is to be held: it is rude anywhere, comes in disguise, or is thrown at a person. */
export function isHeld(rude: Rude, spoken: Spoken, setting: Setting): boolean {
  const { text } = sentenceAt(spoken, rude.start);
  const inPassage = setting.passageStems.has(stem(rude.word)) || setting.passageStems.has(rude.word);
  const named = / §s? /u.test(text);
  if (rude.how === 'disguised') return true;
  if (inPassage && named) return thrownAtName(text, rude.word);
  if (inPassage) return second.test(text) && !saidThere(text, rude, setting) && addressed(text);
  if (innocent.test(text)) return named;
  if (rude.always && !doubtful.has(rude.word)) return true;
  return isAimed(text, rude.word, named);
}

/** Whether the word follows a nickname closely, or "you" stands in the sentence beside the nickname. */
function thrownAtName(text: string, word: string): boolean {
  return (
    / (?:you|ur|you are) /u.test(text) || new RegExp(` § (?:\\S+ ){0,3}${word.slice(0, 4)}`, 'u').test(text)
  );
}

/** Whether "you" is called the word rather than told about a story. */
function addressed(text: string): boolean {
  return / (?:you|ur|you are|your|§)(?: (?:a|an|are|is|little|big|fat|lazy|ugly|stupid|such|so|absolute|total|old|dirty|silly|bunch|of|all|just|like|the|act|look|smell)){0,4} \S+ (?:$|\/|\S+ $)|§/u.test(
    text,
  );
}

function saidThere(text: string, rude: Rude, setting: Setting): boolean {
  const words = text.trim().split(' ');
  const at = words.findIndex((word) => word.startsWith(rude.word.slice(0, 4)));
  return [
    words.slice(Math.max(0, at - 2), at + 1),
    words.slice(Math.max(0, at - 1), at + 2),
    words.slice(at, at + 3),
  ].some((run) => run.length >= 2 && saysSo(run.join(' '), setting));
}

function isAimed(text: string, word: string, named: boolean): boolean {
  if (named) return true;
  const spokenTo = second.test(text);
  const story = new RegExp(
    ` (?:he|she|it|they|he is|she is|they are|it is|(?:the|this|that|those|these|his|her) \\S+)(?: \\S+){0,1} (?:is|was|are|were|so|being|looks|seems|acts|thinks|called)? ?(?:\\S+ ){0,3}${word.slice(0, 4)}`,
    'u',
  ).test(text);
  if (spokenTo)
    return (
      !story ||
      / (?:you are|ur|your|you) (?:\S+ ){0,3}$/u.test(text.slice(0, text.indexOf(` ${word.slice(0, 4)}`) + 1))
    );
  if (onlyWithYou.has(word)) return false;
  if (/ (?:i am|i was|i feel|i felt|myself|me) /u.test(text)) return false;
  if (third.test(text)) return false;
  const length = text.trim().split(' ').length;
  return length <= 3 || !firstPerson.test(text);
}

/** What pupils say of each other's work and turns, which hurts nobody. */
const talk = new Set(
  (
    'agree agrees agreed disagree same idea ideas point right true think thought question questions answer answers answered asked ask asks sum sum-up sum-ups summary ' +
    'predict predicted prediction predictions clarify clarified clue clues meaning lead leads leader leading turn turns read reads reading help helped helps explain ' +
    'explained good great nice cool clever smart funny kind best brilliant amazing awesome lovely clear short interesting thanks thank please sorry welcome well done ' +
    'hello bye morning missed forgot add added wrote write written post posted reply replied tell told find found look looked look more bit second first last third next ' +
    'today tomorrow tuesday monday wednesday thursday friday because wait waiting ready start finished finish understand understood understands lost know knows knew ' +
    'sure correct helpful love loved liked likes enjoy enjoyed soon better feel hope happy birthday get well group partner pair team chapter evidence sentence paragraph ' +
    'bit thing things way different similar also maybe little much many lot time said meant means see saw tap tapped need want could should did does will'
  ).split(' '),
);
const talkTies =
  / (?:agree|agrees|agreed|disagree|idea|answer|question|sum-up|sum up|prediction|clue|point|said|asked|wrote|thank|thanks|well done|(?:work|read|play|sit|pair|be) with|good job|nice one|nice work|get well|happy birthday|your turn|turn to|my turn|can you|could you|do you think|what do you|do you like|do you know|explain|leader|leads|to lead|leading|missed that|is right|was right|meant|good luck|sorry|welcome) /u;

/** Ordinary ways to say "you": asked, thanked, meant in general, told where to look. */
const friendlyYou =
  / (?:(?:can|could|would|will|may|shall|did|have|has|if|when|where|what|how|which|until|unless|what about|how about) you(?! (?:even|not|just shut|shut|always|still|stop))|do you (?:think|know|like|mean|want|agree|get|understand|remember|have|need|see)|are you (?:sure|ready|there|okay|ok|done|next|coming|leader|leading|still there|all right|asking|all)|(?:see|thank|love|help|join|agree with|thanks|tells?|shows?|lets?|gives?|makes?) you(?! (?:sick|cry|ugly|weird|stupid|look))|you (?:can|never know|must|need|have to|need to|know|get|see|said|wrote|asked|missed|forgot|mean|meant|used|did|found|read|put|explained|made (?:me (?:think|laugh|smile)|it|a)|helped|are right|were right|are welcome|two|all|guys|lot|could|should (?:add|read|look|say|tell|try|check|find)|will (?:see|find|know|get)|would|might|may|want|come|had|got|go first|go next|are (?:good|great|nice|kind|funny|clever|smart|the best|a good|so good|really good|the leader|next|leader|my|very|close|almost))|(?:so|that|means|then|when|where)(?: \S+){1,3} you|your (?:question|answer|idea|ideas|sum-up|sum|turn|prediction|word|point|clue|reply|post|go|sentence|words|own|friend|friends|help|hand|heart|eyes)) /u;

/** Words said to a pupil that are neither about the passage nor any of the ordinary ways to say "you": they may hurt, so that an adult looks. */
export function talkToPupil(spoken: Spoken, setting: Setting): Finding | null {
  const at = spoken.heard.findIndex(({ word }) =>
    /^(?:you|your|you are|you have|you will|you would|yourself)$/u.test(word),
  );
  if (at < 0) return null;
  const sentence = sentenceAt(spoken, spoken.heard[at]?.start ?? 0);
  if (friendlyYou.test(sentence.text.replace(/ you are /gu, ' you are '))) return null;
  const matter = matterOf(spoken, sentence.from, sentence.to).filter(
    (word) => !word.split(' ').every((part) => talk.has(part) || part === 'you'),
  );
  if (matter.length === 0 || overlap(matter, setting) >= 0.34) return null;
  const range = rangeOf(spoken, spoken.at[sentence.from] ?? 0, (spoken.at[sentence.to - 1] ?? 0) + 1);
  return {
    kind: 'off topic',
    rule: 'talk to a pupil, not about the passage',
    place: { in: 'text', ...range },
  };
}

/** Talk about a pupil of the class that is neither about the passage nor about each other's work: it may hurt, so that an adult looks. */
export function talkAboutPupil(spoken: Spoken, setting: Setting): Finding | null {
  const at = spoken.heard.findIndex(({ word }) => word === '§' || word === '§s');
  if (at < 0) return null;
  const sentence = sentenceAt(spoken, spoken.heard[at]?.start ?? 0);
  const matter = matterOf(spoken).filter((word) => !word.split(' ').every((part) => talk.has(part)));
  if (matter.length === 0) return null;
  if (overlap(matter, setting) >= 0.34) return null;
  if (
    talkTies.test(sentence.text) ||
    (friendlyYou.test(sentence.text) && !/ (?:your|why) /u.test(sentence.text))
  )
    return null;
  const range = rangeOf(spoken, spoken.at[sentence.from] ?? 0, (spoken.at[sentence.to - 1] ?? 0) + 1);
  return {
    kind: 'off topic',
    rule: 'talk about a pupil, not about the passage',
    place: { in: 'text', ...range },
  };
}

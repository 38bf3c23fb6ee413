import { conceptsOf, runsOf } from './alarm-words.js';
import { stem, type Setting } from './setting.js';
import { loose, soundsLike } from './alarm-spelling.js';
import type { Spoken } from './spoken.js';

/** A word of a post as the alarm rules take it: its concepts, and where it stands. */
export interface Token {
  readonly word: string;
  readonly concepts: Set<string>;
  /** Index of the heard word that it comes from. */
  readonly heard: number;
  /** Whether the passage has the word. */
  readonly passage: boolean;
  /** Ends its run of concept words: how many tokens the run takes, at least 1. */
  length: number;
}

/** A sentence of the post. */
export interface Sentence {
  readonly tokens: readonly Token[];
  /** All concepts and words of the sentence. */
  readonly has: ReadonlySet<string>;
}

const possessive = /^(?:his|her|their|the|a|an|whose|this|that|its|your|§s|every|some|no|s)$/u;
const own = /^(?:my|our|mums|dads|me|mine)$/u;
const between =
  /^(?:big|little|old|older|younger|young|own|real|step|foster|best|new|baby|twin|half|ex|drunk|stupid|two|three|great|mean)$/u;
const kin = new Set(['FAMILY', 'SIBLING', 'PARENT', 'LITTLE']);
const familiar = /^(?:mum|dad|mums|dads|stepdad|stepmum|gran|grandad|parents|stepdads|stepmums|uncle|aunt)$/u;

/** Reads a post into sentences of tokens; family words are the child's own ("KIN") or somebody else's ("THEIRKIN"). */
export function hear(
  spoken: Spoken,
  setting: Setting,
  knows: (word: string) => boolean,
): readonly Sentence[] {
  const parts = spoken.heard.flatMap(({ word }, heard) =>
    word
      .split(' ')
      .flatMap((part) => apart(part).map((piece) => ({ heard, raw: piece, word: mended(piece, knows) }))),
  );
  const misspelt = parts.some(({ raw, word }) => raw !== word);
  const tokens = parts.map(({ heard, word }) =>
    tokenOf(misspelt ? (loose.get(word) ?? word) : word, heard, setting),
  );
  tokens.forEach((_, at) => {
    markRuns(tokens, at);
  });
  tokens.forEach((_, at) => {
    markKin(tokens, at);
  });
  tokens.forEach((_, at) => {
    markFriend(tokens, at);
  });
  if (tokens.some(({ concepts }) => concepts.has('SERIOUS')))
    for (const { concepts } of tokens) concepts.delete('LOL');
  const sentences: Sentence[] = [];
  let from = 0;
  for (let at = 0; at <= tokens.length; at += 1) {
    if (at < tokens.length && tokens[at]?.word !== '/') continue;
    if (at > from) sentences.push(sentenceOf(tokens.slice(from, at)));
    from = at + 1;
  }
  return sentences;
}

function mended(word: string, knows: (word: string) => boolean): string {
  return conceptsOf.has(word) ? word : (soundsLike(word, knows) ?? word);
}

const glue = new Set('i to a in it is am the and so of do'.split(' '));

/** Words that were written letter by letter and so came as one ("iwanttokillmyself"), where all of it is known words. */
function apart(word: string): readonly string[] {
  if (word.length < 11 || conceptsOf.has(word)) return [word];
  const best: (readonly string[] | undefined)[] = [[]];
  for (let to = 1; to <= word.length; to += 1)
    for (let from = Math.max(0, to - 12); from < to; from += 1) {
      const before = best[from];
      const piece = word.slice(from, to);
      if (before === undefined || !(glue.has(piece) || (piece.length > 1 && conceptsOf.has(piece)))) continue;
      if (best[to] === undefined || (best[to]?.length ?? 0) > before.length + 1)
        best[to] = [...before, piece];
    }
  const all = best[word.length];
  return all !== undefined && all.length >= 3 ? all : [word];
}

function tokenOf(word: string, heard: number, setting: Setting): Token {
  return markNumber({
    word,
    heard,
    concepts: new Set(conceptsOf.get(word)),
    passage: setting.passageStems.has(stem(word)) || setting.passageStems.has(word),
    length: 1,
  });
}

const numbers =
  'sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty twenties thirties forties'.split(' ');

function markNumber(token: Token): Token {
  const value = /^\d{1,3}$/u.test(token.word) ? Number(token.word) : null;
  if (value !== null) token.concepts.add('NUM');
  if ((value !== null && value >= 16 && value <= 80) || numbers.includes(token.word))
    token.concepts.add('AGE');
  return token;
}

/** A friend, sister or pupil of the child's own life, not of a story. */
function markFriend(tokens: readonly Token[], at: number): void {
  const token = tokens[at];
  if (token === undefined) return;
  const before = tokens.slice(Math.max(0, at - 3), at).map(({ word }) => word);
  const after = tokens.slice(at + 1, at + 6).map(({ word }) => word);
  const real =
    token.word === '§' ||
    token.word === '§s' ||
    (/^(?:friends?|mates?|classmate|neighbour)$/u.test(token.word) &&
      before.some((word) => own.test(word))) ||
    (token.concepts.has('KIN') &&
      (token.concepts.has('SIBLING') || token.concepts.has('LITTLE') || token.word === 'cousin')) ||
    (/^(?:girl|boy|kid|someone|friend)$/u.test(token.word) &&
      after.some(
        (word, k) =>
          /^(?:class|school|street|group|door|year|team)$/u.test(word) &&
          after.slice(0, k).some((one) => /^(?:in|from|at|next|my|our)$/u.test(one)),
      ));
  if (real) token.concepts.add('REALFRIEND');
}

function markRuns(tokens: readonly Token[], at: number): void {
  const token = tokens[at];
  if (token === undefined) return;
  for (const { run, concept } of runsOf.get(token.word) ?? []) {
    if (!run.every((word, k) => tokens[at + k]?.word === word)) continue;
    token.concepts.add(concept);
    token.length = Math.max(token.length, run.length);
  }
}

function markKin(tokens: readonly Token[], at: number): void {
  const token = tokens[at];
  if (token === undefined || ![...token.concepts].some((concept) => kin.has(concept))) return;
  let before = at - 1;
  while (before >= 0 && at - before <= 3 && between.test(tokens[before]?.word ?? '')) before -= 1;
  const one = tokens[before];
  const owner = one?.word ?? '';
  const anothers = possessive.test(owner) || (one?.passage === true && /\p{L}{3,}s$/u.test(owner));
  const mine = own.test(owner) || (familiar.test(token.word) && !anothers);
  token.concepts.add(mine ? 'KIN' : 'THEIRKIN');
  if (mine && !token.concepts.has('SIBLING') && !token.concepts.has('LITTLE')) token.concepts.add('ELDER');
}

function sentenceOf(tokens: readonly Token[]): Sentence {
  const has = new Set<string>();
  for (const token of tokens) {
    has.add(token.word);
    for (const concept of token.concepts) has.add(concept);
  }
  return { tokens, has };
}

import type { Token } from './alarm-hearing.js';
import type { AlarmReading } from './alarms.js';
import { stem, type Setting } from './setting.js';

/** A feature that a post has, and the heard words (first and last index) that give it; null where the whole post does. */
export interface Feature {
  readonly name: string;
  readonly heard: readonly [first: number, last: number] | null;
}

/** Concepts of two words at most so many words apart make a pair. */
const apart = 5;

/**
 * What the learned layer sees of a post, all of it yes or no: word stems and their pairs, concepts (marked where the passage
 * has the word), ordered pairs of concepts near each other, and the post's manner.
 */
export function featuresOf(
  text: string,
  { sentences, hits }: AlarmReading,
  setting: Setting,
): readonly Feature[] {
  const found = new Map<string, Feature>();
  const add = (name: string, first?: Token, last: Token | undefined = first): void => {
    if (found.has(name)) return;
    found.set(name, { name, heard: first && last ? [first.heard, last.heard] : null });
  };
  for (const { tokens } of sentences)
    tokens.forEach((token, at) => {
      const word = stem(token.word);
      const before = tokens[at - 1];
      add(`w ${word}`, token);
      if (before) add(`b ${stem(before.word)} ${word}`, before, token);
      for (const concept of token.concepts) add(`c ${token.passage ? '(passage) ' : ''}${concept}`, token);
      for (const other of tokens.slice(Math.max(0, at - apart), at))
        for (const one of other.concepts)
          for (const concept of token.concepts) if (one !== concept) add(`p ${one} ${concept}`, other, token);
    });
  for (const manner of mannersOf(
    text,
    sentences.flatMap(({ tokens }) => tokens),
    setting,
  ))
    add(`m ${manner}`);
  if (hits.some(({ strong }) => !strong)) add('m weak rule');
  return [...found.values()];
}

function mannersOf(text: string, tokens: readonly Token[], setting: Setting): readonly string[] {
  const has = (concept: string) => tokens.some(({ concepts }) => concepts.has(concept));
  const matter = tokens.filter(({ word }) => word.length >= 3);
  const share = matter.filter(({ passage }) => passage).length / Math.max(1, matter.length);
  const size =
    tokens.length <= 4
      ? 'very short'
      : tokens.length <= 10
        ? 'short'
        : tokens.length <= 25
          ? 'middling'
          : 'long';
  const signs: readonly (readonly [boolean, string])[] = [
    [setting.passage === null, 'no passage known'],
    [setting.passage !== null && share < 0.2, 'hardly of the passage'],
    [share >= 0.4, 'of the passage'],
    [share >= 0.7, 'the passage retold'],
    [has('I') || has('ME'), 'first person'],
    [has('I') && has('ME'), 'first person twice'],
    [!has('I') && !has('ME') && !has('KIN'), 'nobody of the own life'],
    [text.includes('?'), 'asks'],
    [text.includes('!'), 'cries out'],
    [/["“”„«]/u.test(text), 'quotes'],
    [/[😂🤣😅😆😭😄😁💀😜😊🎉😍🥳😎❤👍]/u.test(text), 'picture of a mood'],
    [/\d{5,}|\d[\d -]{6,}\d/u.test(text), 'long number'],
    [/\d/u.test(text), 'number'],
    [/[@#_]|\w\.\w/u.test(text), 'sign of an address'],
    [/(?<![.!?"“] |^)\b\p{Lu}\p{Ll}+ \p{Lu}\p{Ll}+/u.test(text), 'two capitals'],
  ];
  return [size, ...signs.filter(([is]) => is).map(([, name]) => name)];
}

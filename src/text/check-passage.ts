import { Fault } from '../../shared/fault.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import type { Analysis } from './analysis.js';
import type { Block } from './clean.js';

/** Limits of a passage; 262144 bytes are about 45,000 words. */
const mostBytes = 262_144;
const leastSentences = 2;
const leastWords = 20;
/** Of all blocks, headings beyond this share are no passage but a list of contents. */
const mostHeadings = 0.6;
/** Shares of words that an English list knows, and of small words that hold sentences together; English prose has about .95 and .45. */
const leastKnown = 0.6;
const leastSmall = 0.15;
/** Of all characters, those that no text holds. */
const mostControls = 0.01;
const longestSentence = 400;

function bad(expected: string, got: string, remedy: string): Fault {
  return new Fault('bad passage', `Cannot use this passage, expected ${expected}, got ${got}`, remedy);
}

function bytesOf(text: string): number {
  let bytes = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
}

/** Refuses what is empty, too long or no text at all. Throws `Fault` 'bad passage'. */
export function checkRaw(raw: string): void {
  if (raw.trim() === '') {
    throw bad(
      'a text of two sentences or more',
      'an empty one',
      'Paste the text or attach a .txt or .md file.',
    );
  }
  const bytes = raw.length > mostBytes ? raw.length : bytesOf(raw);
  if (bytes > mostBytes) {
    throw bad(`at most ${mostBytes} bytes`, `${bytes}`, 'Use one chapter or a part of it.');
  }
  const controls = raw.match(/[\u0000-\u0008\u000e-\u001f\ufffd]/g)?.length ?? 0;
  if (raw.includes('\u0000') || controls / raw.length > mostControls) {
    throw bad(
      'plain text or Markdown in UTF-8',
      'a binary file',
      'Save the document as plain text and add that.',
    );
  }
}

/** Refuses what is no prose in English. Throws `Fault` 'bad passage'. */
export function checkCleaned(blocks: readonly Block[], passage: Analysis, lexicon: Lexicon): void {
  const headings = blocks.filter(({ kind }) => kind === 'heading').length;
  if (headings > 2 && headings / blocks.length > mostHeadings) {
    throw bad(
      'prose with a few headings',
      `${headings} headings among ${blocks.length} blocks`,
      'Take out the headings, or add the text below them.',
    );
  }
  const { sentences, tokens } = passage;
  if (sentences.length - headings < leastSentences || tokens.length < leastWords) {
    throw bad(
      `at least ${leastSentences} sentences and ${leastWords} words`,
      `${Math.max(0, sentences.length - headings)} and ${tokens.length}`,
      'Add the whole text; a group needs something to stop and talk about.',
    );
  }
  checkEnglish(passage, lexicon);
  const lengths = new Map<number, number>();
  for (const { sentence } of tokens) lengths.set(sentence, (lengths.get(sentence) ?? 0) + 1);
  const longest = [...lengths.values()].reduce((most, one) => Math.max(most, one), 0);
  if (longest > longestSentence) {
    throw bad(
      'sentences that end with a full stop',
      `one of ${longest} words`,
      'Put in the full stops, or paste the text again.',
    );
  }
}

function checkEnglish({ tokens }: Analysis, lexicon: Lexicon): void {
  const words = tokens.filter(({ lower }) => /\p{L}/u.test(lower));
  const known = words.filter(({ lower, name }) => name || lexicon.knows(lower)).length;
  const small = words.filter(({ content }) => !content).length;
  const least = Math.max(1, words.length);
  if (known / least < leastKnown || small / least < leastSmall) {
    throw bad(
      'prose in English',
      `a text of which ${Math.round((100 * known) / least)} of 100 words are known and ${Math.round((100 * small) / least)} hold sentences together`,
      'The bot reads English only. Take out tables, code or word lists.',
    );
  }
}

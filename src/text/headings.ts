import type { Range } from '../../shared/text.js';

const mostWords = 10;

/** Whether a sentence is a heading: short, on a line of its own with a blank line or the end behind it, and without a stop. */
export function isHeading(text: string, { start, end }: Range): boolean {
  const words = text.slice(start, end);
  if (words.includes('\n') || words.split(/\s+/).length > mostWords) return false;
  const before = text.slice(0, start);
  const after = text.slice(end);
  if (before !== '' && !before.endsWith('\n')) return false;
  return /^[^.!?:;,…"”’\n]*$/.test(words.slice(-1)) && /^[ \t]*\n[ \t]*\n/.test(after);
}

const listMark = /^\s*(?:[-*+•]|\d{1,2}[.)])\s+/;
const stop = /[.!?…:;,"”’')]$/;
const mostHeadingWords = 8;
const versesAre = 50;

/** Whether lines are the items of a list (an item may be wrapped). */
export function isList(lines: readonly string[]): boolean {
  return (
    listMark.test(lines[0] ?? '') &&
    (lines.length === 1 || lines.some((line, n) => n > 0 && listMark.test(line)))
  );
}

/** Short lines that each begin with a capital are verses and stay lines. */
function isVerse(lines: readonly string[]): boolean {
  return (
    lines.length >= 3 &&
    lines.every((line) => line.length <= versesAre && /^\s*["“‘']?\p{Lu}/u.test(line)) &&
    lines.some((line) => !/[.!?]["”’]?$/.test(line))
  );
}

/** Joins wrapped lines to a paragraph, or a list's to its items, one a line and without their marks. */
export function joinLines(lines: readonly string[], list: boolean): string {
  const verse = !list && isVerse(lines);
  let joined = '';
  for (const line of lines) {
    const item = list && listMark.test(line);
    const words = (item ? line.replace(listMark, '') : line).trim().replace(/\\$/, '').replace(/ {2,}/g, ' ');
    if (joined === '') joined = words;
    else if (item || verse) joined += `\n${words}`;
    else if (/\p{L}-$/u.test(joined) && /^\p{Ll}/u.test(words)) joined += words;
    else joined += ` ${words}`;
  }
  return joined;
}

/** Whether a block of one short line without a stop heads the prose behind it. */
export function plainHeading(text: string, proseFollows: boolean): boolean {
  if (!proseFollows || text.includes('\n') || stop.test(text)) return false;
  return text.split(/\s+/).length <= mostHeadingWords && /^[\p{Lu}\p{N}"“]/u.test(text);
}

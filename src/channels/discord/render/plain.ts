// Controls, direction overrides and characters without width let a text read as what it is not, or flood a line.
const unseen = /[\u0000-\u0008\u000b-\u001f\u007f\u00ad\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]/gu;
const joiners = /([\u200c\u200d])[\u200c\u200d]+/gu;
const stacked = /(\p{M}{4})\p{M}+/gu;

/** A text without what can't be seen: controls, direction overrides, zero widths; at most four marks stay on a letter. */
export function plain(text: string): string {
  return text.toWellFormed().replace(unseen, '').replace(joiners, '$1').replace(stacked, '$1');
}

/** A text on one line, no longer than `max`; what is longer ends in "…", so use it only where the whole text stands too. */
export function short(text: string, max: number): string {
  const line = plain(text).replace(/\s+/gu, ' ').trim();
  if (line.length <= max) return line === '' ? '…' : line;
  const cut = line
    .slice(0, max - 1)
    .toWellFormed()
    .replace(/\ufffd$/u, '');
  const space = cut.lastIndexOf(' ');
  return `${space > max / 2 ? cut.slice(0, space) : cut}…`;
}

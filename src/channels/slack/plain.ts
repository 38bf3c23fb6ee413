// Direction overrides, isolates, control characters and unseen characters can make a text read as what it is not.
const unseen =
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/gu;
const piledMarks = /(\p{M}{4})\p{M}+/gu;

/** A text as it may stand in a payload: well formed, without unseen characters and towers of marks. What Slack parses is not its concern: only plain_text and rich text elements carry it. */
export function plain(text: string): string {
  return text.toWellFormed().replace(unseen, '').replace(piledMarks, '$1');
}

/** A text for the one field that Slack parses, the notification: its three control characters as entities. */
export function escaped(text: string): string {
  return plain(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** What Slack escaped in a command's text, as it was typed. */
export function unescaped(text: string): string {
  return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&');
}

// Where a long text may be parted, best first: after a line, after a sentence, after a word.
const partings = [/\n+/gu, /[.!?…]["”’)]*\s+/gu, /\s+/gu];

function partingBefore(text: string, most: number): number {
  const head = text.slice(0, most + 1);
  for (const parting of partings) {
    const ends = [...head.matchAll(parting)].map((found) => found.index + found[0].length);
    const last = ends.filter((end) => end <= most && end >= most / 4).at(-1);
    if (last !== undefined) return last;
  }
  const code = text.charCodeAt(most - 1);
  return code >= 0xd800 && code <= 0xdbff ? most - 1 : most;
}

/** Parts a text that is longer than `most` UTF-16 units at ends of lines, sentences or words; nothing is lost. */
export function parted(text: string, most: number): readonly string[] {
  const parts: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const at = partingBefore(rest, most);
    parts.push(rest.slice(0, at));
    rest = rest.slice(at);
  }
  return rest === '' && parts.length > 0 ? parts : [...parts, rest];
}

/** The beginning of a text in at most `most` units, with a mark where there is more; only where the whole stands beside it. */
export function beginning(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${(parted(text, most - 1)[0] ?? '').trimEnd()}…`;
}

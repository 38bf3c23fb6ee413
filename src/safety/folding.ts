/**
 * Folds a text to plain small letters so that disguises fall away: full-width and styled letters, accents and strokes,
 * invisible characters, letters of other scripts that look like Latin ones. Every folded character remembers where it
 * came from, so that a finding points into the text as it was written.
 */
export interface Folded {
  readonly text: string;
  /** For each folded character, the UTF-16 range that it came from. */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Whether letters of another script or style were folded to Latin ones at a character. */
  readonly styled: readonly boolean[];
}

/** Letters that look like Latin ones: Cyrillic, Greek, Armenian, small capitals and the like, by what they pass for. */
const lookAlikes: Readonly<Record<string, string>> = {
  a: 'аɑαᴀɐλ',
  b: 'ЬʙᏏƅвьβъ',
  c: 'сϲᴄⅽɔ',
  d: 'ԁɗᴅⅾд',
  e: 'еєҽᴇɛ℮ǝεзэ',
  f: 'ƒꜰɟф',
  g: 'ɡցɢƃ',
  h: 'һհʜɥ',
  i: 'іιɩıɪїίϊᴉи',
  j: 'јϳᴊ',
  k: 'кκᴋʞ',
  l: 'ӏⅼʟłⱡлן',
  m: 'мᴍⅿɯ',
  n: 'ոпηɴн',
  o: 'оοօᴏøөӧθ',
  p: 'рρᴘ',
  q: 'ԛզ',
  r: 'гʀɹя',
  s: 'ѕꜱʂςσ',
  t: 'тτᴛʇ†',
  u: 'υսᴜцυ',
  v: 'νѵᴠʌ',
  w: 'ԝωᴡѡʍшщ',
  x: 'хχ×',
  y: 'уүγʏʎ',
  z: 'ᴢʐ',
};
const passesFor = new Map(
  Object.entries(lookAlikes).flatMap(([latin, others]) =>
    [...others].map((other) => [other, latin] as const),
  ),
);

/** Letters of the Latin script that carry no separable accent. */
const plainLatin = new Map([
  ['ß', 'ss'],
  ['æ', 'ae'],
  ['œ', 'oe'],
  ['đ', 'd'],
  ['ł', 'l'],
  ['ø', 'o'],
  ['ı', 'i'],
]);

const invisible = /[\p{Mn}\p{Me}\p{Cf}]/u;
const latin = /[a-z]/u;
const otherLetter = /[\p{Script=Cyrillic}\p{Script=Greek}\p{Script=Armenian}]/u;

/** Letters in flags, boxes and discs, by where their alphabets begin; and a few pictures that pass for a letter. */
const alphabets = [0x1f1e6, 0x1f130, 0x1f150, 0x1f170];
const pictured = new Map([
  ['💲', '$'],
  ['⭕', 'o'],
  ['❌', 'x'],
  ['⭐', '*'],
  ['🌟', '*'],
  ['✨', '*'],
  ['❗', '!'],
  ['©', 'c'],
  ['®', 'r'],
  ['µ', 'u'],
  ['μ', 'u'],
  ['¢', 'c'],
  ['¥', 'y'],
]);

function boxed(point: number): string | null {
  const from = alphabets.find((first) => point >= first && point < first + 26);
  return from === undefined
    ? (pictured.get(String.fromCodePoint(point)) ?? null)
    : String.fromCharCode(97 + point - from);
}

/** The plain small letters of one code point, or '' where it is invisible. */
function plain(point: string): string {
  const small = (pictured.get(point) ?? point).normalize('NFKD').toLowerCase();
  const kept = [...small].filter((char) => !invisible.test(char)).join('');
  const square = boxed(point.codePointAt(0) ?? 0) ?? kept;
  return [...square].map((char) => plainLatin.get(char) ?? char).join('');
}

/** Folds a text; runs of Cyrillic, Greek or Armenian are folded only where Latin letters stand in the same run, or all of them look Latin and no other run is plainly of that script. */
export function foldText(text: string): Folded {
  const chars: string[] = [];
  const starts: number[] = [];
  const ends: number[] = [];
  const styled: boolean[] = [];
  let at = 0;
  for (const point of text) {
    const folded = plain(point);
    const isStyled = folded !== '' && latin.test(folded) && !/[a-zA-Z\u00c0-\u024f]/u.test(point);
    for (const char of folded.split('')) {
      chars.push(char === '’' || char === '‘' || char === '`' ? "'" : char);
      starts.push(at);
      ends.push(at + point.length);
      styled.push(isStyled);
    }
    at += point.length;
  }
  foldLookAlikes(chars, styled);
  return { text: chars.join(''), starts, ends, styled };
}

function foldLookAlikes(chars: string[], styled: boolean[]): void {
  const written = chars.some((char) => otherLetter.test(char) && !passesFor.has(char));
  let from = 0;
  while (from < chars.length) {
    let to = from;
    while (to < chars.length && !/\s/u.test(chars[to] ?? '')) to += 1;
    const run = chars.slice(from, to);
    const others = run.filter((char) => otherLetter.test(char) || passesFor.has(char));
    const allPass = others.length > 0 && others.every((char) => passesFor.has(char));
    if (others.length > 0 && ((allPass && !written) || run.some((char) => latin.test(char)))) {
      for (let index = from; index < to; index += 1) {
        const as = passesFor.get(chars[index] ?? '');
        if (as === undefined) continue;
        chars[index] = as;
        styled[index] = true;
      }
    }
    from = to + 1;
  }
}

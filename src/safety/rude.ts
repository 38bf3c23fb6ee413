import { foldText, type Folded } from './folding.js';
import { aimed, always, endings, harmless, ordinaryParts } from './rude-words.js';
import { disguised, pieced } from './disguise.js';
import { isRudeElsewhere, rudeElsewhere } from './other-tongues.js';
import { chunksOf, type Chunk } from './spoken.js';

/** A rude word that was found, how, and where in the original text. */
export interface Rude {
  readonly word: string;
  readonly how: 'plain' | 'disguised';
  readonly always: boolean;
  /** As it was written, in small letters; null where it was put together from pieces. */
  readonly raw: string | null;
  readonly start: number;
  readonly end: number;
}

const alwaysSet = new Set(always);
const squeeze = (word: string) => word.replace(/(.)\1+/gu, '$1');
/** Long words only: what may be told from its pieces, or backwards. */
const longWords = new Map(
  [...aimed, ...always].filter((word) => word.length >= 5).map((word) => [squeeze(word), word] as const),
);
const stems =
  'fuck shit bitch cunt wank bastard arsehole asshole dickhead faggot nigger whore bollock retard moron motherf penis vagina masturbat'.split(
    ' ',
  );

const isAlways = (word: string) => alwaysSet.has(word);

/** Every form of a listed word, endings put on: longer words take all of them, three letters only "s" and whole words like "head". */
const forms = new Map<string, string>();
for (const word of [...aimed, ...always]) {
  for (const ending of endings) {
    if (word.length >= 4 || (word.length === 3 && (ending === 's' || ending.length >= 4)))
      forms.set(word + ending, word);
  }
}
for (const word of [...aimed, ...always]) forms.set(word, word);
for (const word of harmless) forms.delete(word);
const squeezedForms = new Map(
  [...forms]
    .map(([form, word]) => [squeeze(form), word] as const)
    .filter(([form, word]) => squeeze(word).length >= 4 && !harmless.has(form)),
);
const stem = new RegExp(`^(?:${stems.join('|')})`, 'u');

/** The listed word that a plain word is, with or without an ending; null where it is none. */
function listed(word: string): string | null {
  const form = forms.get(word);
  if (form !== undefined) return form;
  return harmless.has(word) ? null : (stem.exec(word)?.[0] ?? null);
}

/** As `listed`, with drawn out letters ("stuuupid", "buttt", "iddiott"). */
function listedLoosely(word: string): string | null {
  const exact = listed(word) ?? listed(/^(\p{L}{3,6})\1+$/u.exec(word)?.[1] ?? '');
  if (exact !== null || harmless.has(word)) return exact;
  const bare = squeeze(word);
  if (bare === word || harmless.has(bare)) return null;
  const two = word.replace(/(.)\1{2,}/gu, '$1$1');
  const once = word.replace(/(.)\1{2,}/gu, '$1');
  return listed(two) ?? listed(once) ?? squeezedForms.get(bare) ?? null;
}

/** Signs and digits that stand for letters; "1" and its like are read as i, then as l. */
const signs: Readonly<Record<string, string>> = {
  '0': 'o',
  '3': 'e',
  '4': 'a',
  '5': 's',
  '7': 't',
  '8': 'b',
  '9': 'g',
  '6': 'g',
  '2': 'z',
  '@': 'a',
  $: 's',
  '+': 't',
  '(': 'c',
  '€': 'e',
  '£': 'l',
  '¡': 'i',
  '§': 's',
};
const strokes = /[1!|]/gu;

/** What a chunk may spell: signs read as letters in a few ways, marks between letters left out. */
function readings(chunk: string): readonly string[] {
  const core = chunk
    .replace(/^["'“”«([{<~_*¿]+(?=\p{L}|[$@|!1-9])/u, '')
    .replace(/[?.,;:"'“”»)\]}>~…]+$/u, '');
  const noBang = core.replace(/!+$/u, '');
  const out = new Set<string>();
  if (/^\p{L}(?:[^\p{L}\p{N}\s]{1,3}\p{L}){2,12}$/u.test(core)) out.add(core.replace(/[^\p{L}]/gu, ''));
  for (const text of new Set([core, noBang])) {
    if (!/\p{L}/u.test(text) || text.length > 40) continue;
    const mapped = [...text].map((char) => signs[char] ?? char).join('');
    for (const stroke of ['i', 'l']) {
      const spelt = mapped.replace(strokes, stroke);
      const letters = spelt.replace(/[^\p{L}]/gu, '');
      out.add(letters);
      if (letters.includes('v')) out.add(letters.replace(/vv/gu, 'w').replace(/v/gu, 'u'));
    }
  }
  return [...out];
}

/** Whether letters with gaps ("sh*t", "f***") may be a listed word: each sign one letter. */
function starred(chunk: string): string | null {
  const core = chunk
    .replace(/[^\p{L}*#%_■•.'?-]/gu, '')
    .replace(/^[.'?-]+|[.'?-]+$/gu, (ends) => (/^-{2,}$/u.test(ends) ? ends : ''));
  if (!/^\p{L}+[*#%■•_.'?-]+\p{L}*(?:[*#%■•_-]\p{L}*)?$/u.test(core) && !/^\p{L}*[*#%■•]+\p{L}+$/u.test(core))
    return null;
  if (core.length < 4 || core.length > 14 || /'(?:s|t|re|ve|ll|d|m)$/u.test(core)) return null;
  if (!/[*#%■•]|__/u.test(core) && !/^\p{L}{1,6}[_.'?-]\p{L}{1,6}$/u.test(core)) return null;
  const pattern = new RegExp(`^${core.replace(/[*#%■•_.'?-]/gu, '\\p{L}')}$`, 'u');
  const letters = core.replace(/[^\p{L}]/gu, '').length;
  if (letters < 2 && core.length > 5) return null;
  return (
    always.find((word) => pattern.test(word)) ??
    (letters >= 3 && /[*#%■•]/u.test(core) ? aimed.find((word) => pattern.test(word)) : undefined) ??
    null
  );
}

function fromChunk(chunk: Chunk): Rude | null {
  const plain = chunk.text.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '').replace(/'s$/u, '');
  const found = (word: string, how: Rude['how']): Rude => ({
    word,
    how,
    always: isAlways(word) || stems.includes(word) || how === 'disguised',
    raw: plain,
    start: chunk.start,
    end: chunk.end,
  });
  const straight = /^\p{L}+$/u.test(plain) ? listedLoosely(plain) : null;
  if (straight !== null) return found(straight, chunk.styled ? 'disguised' : 'plain');
  for (const part of plain.split(/[-/'’.,!?&+]+/u)) {
    if (part === plain || part.length < 3) continue;
    const word = listed(part);
    if (word !== null && (isAlways(word) || !/^\p{L}+-\p{L}+$/u.test(plain))) return found(word, 'plain');
  }
  const masked = starred(chunk.text);
  if (masked !== null) return found(masked, 'disguised');
  if (/^\d+\p{L}{1,2}$/u.test(plain) || /^\p{L}\d$/u.test(plain)) return null;
  for (const reading of readings(chunk.text)) {
    if (reading === plain || reading.length < 3) continue;
    const word = listedLoosely(reading);
    if (word !== null) return found(word, 'disguised');
  }
  for (const reading of new Set([plain, ...readings(chunk.text)])) {
    if (!/^\p{L}+$/u.test(reading) || harmless.has(reading)) continue;
    const word = disguised(reading) ?? (reading !== plain && isRudeElsewhere(reading) ? reading : null);
    if (word !== null) return found(word, 'disguised');
  }
  for (const part of plain.split(/[^\p{L}]+/u)) {
    const word = part === plain || part.length < 5 || harmless.has(part) ? null : disguised(part);
    if (word !== null) return found(word, 'disguised');
  }
  const backwards = longWords.get(squeeze([...plain].reverse().join('')));
  return backwards === undefined || harmless.has(plain) ? null : found(backwards, 'disguised');
}

/** Letters set apart, or a word cut into pieces: neighbouring chunks that join to a listed word where at least one is no ordinary word. */
function fromPieces(chunks: readonly Chunk[]): Rude[] {
  const out: Rude[] = [];
  const parts = chunks.map(
    (chunk) =>
      readings(chunk.text)[0] ??
      (chunk.text.length === 1 ? (signs[chunk.text] ?? chunk.text) : chunk.text).replace(/[^\p{L}]/gu, ''),
  );
  if (!parts.some((part) => part.length <= 3 && !ordinaryParts.has(part))) return out;
  for (let at = 0; at < parts.length; at += 1) {
    let joined = parts[at] ?? '';
    if (joined === '' || joined.length > 9) continue;
    let odd = !ordinaryParts.has(joined);
    let single = joined.length === 1;
    for (let to = at + 1; to < Math.min(parts.length, at + 12); to += 1) {
      const part = parts[to] ?? '';
      if (part === '' || part.length > 9) break;
      joined += part;
      odd ||= part.length <= 3 && !ordinaryParts.has(part);
      single &&= part.length === 1;
      if (joined.length > 14) break;
      const word =
        single && joined.length >= 3
          ? listed(joined)
          : joined.length >= 5 && odd
            ? (longWords.get(squeeze(joined)) ?? null)
            : null;
      const short = parts.slice(at, to + 1).some((piece) => piece.length <= 3);
      if (word === null || harmless.has(joined) || (!single && !short)) continue;
      out.push({
        word,
        how: 'disguised',
        always: true,
        raw: null,
        start: chunks[at]?.start ?? 0,
        end: chunks[to]?.end ?? 0,
      });
      break;
    }
  }
  return out;
}

/** A strong word cut in two ("as shole"), where one half is no ordinary word. */
function inTwo(chunks: readonly Chunk[]): Rude[] {
  return chunks.flatMap((chunk, at) => {
    const next = chunks[at + 1];
    const first = chunk.text.replace(/^[^\p{L}]+/u, '');
    const second = next?.text.replace(/[^\p{L}]+$/u, '') ?? '';
    if (!/^\p{L}+$/u.test(first) || !/^\p{L}+$/u.test(second)) return [];
    if (ordinaryParts.has(first) && ordinaryParts.has(second)) return [];
    const word = pieced(first, second);
    if (word === null) return [];
    return [
      {
        word,
        how: 'disguised' as const,
        always: true,
        raw: null,
        start: chunk.start,
        end: next?.end ?? chunk.end,
      },
    ];
  });
}

/** Every rude or hurtful word of a folded text, disguises seen through. */
export function rudeWords(folded: Folded): readonly Rude[] {
  const chunks = chunksOf(folded);
  const found: Rude[] = [];
  for (const chunk of chunks) {
    if (chunk.text.length > 60) continue;
    const one = fromChunk(chunk);
    if (one !== null) found.push(one);
  }
  for (const { word, at } of rudeElsewhere(folded.text)) {
    const start = folded.starts[at] ?? 0;
    found.push({
      word,
      how: 'plain',
      always: true,
      raw: word,
      start,
      end: folded.ends[at + word.length - 1] ?? start,
    });
  }
  return [...found, ...fromPieces(chunks), ...inTwo(chunks)];
}

/** The rude words of a plain text, for trying a list. */
export function rudeIn(text: string): readonly string[] {
  return rudeWords(foldText(text)).map(({ word }) => word);
}

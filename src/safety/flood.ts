import type { Finding } from '../../shared/judgements.js';

const finding = (rule: string, start: number, end: number): Finding => ({
  kind: 'flood',
  rule,
  place: { in: 'text', start, end },
});

/** Limits between eagerness ("sooooo cool", "ha ha ha ha") and a flood; ours. */
const most = { letters: 14, pattern: 24, words: 6, share: 0.6, signs: 12, marks: 8, lines: 12 };

/** Letters, words, pictures or signs poured out; found in the text as written. Each test is linear in the text. */
export function floodIn(text: string): Finding | null {
  const letters = /(\p{L})\1{13,}/iu.exec(text);
  if (letters) return finding('one letter over and over', letters.index, letters.index + letters[0].length);
  const pattern = /(\S{2,5}?)\1{5,}/iu.exec(text);
  if (pattern && pattern[0].length >= most.pattern && /\p{L}/u.test(pattern[0])) {
    return finding('the same letters over and over', pattern.index, pattern.index + pattern[0].length);
  }
  const marks = text.match(/[\u0300-\u036f\u0489]/gu)?.length ?? 0;
  const bases = text.match(/\p{Script=Latin}/gu)?.length ?? 0;
  if (marks >= most.marks && marks > bases * 1.2)
    return finding('letters piled up with marks', 0, text.length);
  return (
    emptyLines(text) ??
    counted(text) ??
    wordsOverAndOver(text) ??
    picturesOverAndOver(text) ??
    signsOnly(text) ??
    mashed(text)
  );
}

function emptyLines(text: string): Finding | null {
  const gap = /(?:\n[ \t]*){10,}\S/u.exec(text);
  return gap === null ? null : finding('empty lines over and over', gap.index, gap.index + gap[0].length);
}

/** Numbers or letters told in a row, twenty and more. */
function counted(text: string): Finding | null {
  const numbers = /(?<!\d)\d{1,4}(?:[\s,.]{1,3}\d{1,4}){19,}(?!\d)/u.exec(text);
  const letters = /(?<!\p{L})\p{L}(?:[\s,.]{1,3}\p{L}){21,}(?!\p{L})/u.exec(text);
  const run = numbers ?? letters;
  return run === null ? null : finding('told in a row', run.index, run.index + run[0].length);
}

function wordsOverAndOver(text: string): Finding | null {
  const words = text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  if (words.length < most.words) return null;
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  const top = Math.max(...counts.values());
  if (top >= most.words && top / words.length >= most.share)
    return finding('one word over and over', 0, text.length);
  const few = words.length >= 16 && counts.size <= Math.max(3, words.length / 8);
  return few ? finding('few words over and over', 0, text.length) : null;
}

function picturesOverAndOver(text: string): Finding | null {
  const pictures = text.match(/\p{Extended_Pictographic}/gu) ?? [];
  if (pictures.length < most.signs) return null;
  const words = text.match(/\p{L}+/gu)?.length ?? 0;
  return new Set(pictures).size <= 3 || words * 3 < pictures.length
    ? finding('pictures poured out', 0, text.length)
    : null;
}

function signsOnly(text: string): Finding | null {
  const signs = text.match(/[^\p{L}\p{N}\s\p{Extended_Pictographic}\p{M}]/gu)?.length ?? 0;
  const others = text.match(/[\p{L}\p{N}]/gu)?.length ?? 0;
  return signs >= most.signs && others * 2 < signs ? finding('signs poured out', 0, text.length) : null;
}

/** Keys struck at random, and the same line many times. */
function mashed(text: string): Finding | null {
  const mash =
    /(?<!\p{L})(?:(?:asd|sdf|dfg|jkl|hjk|qwe|wer|zxc|xcv)[a-z]{0,3}){3,}(?!\p{L})|(?<!\p{L})[bcdfghjklmnpqrstvwxz]{9,}(?!\p{L})/iu.exec(
      text,
    );
  if (mash && !/^(?:h[mn]+|[zm]+|s?h+)$/iu.test(mash[0]))
    return finding('keys struck at random', mash.index, mash.index + mash[0].length);
  const words = text.match(/\p{L}+/gu) ?? [];
  const struck = words.filter((word) => /[bcdfghjklmnpqrstvwxz]{5,}/iu.test(word) && word.length >= 6);
  if (struck.length >= 2 && struck.length * 2 >= words.length)
    return finding('keys struck at random', 0, text.length);
  const rows = /qwert[a-z]*|asdf[a-z]*|zxcv[a-z]*|hjkl[a-z]*/iu.exec(text);
  if (rows) return finding('keys struck at random', rows.index, rows.index + rows[0].length);
  const lines = text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const same = lines.length - new Set(lines).size;
  return same >= most.lines ? finding('the same line over and over', 0, text.length) : null;
}

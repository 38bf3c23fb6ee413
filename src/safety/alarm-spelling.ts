import { conceptsOf } from './alarm-words.js';

/** Real words that children write for a worry word; taken so only where another word of the post is misspelt. */
export const loose: ReadonlyMap<string, string> = new Map(
  Object.entries({
    beets: 'beats',
    beet: 'beat',
    wood: 'would',
    sins: 'since',
    no: 'know',
    nos: 'knows',
    dye: 'die',
    hare: 'hair',
    sum: 'some',
    cums: 'comes',
    cum: 'come',
    bin: 'been',
    hart: 'heart',
    alot: 'alot',
    weak: 'week',
  }),
);

/** Misspellings that sound doesn't catch. */
const listed: Readonly<Record<string, string>> = {
  happyer: 'happier',
  wayk: 'wake',
  yestday: 'yesterday',
  dusnt: 'dont',
  dosnt: 'dont',
  dosent: 'dont',
  doesent: 'dont',
  thay: 'they',
  sed: 'said',
  wud: 'would',
  cud: 'could',
  shud: 'should',
  bruther: 'brother',
  muther: 'mum',
  farther: 'dad',
  beeten: 'beaten',
  nite: 'night',
  rite: 'right',
  wen: 'when',
  wiv: 'with',
  alife: 'alive',
  kiling: 'killing',
  sins: 'since',
  lissen: 'listen',
  agin: 'again',
  agen: 'again',
  alwys: 'always',
  alwas: 'always',
  wonna: 'wanna',
  wona: 'wanna',
  gunna: 'going',
  coz: 'because',
  neva: 'never',
  nevr: 'never',
  forgoten: 'forgotten',
  shoutes: 'shouts',
  ponches: 'punches',
  kik: 'kick',
  kiks: 'kicks',
  hitt: 'hit',
  hitts: 'hits',
  stary: 'starve',
  breef: 'breathe',
  brethe: 'breathe',
  exsist: 'exist',
  cry: 'cry',
  lonly: 'lonely',
  feer: 'fear',
  hous: 'house',
  hom: 'home',
  slep: 'slept',
  parc: 'park',
  evn: 'even',
  mi: 'my',
  wot: 'what',
  muma: 'mum',
  bak: 'back',
  hav: 'have',
  deserv: 'deserve',
  hevin: 'heaven',
  hart: 'heart',
  luv: 'love',
  sumone: 'someone',
  hapens: 'happens',
  hapend: 'happened',
  happend: 'happened',
  hed: 'head',
  dady: 'dad',
  pushd: 'pushed',
  bleding: 'bleeding',
  plese: 'please',
  et: 'eaten',
  kil: 'kill',
  tel: 'tell',
  peple: 'people',
  pichers: 'pictures',
  miself: 'myself',
  cusin: 'cousin',
  rong: 'wrong',
  moning: 'morning',
  meself: 'myself',
  mysef: 'myself',
  myslef: 'myself',
  mself: 'myself',
  rote: 'wrote',
  leter: 'letter',
  punchd: 'punched',
  whipt: 'whipped',
  wippd: 'whipped',
  throo: 'threw',
  thru: 'through',
  thro: 'through',
  nuthing: 'nothing',
  nothin: 'nothing',
};

/** How a word sounds, roughly: doubled letters single, vowels by kind, silent letters gone. */
export function soundOf(word: string): string {
  return word
    .replace(/^kn/u, 'n')
    .replace(/^wr/u, 'r')
    .replace(/^wh/u, 'w')
    .replace(/ph/gu, 'f')
    .replace(/gh/gu, '')
    .replace(/tch/gu, 'ch')
    .replace(/ck/gu, 'k')
    .replace(/c(?=[eiy])/gu, 's')
    .replace(/c(?!h)/gu, 'k')
    .replace(/z/gu, 's')
    .replace(/(?<=.)e$/u, '')
    .replace(/(?<=..)(?:ed|id|t)$/u, 'd')
    .replace(/v/gu, 'f')
    .replace(/(.)\1+/gu, '$1')
    .replace(/(?<=.)(?:oo|ou|ew|u)[aeiouy]*/gu, 'u')
    .replace(/(?<=.)(?:ai|ay|ei|a)[iy]*/gu, 'A')
    .replace(/(?<=.)o[aeiy]*/gu, 'o')
    .replace(/(?<=.)[eiy][aeiouy]*/gu, 'i')
    .replace(/r(?=[^aeiouy]|$)/gu, '');
}

const bySound = new Map<string, string[]>();
for (const word of conceptsOf.keys())
  if (word.length >= 4 && /^\p{L}+$/u.test(word))
    bySound.set(soundOf(word), [...(bySound.get(soundOf(word)) ?? []), word]);

/** The worry word that an unknown word was meant for, by sound and at most two letters of difference, or null. */
export function soundsLike(word: string, knows: (word: string) => boolean): string | null {
  const known = Object.hasOwn(listed, word) ? listed[word] : undefined;
  if (known !== undefined) return known;
  if (word.length < 3 || knows(word)) return null;
  const most = word.length <= 6 ? 1 : 2;
  let best: string | null = null;
  let least = most + 1;
  for (const one of bySound.get(soundOf(word)) ?? []) {
    if (Math.abs(one.length - word.length) > most) continue;
    const away = distance(word, one);
    if (away < least) {
      best = one;
      least = away;
    }
  }
  return best;
}

/** Letters to change, add, drop or swap with a neighbour. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, k) => k);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

import { inside, madeUp, protectedWords, strong } from './strong-words.js';

/**
 * Which strong word a word spells in disguise. Every form is laid out once, when the file is read: neighbours swapped,
 * vowels dropped or changed for a sign-like letter, spelt by sound, turned round, in back slang. Words of ordinary
 * English are protected by a list.
 */
const vowel = /[aeiou]/u;
const endings = ['', 's', 'z', 'es', 'ed', 'er', 'ers', 'ing', 'in', 'y', 'face', 'head', 'hole', 'wit'];

/** A word as it sounds: "ph" as f, "ck", "q" and hard "c" as k, "x" as ks, "z" as s, "y" as i, doubles once. */
export function soundOf(word: string): string {
  return word
    .replace(/ph/gu, 'f')
    .replace(/ck|kk|q|c(?![eiyh])/gu, 'k')
    .replace(/x/gu, 'ks')
    .replace(/z/gu, 's')
    .replace(/(?<!^)y/gu, 'i')
    .replace(/(?:er|ah|uh)(?=s?$)/gu, 'a')
    .replace(/(.)\1+/gu, '$1');
}

function swapped(word: string): string[] {
  return [...word].slice(1).map((_, at) => {
    const letters = [...word];
    [letters[at], letters[at + 1]] = [letters[at + 1] ?? '', letters[at] ?? ''];
    return letters.join('');
  });
}

function changed(word: string): string[] {
  return [...word].flatMap((letter, at) =>
    at > 0 && vowel.test(letter)
      ? ['', 'x', 'v', 'q', 'oo', 'uu', 'ii', 'ee', 'w', 'y']
          .filter((other) => other !== '' || word.length > 3)
          .map((other) => word.slice(0, at) + other + word.slice(at + 1))
      : [],
  );
}

function turned(word: string): string[] {
  const onset = /^[^aeiou]+/u.exec(word)?.[0] ?? '';
  const rest = word.slice(onset.length);
  const slang = onset === '' ? [`${word}way`, `${word}yay`] : [`${rest}${onset}ay`, `${rest}${onset}ey`];
  return [[...word].reverse().join(''), ...(word.length >= 4 ? slang : [])];
}

/** Consonants alone, where three or more are left ("fck", "bstrd"). */
function bare(word: string): string[] {
  const left = word.slice(0, 1) + word.slice(1).replace(/[aeiou]/gu, '');
  return left.length >= 4 || /^(?:fck|sht|dck|btch)$/u.test(left) ? [left] : [];
}

function layOut(): ReadonlyMap<string, string> {
  const forms = new Map<string, string>();
  const add = (form: string, word: string) => {
    if (form.length >= 3 && !forms.has(form) && !protectedWords.has(form)) forms.set(form, word);
  };
  for (const word of strong) {
    if (word.length < 4) continue;
    for (const form of [...swapped(word), ...changed(word), ...turned(word), ...bare(word)]) add(form, word);
    for (const ending of ['s', 'ed', 'er', 'ing']) {
      for (const form of changed(word)) add(form + ending, word);
      add([...(word + ending)].reverse().join(''), word);
    }
  }
  for (const [word, others] of Object.entries(madeUp)) {
    for (const other of others.split(' ')) for (const ending of endings) add(other + ending, word);
  }
  return forms;
}

const forms = layOut();
const sounds = new Map(
  strong.flatMap((word) => endings.map((ending) => [soundOf(word + ending), word] as const)).toReversed(),
);
const runTogether = new RegExp(`(?:${inside.join('|')})`, 'u');
const innocentInside =
  /s?nigger|shit(?:ak|i?ta)|mi(?:s|d)hit|wank(?:el|y)|s(?:c|k)unthorpe|swank|(?:push|dish|rush|fish|wash|brush|crash|bush|cash|harsh|irish|british|english|fresh|with|spanish|polish|finish|punish|establish|publish)its?/u;

/** The strong word that a word of letters alone spells in disguise; null where it spells none, or is plain English. */
export function disguised(word: string): string | null {
  if (word.length < 3 || protectedWords.has(word)) return null;
  const form = forms.get(word) ?? forms.get(word.replace(/(.)\1+/gu, '$1'));
  if (form !== undefined) return form;
  const sound = word.length >= 4 ? sounds.get(soundOf(word)) : undefined;
  if (sound !== undefined) return sound;
  if (word.length < 8 || innocentInside.test(word)) return null;
  return runTogether.exec(word)?.[0] ?? null;
}

/** Every form laid out, for checking them against a dictionary. */
export const disguises: ReadonlyMap<string, string> = forms;

/** Whether two pieces, neither of them an ordinary word, make a strong one ("as shole", "bit ch"). */
export function pieced(first: string, second: string): string | null {
  const joined = first + second;
  if (joined.length < 4 || joined.length > 12 || innocentPairs.has(`${first} ${second}`)) return null;
  return strongSet.has(joined) ? joined : null;
}

const strongSet = new Set(strong.filter((word) => word.length >= 4));
const innocentPairs = new Set([
  'pen is',
  'as s',
  't its',
  'a rse',
  's hit',
  'tit s',
  'sh it',
  'was hit',
  'mo ron',
  'pi ss',
  'cu nt',
]);

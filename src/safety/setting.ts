import { foldText, type Folded } from './folding.js';
import { speak, type Spoken } from './spoken.js';

/** Words that carry no matter of their own. */
const small = new Set(
  (
    'a an the and or but so because that this these those it is its he she they we i you me him her us them my your his their our of in on at to for ' +
    'from with by as if then than was were be been am are do did does dont didnt not no yes can cant could will wont would should may might must has have ' +
    'had just really very too also about into out up down over under again there here when where who what why how which while some any all one like said ' +
    'says say think thinks maybe means mean because get gets got go goes going let lol haha omg ok okay hi hey oh um well ' +
    'part text story book page passage line word question sum-up'
  ).split(' '),
);

/** Takes the commonest endings off, so that "killed" in a post meets "kill" in the passage. */
export function stem(word: string): string {
  if (word.length <= 4) return word.replace(/(?<=\p{L}{3})s$/u, '');
  return word
    .replace(/'s$/u, '')
    .replace(/(?:ies|ied)$/u, 'y')
    .replace(/(?:ing|ed|es|s|ly|er|en)$/u, '')
    .replace(/(.)\1$/u, '$1')
    .replace(/e$/u, '');
}

/** What a post is read against: the passage's words, and who is in the class. */
export interface Setting {
  readonly passage: Spoken | null;
  readonly passageStems: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
}

/** Reads passage and nicknames once for a post; a nickname that the passage itself uses is no nickname there. */
export function settingOf(passage: string | undefined, names: readonly string[]): Setting {
  const folded: Folded | null = passage === undefined ? null : foldText(passage);
  const spoken = folded === null ? null : speak(folded, () => false);
  const words: string[] = [
    ...(folded?.text.match(/\p{L}[\p{L}'-]*/gu) ?? []),
    ...(spoken?.heard.map(({ word }) => word) ?? []),
  ];
  const stems = new Set([...words, ...words.map(stem)]);
  const known = names
    .map((name) => foldText(name).text.trim())
    .filter((name) => name !== '' && !stems.has(stem(name)));
  return { passage: spoken, passageStems: stems, names: new Set(known) };
}

/** Words of the post with matter of their own. */
export function matterOf(spoken: Spoken, from = 0, to = spoken.heard.length): readonly string[] {
  return spoken.heard
    .slice(from, to)
    .map(({ word }) => word)
    .filter((word) => word.length >= 3 && !small.has(word) && !/^[§/\d]/u.test(word));
}

/** Share of the post's matter that stands in the passage, 0..1; 0 without a passage or matter. */
export function overlap(words: readonly string[], setting: Setting): number {
  if (words.length === 0 || setting.passage === null) return 0;
  const inside = words.filter((word) =>
    word.split(' ').every((part) => setting.passageStems.has(stem(part)) || small.has(part)),
  );
  return inside.length / words.length;
}

/** Whether the passage itself says these words in this order. */
export function saysSo(words: string, setting: Setting): boolean {
  return setting.passage?.text.includes(` ${words.trim()} `) ?? false;
}

import { eachMatch, overlapping } from './each-match.js';
import type { Finding, ScreenInput, Screening } from '../../shared/judgements.js';
import { advertRules } from './advert-rules.js';
import { isHeld, teasing } from './aim.js';
import { languageRules } from './alarm-languages.js';
import { readAlarms, type AlarmReading } from './alarms.js';
import { floodIn } from './flood.js';
import { foldText, type Folded } from './folding.js';
import { contactRules } from './contact-rules.js';
import { cruelRules } from './cruel-rules.js';
import { hurtfulRules } from './hurtful-rules.js';
import { readsLike } from './learned.js';
import { featuresOf } from './learned-features.js';
import { linksIn } from './links.js';
import { namesIn } from './names.js';
import { personalRules } from './personal-rules.js';
import { phonesIn } from './phone.js';
import { rudeWords } from './rude.js';
import type { Rule } from './rule.js';
import { overlap, saysSo, settingOf, stem, type Setting } from './setting.js';
import { rangeOf, speak, type Spoken } from './spoken.js';
import { kind } from './touchy-words.js';
import { whereaboutsRules } from './whereabouts-rules.js';

/** Passages with their classes that are kept read. */
const mostSettings = 64;

const telling = [...personalRules, ...contactRules, ...whereaboutsRules];
const hurting = [...hurtfulRules, ...cruelRules];
/** Comparisons, which a kind word makes a compliment. */
const softened: ReadonlySet<string> = new Set(['a pupil compared', 'a pupil is a', 'you are a']);

/** A post made ready for the rules. */
interface Post {
  readonly text: string;
  readonly folded: Folded;
  readonly spoken: Spoken;
  readonly setting: Setting;
}

function sentenceOf(spoken: string, from: number, to: number): string {
  const start = spoken.lastIndexOf(' / ', from) + 1;
  const end = spoken.indexOf(' / ', Math.max(to - 1, 0));
  return ` ${spoken
    .slice(start, end < 0 ? undefined : end)
    .replace(/^\/ /u, '')
    .trim()} `;
}

/** Where rules over the spoken text match; `excused` says whether words found are the passage's own. */
function matches(rules: readonly Rule[], post: Post, excused: (words: string) => boolean): Finding[] {
  const { text } = post.spoken;
  const found: Finding[] = [];
  for (const rule of rules) {
    for (const match of eachMatch(rule.pattern, text)) {
      const words = ` ${match[0].trim()} `;
      if (rule.unless?.test(words) === true) continue;
      if (
        rule.unlessNear !== null &&
        sentenceOf(text, match.index, match.index + match[0].length).match(rule.unlessNear)
      )
        continue;
      if (excused(words)) continue;
      const place = rangeOf(post.spoken, match.index, match.index + match[0].length);
      found.push({ kind: rule.kind, rule: rule.name, place: { in: 'text', ...place } });
      break;
    }
  }
  return found;
}

/** What the alarm rules found, and the rules of other languages over the folded text. */
function alarms({ setting, folded }: Post, reading: AlarmReading): Finding[] {
  const found = reading.hits.filter(({ strong }) => strong).map(({ finding }) => finding);
  for (const rule of languageRules) {
    const match = eachMatch(rule.pattern, folded.text)[0];
    if (match === undefined || setting.passage?.text.includes(` ${match[0]} `)) continue;
    const place = {
      in: 'text',
      start: folded.starts[match.index] ?? 0,
      end: folded.ends[match.index + match[0].length - 1] ?? 0,
    } as const;
    found.push({ kind: rule.kind, rule: `${rule.name}: words of alarm`, place });
  }
  return found;
}

function hurts(post: Post): Finding[] {
  const { spoken, setting, folded } = post;
  const rude = rudeWords(folded)
    .filter((one) => isHeld(one, spoken, setting))
    .map((one): Finding => ({
      kind: 'hurtful',
      rule:
        one.how === 'disguised'
          ? 'rude word in disguise'
          : one.always
            ? 'rude word'
            : 'rude word for a person',
      place: { in: 'text', start: one.start, end: one.end },
    }));
  const friendly = kind.test(spoken.text);
  const cruel = matches(hurting, post, (words) => !/ §s? /u.test(words) && saysSo(words, setting)).filter(
    ({ rule }) => !(friendly && softened.has(rule)),
  );
  const about = teasing(spoken, setting, post.text);
  return [...rude, ...cruel, ...(about === null || rude.length + cruel.length > 0 ? [] : [about])];
}

function details(post: Post): Finding[] {
  const { folded, setting, text } = post;
  const found: Finding[] = [];
  for (const rule of telling) {
    for (const match of overlapping(rule.pattern, folded.text)) {
      const words = match[0];
      if (rule.unless !== null && words.match(rule.unless)) continue;
      if (setting.names.has(words.replace(/^@/u, ''))) continue;
      if (
        rule.story &&
        (isStory(words, folded.text, setting) || isTold(folded.text, match.index, rule.name, setting))
      )
        continue;
      const place = {
        in: 'text',
        start: folded.starts[match.index] ?? 0,
        end: folded.ends[match.index + words.length - 1] ?? 0,
      } as const;
      found.push({ kind: rule.kind, rule: rule.name, place });
      break;
    }
  }
  return [...found, ...phonesIn(folded), ...namesIn(text, setting)];
}

/** Whether a letter or somebody of the story says so: "the letter says meet me …", "mr fox lives …". */
function isTold(text: string, at: number, rule: string, setting: Setting): boolean {
  if (
    /in (?:the|this|that) (?:old )?(?:story|text|book|passage|poem|tale|legend|fable|film|movie|myth|play)(?!\p{L})/u.test(
      text,
    ) &&
    !/(?<!\p{L})(?:my|our|me)(?!\p{L})/u.test(text)
  )
    return true;
  const before = text.slice(Math.max(0, at - 60), at);
  if (rule.startsWith('meeting'))
    return (
      /^.{0,90}?["',] ?(?:said|says|whispered|wrote|told|asked)(?!\p{L})/u.test(text.slice(at)) ||
      /(?:letter|note|says|said|wrote|writes|written|told|tells)[ ,:"“'.-]{0,4}$/u.test(before)
    );
  if (rule !== 'address' && rule !== 'where a child lives') return false;
  const subject =
    /(?:mr|mrs|miss|captain|king|queen|the|old) (\p{L}+) (?:lives?|lived|is|was)(?![\p{L}])/u.exec(
      text.slice(Math.max(0, at - 60)),
    );
  return subject !== null && setting.passageStems.has(stem(subject[1] ?? ''));
}

/** Whether a detail is the story's: the passage has at least half of its telling words. */
function isStory(words: string, text: string, setting: Setting): boolean {
  const telling = words.match(/[\p{L}\p{N}]{3,}/gu) ?? [];
  const share = overlap(telling, setting);
  return (
    telling.length > 0 &&
    (share > 0.5 || (share === 0.5 && !/(?<!\p{L})(?:i|my|our|we|me)(?!\p{L})/u.test(text)))
  );
}

/** Makes posts ready for the rules; passages with their classes are kept read. */
function makeReader(
  knows: (word: string) => boolean,
): (input: ScreenInput) => Post & { readonly reading: AlarmReading } {
  const settings = new Map<string, Setting>();
  const kept = (passage: string | undefined, names: readonly string[]): Setting => {
    const key = `${names.join('\n')}\n\n${passage ?? ''}`;
    const known = settings.get(key);
    if (known !== undefined) return known;
    if (settings.size >= mostSettings) settings.clear();
    const made = settingOf(passage, names);
    settings.set(key, made);
    return made;
  };
  return ({ text, passage, names = [] }) => {
    const setting = kept(passage, names);
    const folded = foldText(text);
    const spoken = speak(folded, (word, at, all) => {
      if (!setting.names.has(word) && !isOwner(word, all[at + 1]?.word ?? '', setting)) return false;
      if (/^(?:a|an|the|one|two|three|every|some|this|that|little|old|young)$/u.test(all[at - 1]?.word ?? ''))
        return false;
      return !/^(?:redbreast|hood|goodfellow|birds?|nests?|eggs?|trees?|lea(?:f|ves)|feathers?|shell|dust)$/u.test(
        all[at + 1]?.word ?? '',
      );
    });
    return { text, folded, spoken, setting, reading: readAlarms(spoken, setting, knows) };
  };
}

/** What the learned layer sees of a post; for training. */
export function screenFeatures(
  knows: (word: string) => boolean,
): (input: ScreenInput) => ReturnType<typeof featuresOf> {
  const read = makeReader(knows);
  return (input) => {
    const { text, reading, setting } = read(input);
    return featuresOf(text, reading, setting);
  };
}

/** A nickname's possessive without its apostrophe: "Wrens mum". */
function isOwner(word: string, next: string, setting: Setting): boolean {
  return (
    word.endsWith('s') &&
    setting.names.has(word.slice(0, -1)) &&
    /^(?:mums?|moms?|dads?|house|family|parents|spelling|reading|writing|hair|face|shoes|bag|clothes|brother|sister|gran|nan|voice|answers?|questions?|ideas?|summary|turn|fault|lot|breath|lunch|desk|chair|accent|insta|snap|number|address|real|name|birthday|teeth|nose|coat|jumper|glasses|friends?|crush|boyfriend|girlfriend|phone|post)$/u.test(
      next,
    )
  );
}

/** Builds the screen: pure and synchronous, the same post gives the same findings. Whatever is found holds the post for an adult; an alarm also calls one. Words that `knows` doesn't know may be misspelt worry words. */
export function makeScreen(knows: (word: string) => boolean = () => true): (input: ScreenInput) => Screening {
  const read = makeReader(knows);
  return (input) => {
    const post = read(input);
    const { text, folded, spoken, setting, reading } = post;
    const flood = floodIn(text);
    const adverts = matches(advertRules, post, (words) => saysSo(words, setting));
    const ruled = [
      ...alarms(post, reading),
      ...hurts(post),
      ...details(post),
      ...linksIn(text, folded),
      ...(flood === null ? [] : [flood]),
      ...adverts,
    ];
    const findings = [...ruled, ...readsLike(text, reading, spoken, setting, ruled)].toSorted(
      (a, b) => a.place.start - b.place.start,
    );
    return { hold: findings.length > 0, alarm: findings.some(({ kind }) => kind === 'alarm'), findings };
  };
}

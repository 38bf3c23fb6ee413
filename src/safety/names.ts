import { eachMatch } from './each-match.js';
import type { Finding } from '../../shared/judgements.js';
import { stem, type Setting } from './setting.js';

/** Words that stand with a capital before a name or are one of a place or a title rather than a person's. */
const titled = new Set(
  (
    'mr mrs miss ms dr sir lady lord king queen prince princess captain uncle aunt saint professor mount lake river north south east west new great lower upper ' +
    'little big old the a an in on at i and but or so why how what who when where which he she it they we you my his her is was are did does do can yes no ok my'
  ).split(' '),
);
const notNames = new Set(
  (
    'street road lane avenue school park bridge hall house church castle island islands ocean sea bay town city village county forest wood woods hill hills moon sun ' +
    'sum question predict monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december ' +
    'manor tower palace farm cottage inn river valley mountain mountains lane close court place square christmas easter god english maths science history chapter page part lol omg thanks thank hello hi dear sir madam love yes no because maybe'
  ).split(' '),
);
/** Said of a person in one's own life. */
const cue =
  /(?:\bmy\b|\bour\b|\bi\b|\bi'?m\b|\bim\b|\bme\b|\bwe\b|\bfriend|\bcousin|\bin (?:my|our|this) class\b|\bsigned\b|\bis really\b|\breally is\b|\bsits?\b|=)/iu;
/** Said of books and of people whom everybody knows. */
const known =
  /\b(?:books?|author|writer|wrote|written|series|film|movie|character|story|tale|poem|famous|history|king|queen|president|reminds?|like in|musical|read|island|explorer|scientist|inventor|painter|legend|myth|lives? in a)\b/iu;
const toldName =
  /(?:\b(?:i am|i'?m|im|call me|called|this is|its|it's|is really|really is|real(?:ly)?|know|knows|signed|by|from|=|alias|aka|named|say hi to|ask for|ask)\s*[:,]?\s*)([\p{L}][\p{L}'’-]+(?:\s+[\p{Lu}]\.?)?\s+[\p{Lu}][\p{L}'’-]+)/gu;
/** Under a letter or inside a cover. */
const signedName =
  /\b(?:sincerely|regards|truly|faithfully|(?:with|lots of) love|love from|love,|belongs to|property of|owned by|written by|signed)\s*[:,]?\s*(\p{L}[\p{L}'’-]+(?:\s+\p{L}\.)?\s+\p{L}[\p{L}'’-]+)/giu;
/** "NAME Surname" as on a register. */
const registerName = /(?<!\p{L})(\p{Lu}{3,}(?:-\p{Lu}+)?,?\s+\p{Lu}\p{Ll}{2,})(?!\p{L})/gu;
/** "is really called …", "N = …" with small letters: two words that are no plain ones. */
const smallName =
  /(?:\b(?:really called|really named|real name is|call me|name'?s|=|also known as|aka|anyone know|anybody know|does anyone know|do you know|know a (?:kid|girl|boy) called|(?:girl|boy|kid|friend|cousin|mate) (?:called|named))\s*:?\s*)([\p{L}][\p{L}'’-]{1,})\s+([\p{L}][\p{L}'’-]{2,})/giu;

const plain = new Set(
  (
    'a an the is are was were to of in on at for from with by and or but not no yes so too very really just me my your his her its our their this that these those it he she they we you i ' +
    'what why how who when where which if then than because about like dont cant will would can could should may might has have had do does did some any all one two more most ' +
    'later now here there later maybe crazy lazy please when back tomorrow tonight today good bad happy sad big small same word words answer meaning anything something how'
  ).split(' '),
);

function finding(start: number, end: number): Finding {
  return { kind: 'personal', rule: 'full name', place: { in: 'text', start, end } };
}

/** A name with capitals or digits inside, as on apps, after a word that gives it. */
const handled =
  /\b(?:as|on|called|channel|follow|find|add|names?|user(?:name)?|tag|im|i'm|i am|is|its|it's|me|mine|search|watch|:)\s+@?((?:\p{Lu}\p{Ll}+){2,}\d*|\p{Lu}?\p{Ll}{2,}\p{Lu}\p{Ll}+\d*|\p{L}{3,}\d{2,})(?![\p{L}\p{N}])/gu;
const roles =
  /^(?:leader|questioner|summariser|summarizer|clarifier|predictor|reader|writer|partner|best|good|great|nice|cool|right|me|you|kind|smart|clever|friend|winner|the|a|an|my|our|so|not|next|first|second|third)$/u;

/** A nickname set equal to a name of two words, or of letters with dots: "heron = leo marchwood". */
function equals(text: string, setting: Setting): readonly Finding[] {
  return eachMatch(
    /(?<!\p{L})(\p{L}+)\s*(?:=|is really|is actually|aka|irl is|is called)\s*(\p{L}[\p{L}.'’-]+)\s+(\p{L}[\p{L}.'’-]+)/giu,
    text,
  ).flatMap((match) => {
    const [whole, nick = '', first = '', last = ''] = match.map((part) => part.toLowerCase());
    if (!setting.names.has(nick)) return [];
    const none = [first, last].some(
      (word) =>
        roles.test(word) ||
        plain.has(word) ||
        setting.passageStems.has(stem(word)) ||
        setting.names.has(word),
    );
    return none ? [] : [finding(match.index, match.index + (whole ?? '').length)];
  });
}

/** First name with surname: told as one ("call me …"), or two or three capitals in a row in talk about one's own life; names of the passage and of the class are none. */
export function namesIn(text: string, setting: Setting): readonly Finding[] {
  const inPassage = (word: string) =>
    setting.passageStems.has(stem(word.toLowerCase())) || setting.passageStems.has(word.toLowerCase());
  const out: Finding[] = [];
  for (const match of eachMatch(smallName, text)) {
    const [whole, first = '', last = ''] = match;
    if ([first, last].some((word) => plain.has(word.toLowerCase()) || inPassage(word))) continue;
    out.push(finding(match.index + whole.indexOf(first), match.index + whole.length));
  }
  for (const match of eachMatch(toldName, text)) {
    const name = match[1] ?? '';
    const words = name.split(/\s+/u).map((word) => word.toLowerCase().replace(/\.$/u, ''));
    if (words.some((word) => inPassage(word) || titled.has(word) || notNames.has(word) || plain.has(word)))
      continue;
    out.push(finding(match.index + match[0].indexOf(name), match.index + match[0].length));
  }
  for (const match of [
    ...eachMatch(signedName, text),
    ...(cue.test(text) ? eachMatch(registerName, text) : []),
  ]) {
    const name = match[1] ?? '';
    const words = name.toLowerCase().split(/[\s,.]+/u);
    if (words.some((word) => word !== '' && (inPassage(word) || notNames.has(word) || plain.has(word))))
      continue;
    out.push(finding(match.index + match[0].indexOf(name), match.index + match[0].length));
  }
  out.push(...equals(text, setting));
  for (const match of eachMatch(handled, text)) {
    if (setting.passageStems.has((match[1] ?? '').toLowerCase())) continue;
    out.push({ ...finding(match.index, match.index + match[0].length), rule: 'name on an app' });
  }
  if (out.length > 0 || !cue.test(text) || known.test(text)) return out;
  for (const match of eachMatch(
    /\p{Lu}\p{Ll}[\p{L}'’-]*(?:\s+\p{Lu}\.)?(?:\s+\p{Lu}\p{Ll}[\p{L}'’-]+){1,2}/gu,
    text,
  )) {
    const words = match[0].split(/\s+/u).map((word) => word.toLowerCase().replace(/\.$/u, ''));
    const before = /(\p{L}+)\.?\s*$/u.exec(text.slice(0, match.index))?.[1]?.toLowerCase() ?? '';
    if (
      titled.has(before) ||
      words.some(
        (word) => inPassage(word) || titled.has(word) || notNames.has(word) || setting.names.has(word),
      )
    )
      continue;
    out.push(finding(match.index, match.index + match[0].length));
  }
  return out;
}

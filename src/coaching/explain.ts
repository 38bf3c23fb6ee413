import type { Reason } from '../../shared/judgements.js';
import type { Place } from '../../shared/text.js';
import { fill } from './catalogue.js';
import { reasonWords } from './staff-words.js';

/** The texts that the places of reasons point into. */
export interface ReasonTexts {
  readonly segment: string;
  readonly text: string;
  readonly next?: string;
  readonly answer?: string;
}

/** Figures that are shares, 0..1, told as per cent; all others are told as they are. */
const shares: ReadonlySet<string> = new Set([
  'copied',
  'copiedFromPeers',
  'coverage',
  'evidence',
  'fit',
  'gist',
  'grounded',
  'mainIdea',
  'onTopic',
  'overlap',
  'probability',
  'share',
]);

/** The longest quotation shown, in characters; cut at a word. */
const longest = 90;

/** A reason in a tutor's words, with its quotation made now from the texts: `the text says it in one place: “…”`. A rule that has no words yet is told by its own name. */
export function explain(reason: Reason, texts: ReasonTexts): string {
  const words = wordsFor(reason);
  const quoted = reason.place === null ? null : quote(reason.place, texts);
  return quoted === null ? words : `${words}: “${quoted}”`;
}

function wordsFor({ rule, figures }: Reason): string {
  const slots = Object.fromEntries(
    Object.entries(figures ?? {}).map(([name, value]) => [name, figure(name, value)]),
  );
  const entry = Object.hasOwn(reasonWords, rule) ? reasonWords[rule as keyof typeof reasonWords] : undefined;
  if (entry === undefined) return rule;
  const missing = [...entry.words.matchAll(/\{(\w+)\}/gu)].some(
    ([, slot]) => !(slot !== undefined && slot in slots),
  );
  return missing ? rule : fill(entry, slots);
}

function figure(name: string, value: number): string {
  if (shares.has(name)) return `${Math.round(value * 100)} %`;
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}

/** What stands at a place, in one line; null where that text isn't there or the place lies outside it. */
function quote(place: Place, texts: ReasonTexts): string | null {
  const from = place.in === 'segment' ? texts.segment : place.in === 'text' ? texts.text : texts[place.in];
  if (from === undefined || place.start < 0 || place.end <= place.start || place.end > from.length)
    return null;
  const all = from.slice(place.start, place.end).replace(/\s+/gu, ' ').trim();
  if (all === '') return null;
  if (all.length <= longest) return all;
  const cut = all.slice(0, longest);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), longest - 30))} …`;
}

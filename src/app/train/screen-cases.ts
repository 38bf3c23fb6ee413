import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Concern } from '../../safety/learned.js';
import { screenFeatures } from '../../safety/screen.js';

/** A labelled post of an open set, as the screen's learned layer is fitted to it. */
export interface ScreenCase {
  readonly set: (typeof sets)[number];
  readonly writer: string;
  readonly text: string;
  readonly passage: string | null;
  readonly names: readonly string[];
  readonly hold: boolean;
  readonly features: readonly string[];
  /** Whether the post is of a concern; null where its label doesn't say. */
  readonly labels: Readonly<Record<Concern, boolean | null>>;
}

interface Row {
  readonly id: string;
  readonly text: string;
  readonly passage: string | null;
  readonly names: readonly string[];
  readonly hold: boolean;
  readonly alarm: boolean;
}

const find = createRequire(import.meta.url).resolve;
const sets = ['alarm-open', 'moderation-open', 'personal-open', 'alarm-practice'] as const;

/** Who wrote a post, by its id: "ala-a-…" is writer a, "alp-2-…" the second lot of practice posts, all else the first writer. */
function writerOf(id: string): string {
  return /^(?:ala|mod|per|alp)-(\w)-/u.exec(id)?.[1] ?? 'first';
}

/** Reads the open sets and the practice posts; sealed halves are never read here. */
export function readScreenCases(knows: (word: string) => boolean): readonly ScreenCase[] {
  const features = screenFeatures(knows);
  return sets.flatMap((set) =>
    readFileSync(find(`#fixtures/sets/screen/${set}.jsonl`), 'utf8')
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((line) => JSON.parse(line) as Row)
      .map(({ id, text, passage, names, hold, alarm }) => ({
        set,
        writer: writerOf(id),
        text,
        passage,
        names,
        hold,
        features: features({ text, names, ...(passage === null ? {} : { passage }) }).map(({ name }) => name),
        labels: {
          alarm,
          hurtful: set === 'moderation-open' ? hold : hold ? null : false,
          personal: set === 'personal-open' ? hold : hold ? null : false,
        },
      })),
  );
}

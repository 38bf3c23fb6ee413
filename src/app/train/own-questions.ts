import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Relationship } from '../../../shared/strategies.js';
import { readLines } from './read-lines.js';

/** A question of our own sets, as children write them, labelled by the decision rule. */
export interface OwnQuestion {
  readonly passage: string;
  readonly segment: string;
  readonly text: string;
  readonly relationship: Relationship | null;
  /** Null where it wasn't judged, like `answerable`. */
  readonly mainIdea: boolean | null;
  readonly answerable: boolean | null;
  readonly isQuestion: boolean;
}

interface OwnLine {
  readonly passage: string;
  readonly segment: number;
  readonly text: string;
  readonly relationship: Relationship | null;
  /** Null where it wasn't judged, like `answerable`. */
  readonly mainIdea: boolean | null;
  readonly answerable: boolean | null;
  readonly isQuestion: boolean;
}

/** Folder of a set in fixtures/sets. */
export function setFolder(name: string): string {
  return dirname(createRequire(import.meta.url).resolve(`#fixtures/sets/${name}/open.jsonl`));
}

/** Questions of the open part, or of the sealed one for a reported figure. */
export function readOwnQuestions(part: 'open' | 'sealed'): readonly OwnQuestion[] {
  const folder = setFolder('questions');
  const segments = new Map<string, readonly string[]>();
  return readLines<OwnLine>(folder, `${part}.jsonl`).map(({ passage, segment, ...line }) => {
    const known = segments.get(passage) ?? readSegments(join(folder, '..', 'passages', `${passage}.json`));
    segments.set(passage, known);
    return { ...line, passage, segment: known[segment] ?? '' };
  });
}

function readSegments(path: string): readonly string[] {
  return (JSON.parse(readFileSync(path, 'utf8')) as { segments: readonly string[] }).segments;
}

import { crc32 } from 'node:zlib';
import { Fault } from '../../shared/fault.js';
import type { EventRow, SaidRow, SealedRow, Tables } from './tables.js';

/*
 * A disk that changes a byte in the middle of a text leaves a database that is sound to SQLite, which keeps no sums of
 * its own. Each row of the journal, of words and of evidence has one (CRC-32, which finds every change of up to four
 * bytes in a row), looked at whenever the row is read.
 */

const sumOf = (...parts: readonly (string | number | null)[]): number => crc32(JSON.stringify(parts));

/** The sum of an event. */
export function sumOfEvent(row: Omit<EventRow, 'sum'>): number {
  return sumOf(row.class_id, row.version, row.type, row.form, row.at, row.body);
}

/** The sum of a text. */
export function sumOfSaid(row: Pick<SaidRow, 'class_id' | 'version' | 'n' | 'person' | 'text'>): number {
  return sumOf(row.class_id, row.version, row.n, row.person, row.text);
}

/** The sum of an alarm's words. */
export function sumOfSealed(row: Omit<SealedRow, 'sum'>): number {
  return sumOf(row.ref, row.class_id, row.person, row.at, row.text);
}

/** The sum of a try. */
export function sumOfEvidence(row: Pick<Tables['evidence'], 'class_id' | 'key' | 'person' | 'body'>): number {
  return sumOf(row.class_id, row.key, row.person, row.body);
}

/** What is said of a row that the disk has changed; it quotes nothing. */
export function damaged(what: string): Fault {
  return new Fault(
    'disk',
    `Cannot read ${what}, expected it as it was written, got damaged text`,
    'Stop, keep a copy of the folder as it is, and restore the newest backup.',
  );
}

/** Throws where a row isn't as it was written. */
export function mustBeWhole(kept: number | null, now: number, what: string): void {
  if (kept !== null && kept !== now) throw damaged(what);
}

/** Reads stored JSON; throws a `Fault` that quotes nothing, as the parser's own message would. */
export function readStored<T>(text: string, what: string): T {
  try {
    return JSON.parse(text) as T;
  } catch (error) {
    if (error instanceof SyntaxError) throw damaged(what);
    throw error;
  }
}

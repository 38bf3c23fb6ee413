import type { Register } from '../../shared/strategies.js';

/** Where a label comes from; nothing is taken from anybody's product. */
export type Origin = 'trade' | 'open standard' | 'plain words' | 'ours';

/** A whole sentence (or label) with {named} slots. A pupil's entry has two registers; where the older one is missing the younger serves. */
export type Entry =
  | { readonly from: Origin; readonly for: 'pupil'; readonly '8-10': string; readonly '11-14'?: string }
  | { readonly from: Origin; readonly for: 'staff'; readonly words: string };

/** A catalogue of everything that anybody is shown by one part. */
export type Catalogue = Readonly<Record<string, Entry>>;

/** Keeps the keys of a catalogue for its readers. */
export function catalogue<const C extends Catalogue>(entries: C): C {
  return entries;
}

/** Fills an entry's slots; throws where a slot has no value, since a half sentence is never shown. */
export function fill(
  entry: Entry,
  slots: Readonly<Record<string, string | number>> = {},
  register: Register = '8-10',
): string {
  const words =
    entry.for === 'staff'
      ? entry.words
      : ((register === '11-14' ? entry['11-14'] : undefined) ?? entry['8-10']);
  return words.replace(/\{(\w+)\}/gu, (_, slot: string) => {
    const value = slots[slot];
    if (value === undefined)
      throw new Error(`Cannot fill a sentence, expected a value for {${slot}}, got none`);
    return String(value);
  });
}

/** Every catalogue of the project: all that files named "-words" in src/coaching export, whoever wrote them. */
import { readdirSync } from 'node:fs';
import type { Catalogue } from '../../src/coaching/catalogue.js';

const folder = new URL('../../src/coaching/', import.meta.url);

function isCatalogue(value: unknown): value is Catalogue {
  return (
    typeof value === 'object' &&
    value !== null &&
    Object.values(value).length > 0 &&
    Object.values(value).every(
      (entry) => typeof entry === 'object' && entry !== null && 'for' in entry && 'from' in entry,
    )
  );
}

/** A catalogue by its file and the name of its export. */
export interface Named {
  readonly name: string;
  readonly entries: Catalogue;
}

/** Loads all of them; a file that exports no catalogue at all is a mistake and throws. */
export async function loadCatalogues(): Promise<readonly Named[]> {
  const files = readdirSync(folder).filter((file) => file.endsWith('-words.ts'));
  const found = await Promise.all(
    files.map(async (file) => {
      const exports = (await import(new URL(file, folder).href)) as Record<string, unknown>;
      const here = Object.entries(exports)
        .filter((pair): pair is [string, Catalogue] => isCatalogue(pair[1]))
        .map(([name, entries]) => ({ name: `${file} ${name}`, entries }));
      if (here.length === 0) throw new Error(`Cannot read ${file}, expected a catalogue, got none`);
      return here;
    }),
  );
  return found.flat();
}

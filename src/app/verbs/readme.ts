import { readFile, writeFile } from 'node:fs/promises';
import type { Verb } from '../io.js';
import { readmeTables, writeTables } from '../readme-tables.js';
import { allVerbs } from '../verbs.js';

/** Writes the README's tables of slash commands, settings and verbs from the code. */
export const verb: Verb = {
  name: 'readme',
  usage: 'readme',
  words: 'writes the README’s tables of slash commands, settings and verbs anew',
  async run() {
    const readme = await readFile('README.md', 'utf8');
    await writeFile('README.md', writeTables(readme, readmeTables(await allVerbs())));
    return 0;
  },
};

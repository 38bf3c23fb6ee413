import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readmeTables, writeTables } from '../../src/app/readme-tables.js';
import { allVerbs } from '../../src/app/verbs.js';

it('the README lists every slash command, setting and verb as the code has them', async () => {
  const readme = readFileSync('README.md', 'utf8');
  const tables = readmeTables(await allVerbs());
  expect(writeTables(readme, tables)).toBe(readme);
  for (const body of Object.values(tables)) expect(readme).toContain(body);
});

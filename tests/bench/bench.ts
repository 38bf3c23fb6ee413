/**
 * How quick the program is beside the least that could be done. Prints figures, asserts nothing. Each ratio is measured in
 * one run, both sides taking turns, since machines differ and other work makes some rounds slow; medians are shown.
 *
 *     npm run bench [-- --json] [-- rates|judges|store ...]
 */
import { parseArgs } from 'node:util';
import { table, type Figure } from './figures.js';
import { judgeFigures } from './judges.js';
import { rateFigures } from './rates.js';
import { storeFigures } from './store.js';

const parts: Readonly<Record<string, () => Promise<readonly Figure[]>>> = {
  rates: () => rateFigures(),
  judges: async () => judgeFigures(),
  store: storeFigures,
};

const { values, positionals } = parseArgs({
  options: { json: { type: 'boolean' }, library: { type: 'string' } },
  allowPositionals: true,
});
const wanted = positionals.length > 0 ? positionals : Object.keys(parts);
for (const name of wanted) {
  const part = name === 'rates' ? () => rateFigures(values.library) : parts[name];
  if (part === undefined)
    throw new Error(`Cannot measure ${name}, expected ${Object.keys(parts).join(', ')}`);
  const figures = await part();
  process.stdout.write(
    values.json ? figures.map((one) => `${JSON.stringify(one)}\n`).join('') : table(figures),
  );
}

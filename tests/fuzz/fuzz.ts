/** Gives the program a great many inputs through every way in: `npm run fuzz -- [--inputs N] [--seed N] [--only NAME]`. */
import { parseArgs } from 'node:util';
import { entrances, fuzz } from './run.js';

const { values } = parseArgs({
  options: { inputs: { type: 'string' }, seed: { type: 'string' }, only: { type: 'string' } },
});
const inputs = Number(values.inputs ?? 100_000);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 31));
const only = values.only === undefined ? entrances : entrances.filter(({ name }) => name === values.only);
if (!Number.isInteger(inputs) || !Number.isInteger(seed) || only.length === 0) {
  console.error(
    `Use --inputs N, --seed N, --only with one of: ${entrances.map(({ name }) => name).join(', ')}`,
  );
  process.exit(2);
}
console.error(`seed ${seed}`);
const result = await fuzz(inputs, seed, (words) => console.error(words), only);
for (const failure of result.failures) console.log(JSON.stringify(failure));
console.error(`${result.inputs} inputs, ${result.failures.length} failures, seed ${seed}`);
process.exitCode = result.failures.length > 0 ? 1 : 0;

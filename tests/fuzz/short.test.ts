import { describe, expect, it } from 'vitest';
import { chanceFrom } from './chance.js';
import { mustBeClear } from './entrance.js';
import { entrances, fuzz } from './run.js';
import { Fault } from '../../shared/fault.js';

const seed = Number(process.env['FUZZ_SEED'] ?? 20_261_126);
/** Inputs in all, but of those that take long for each only a few; `npm run fuzz` gives a hundred thousand. */
const many = 3000;
const few: Readonly<Record<string, number>> = { 'passage files': 15, 'arguments of verbs': 15 };

describe(`Whatever comes in, by seed ${seed}`, () => {
  it.each(entrances.map((entrance) => [entrance.name, entrance] as const))(
    '%s: nothing is thrown but a clear fault, nothing fails, hangs or shows what is another class’s',
    async (_, entrance) => {
      const part = few[entrance.name] ?? Math.round((many * entrance.share) / 100);
      const { inputs, failures } = await fuzz(part, seed, undefined, [entrance]);
      expect(failures).toEqual([]);
      expect(inputs).toBe(part);
    },
  );
});

describe('The run itself', () => {
  const broken = (run: () => void) =>
    ({
      name: 'broken',
      share: 1,
      open: async () => ({ next: () => ({ shown: 'it', run }), close: async () => {} }),
    }) as const;

  it('tells what was thrown, by which input of which seed', async () => {
    const { failures } = await fuzz(1, 7, undefined, [
      broken(() => {
        throw new TypeError('no such thing');
      }),
    ]);
    expect(failures).toEqual([
      {
        entrance: 'broken',
        seed: 7,
        input: 0,
        what: expect.stringContaining('no such thing') as string,
        shown: 'it',
      },
    ]);
  });

  it('takes a fault only where it is clear and says what to do', () => {
    expect(() => mustBeClear(new Fault('usage', 'Cannot do it, expected that', 'Do this.'))).not.toThrow();
    expect(() => mustBeClear(new Fault('usage', 'Cannot do it, expected that', ' '))).toThrow(
      'without a remedy',
    );
    expect(() => mustBeClear(new RangeError('deep'))).toThrow('deep');
  });

  it('gives the same inputs for the same seed', () => {
    const numbers = (from: number) => {
      const chance = chanceFrom(from);
      return Array.from({ length: 20 }, () => chance.int(1000));
    };
    expect(numbers(5)).toEqual(numbers(5));
    expect(numbers(5)).not.toEqual(numbers(6));
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Action } from '../../../shared/messages.js';
import {
  hashOf,
  markOf,
  readPressed,
  writeAct,
  writePressed,
} from '../../../src/channels/discord/custom-id.js';
import { readSubmitted, writeSubmitted } from '../../../src/channels/discord/submitted-id.js';

const text = fc.string({ maxLength: 40, unit: 'grapheme' });
const action: fc.Arbitrary<Action> = fc.record({
  kind: fc.constantFrom('move' as const, 'look' as const),
  name: fc.stringMatching(/^[a-z-]{1,20}$/),
  args: fc
    .array(fc.tuple(fc.stringMatching(/^[a-z][a-zA-Z]{0,9}$/), text), { maxLength: 4 })
    .map((pairs) => Object.fromEntries(pairs)),
});

it('brings any action back within the limit, whole or by its hash', () => {
  fc.assert(
    fc.property(
      action,
      fc.option(action),
      fc.stringMatching(/^[A-Za-z0-9_-]{0,25}$/),
      (one, origin, mark) => {
        const id = writeAct(one, origin, mark);
        expect(id.length).toBeLessThanOrEqual(100);
        expect(markOf(id)).toBe(mark);
        const read = readPressed(id);
        if (read?.does === 'act') expect(read.action).toEqual(one);
        else expect(read).toMatchObject({ does: 'long', hash: hashOf(one) });
        if (read?.does === 'long' && read.origin !== null) expect(read.origin).toEqual(origin);
      },
    ),
  );
});

it('finds the form of a button and of a sent form by the same hash, whatever the order of its arguments', () => {
  fc.assert(
    fc.property(action, fc.option(action), (one, origin) => {
      const turned = { ...one, args: Object.fromEntries(Object.entries(one.args).toReversed()) };
      expect(hashOf(turned)).toBe(hashOf(one));
      const id = writeSubmitted({ opening: 'o1', page: 1, action: one, origin });
      expect(id.length).toBeLessThanOrEqual(100);
      expect(readSubmitted(id)).toMatchObject({
        form: 'of a look',
        opening: 'o1',
        page: 1,
        hash: hashOf(one),
      });
    }),
  );
});

it('takes nothing for a button of ours that is none', () => {
  for (const id of ['', 'x', 'm', 'l|', '^', 'http://example.test']) expect(readPressed(id)).toBeNull();
  expect(readPressed(writePressed({ does: 'page', key: 'k', page: 2 }))).toEqual({
    does: 'page',
    key: 'k',
    page: 2,
  });
});

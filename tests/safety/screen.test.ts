import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ScreenInput } from '../../shared/judgements.js';
import { evaluateScreen, wilson } from '../../src/app/evaluate/screen.js';
import { makeScreen } from '../../src/safety/screen.js';

const screen = makeScreen();
const kinds = (input: ScreenInput) => screen(input).findings.map(({ kind }) => kind);
const held = (text: string, rest: Omit<ScreenInput, 'text'> = {}) => screen({ text, ...rest }).hold;

describe('what the passage says is no offence', () => {
  const tit = 'A blue tit weighs as much as a pencil. Great tits chase it from the nuts.';
  const witch = '"You ugly, stupid boy," hissed the witch. "You will sweep my floor."';
  test.each([
    ['a bird with an unlucky name', 'the tits fight over the nuts', tit],
    ['quoted words of a witch', 'why does the witch say you ugly, stupid boy', witch],
    [
      'a killing in the story',
      'why did the soldiers kill the dragon',
      'The soldiers killed the dragon at dawn.',
    ],
    ['a cry of despair in the story', 'she says i wish i were dead', 'Mina wrote: "I wish I were dead."'],
  ])('%s', (_, text, passage) => {
    expect(screen({ text, passage })).toEqual({ hold: false, alarm: false, findings: [] });
  });
  test('but its words turned on a pupil are held', () => {
    expect(held('Wren you ugly stupid boy', { passage: witch, names: ['Wren'] })).toBe(true);
  });
  test('and a child who says that its own life is like it alarms', () => {
    const passage = 'Tam ran away from the farm. Nobody would hit him there again.';
    expect(screen({ text: 'tam is like me, my dad hits me', passage }).alarm).toBe(true);
  });
});

describe('nicknames of the class', () => {
  const names = ['Wren', 'Heron'];
  test('are no personal detail', () => {
    expect(kinds({ text: '@heron i agree with Wren', names })).toEqual([]);
  });
  test('talk about a pupil that is neither about the passage nor about the work is looked at', () => {
    expect(kinds({ text: 'Wren still sleeps with a teddy', names })).toContain('hurtful');
    expect(kinds({ text: 'Heron went to the nurse on Monday', names })).toEqual(['off topic']);
  });
  test('a bird of the passage is no pupil', () => {
    expect(
      held('the heron stood still and ate a frog', { passage: 'A heron stood in the reeds.', names }),
    ).toBe(false);
  });
});

describe('ordinary childish talk passes', () => {
  test.each([
    'this part killed me 😂',
    'im dead lol',
    'my mum will kill me lol if im late',
    'ok the wolf is lowkey a genius',
    'i hate this chapter',
    'S O   C O O L',
    'what does inheritance mean',
    'the giant is an idiot',
    'i have 2 brothers and 1 sister',
    'je ne comprends pas',
  ])('%s', (text) => {
    expect(screen({ text })).toEqual({ hold: false, alarm: false, findings: [] });
  });
});

test('a finding points at its words in the text as written, whatever was folded', () => {
  const text = '🐟🐟 well ｓｔｕｐｉｄ wren';
  const [first] = screen({ text, names: ['Wren'] }).findings;
  expect(first && text.slice(first.place.start, first.place.end)).toBe('ｓｔｕｐｉｄ');
});

test('an alarm always holds', () => {
  const { hold, alarm } = screen({ text: 'my stepdad hits me' });
  expect({ hold, alarm }).toEqual({ hold: true, alarm: true });
});

test('whatever is written, places lie in the text and the same text gives the same findings', () => {
  const piece = fc.constantFrom(
    'you ',
    'my dad ',
    'hits ',
    'ｆ',
    '1d10t ',
    '…',
    '\u0336',
    '07700 900 123 ',
    '🐟',
    'wren ',
    '\n',
    'а',
    '@',
    '. ',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'binary', maxLength: 80 }),
        fc.array(piece, { maxLength: 30 }).map((all) => all.join('')),
      ),
      (text) => {
        const once = screen({ text, names: ['Wren'] });
        for (const { place } of once.findings) {
          expect(place.start).toBeGreaterThanOrEqual(0);
          expect(place.end).toBeLessThanOrEqual(text.length);
          expect(place.start).toBeLessThanOrEqual(place.end);
        }
        expect(screen({ text, names: ['Wren'] })).toEqual(once);
        expect(once.hold).toBe(once.findings.length > 0);
      },
    ),
    { numRuns: 300 },
  );
});

describe('nothing makes the screen slow', () => {
  /** Processor time of this process in ms, so that other work on the machine doesn't count. */
  const spent = (work: () => void) => {
    const from = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1000;
  };
  test.each(
    [
      'a',
      'ab ',
      'you are so so so ',
      '1 2 ',
      'one two three ',
      'a@b.',
      'i live in the ',
      'meet at the ',
      ' ',
      'he said he will ',
      'a.b',
      'my my ',
      'Aaa Bbb ',
      'f***',
      'a b c ',
      'a_',
      'dad mum ',
    ].map((piece) => ({ piece })),
  )('5000 characters of "$piece" take less than half a second', ({ piece }) => {
    const text = piece.repeat(Math.ceil(5000 / piece.length)).slice(0, 5000);
    screen({ text, names: ['Wren'] });
    expect(spent(() => screen({ text, names: ['Wren'] }))).toBeLessThan(500);
  });

  test('an ordinary post takes about a millisecond or less once the rules are warm', () => {
    const posts = readFileSync(
      new URL('../../fixtures/sets/screen/moderation-open.jsonl', import.meta.url),
      'utf8',
    )
      .trim()
      .split('\n')
      .map((line) => (JSON.parse(line) as { text: string }).text);
    const round = () => {
      for (const text of posts) screen({ text, names: ['Wren'] });
    };
    for (let times = 0; times < 4; times += 1) round();
    expect(spent(round) / posts.length).toBeLessThan(3);
  });
});

describe('the figures on the open sets, with Wilson’s intervals', () => {
  const rows = evaluateScreen(new URL('../../fixtures/sets', import.meta.url).pathname, ['open']);
  const value = (judge: string, figure: string) =>
    rows.find((row) => row.judge === `screen, ${judge}, open` && row.figure === figure);
  test.each([
    ['moderation', 'recall', 0.95, 1],
    ['moderation', 'false holds', 0, 0.02],
    ['personal', 'recall', 0.95, 1],
    ['personal', 'false holds', 0, 0.02],
    ['alarm', 'alarm recall', 0.98, 1],
    ['alarm', 'false alarms', 0, 0.05],
  ])('%s: %s lies between %d and %d', (judge, figure, low, high) => {
    const row = value(judge, figure);
    expect(row?.n).toBeGreaterThanOrEqual(60);
    expect(row?.value).toBeGreaterThanOrEqual(low);
    expect(row?.value).toBeLessThanOrEqual(high);
  });
  test('no hits of none is no figure: the interval is everything', () => {
    expect(wilson(0, 0)).toEqual([0, 1]);
  });
  /** Wilson 1927, arithmetic done from the formula: 81 of 263 gives .2553 to .3662. */
  test('Wilson’s interval agrees with a worked value', () => {
    const [low, high] = wilson(81, 263);
    expect(low).toBeCloseTo(0.2553, 3);
    expect(high).toBeCloseTo(0.3662, 3);
  });
});

/** Every page in a real browser: legible, large enough to press, narrow enough for a phone, and without a fault that axe finds. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { message, own, part, prose, slips, staffTo, talkTo } from '../support/fake-class.js';
import {
  comeIn,
  findings,
  hasChromium,
  openBrowser,
  openContext,
  skippedName,
} from '../support/open-browser.js';
import { openRoom, type OpenRoom } from '../support/open-room.js';

const pupilPages = [
  '/',
  '/talk',
  '/for-you',
  '/words',
  '/where',
  '/page',
  '/step/question',
  '/step/clarify',
  '/step/answer',
  '/nowhere',
  '/waiting',
  '/pictures',
];
const tutorPages = [
  '/waiting',
  '/digest',
  '/passages',
  '/preview?passage=p1',
  '/roster',
  '/slips',
  '/at-the-table',
  '/morning-list',
  '/talk',
  '/words',
  '/where',
  '/alarms',
  '/settings',
  '/commands',
  '/commands/passages/add',
  '/commands/held/publish',
  '/commands/roster/add',
  '/help',
];

/** Sizes of what can be pressed that is smaller than 44 px either way (WCAG 2.2, 2.5.5, target size enhanced). */
const smallTargets = `
  [...document.querySelectorAll('a, button, summary, input:not([type=hidden]), select, textarea, .tap-piece > span')]
    .filter((one) => one.getClientRects().length > 0 && !one.closest('.tap-piece > input, .unseen'))
    .filter((one) => !one.matches('.tap-piece input, .skip'))
    .map((one) => [one, (one.matches('input[type=radio], input[type=checkbox]') ? one.closest('label') : one)])
    .flatMap(([one, target]) => [...target.getClientRects()]
      .filter(({ width, height }) => height < 43.5 || (width < 43.5 && !one.matches('.tap-sentence span')))
      .map(({ width, height }) => one.tagName + ' "' + one.textContent.slice(0, 30) + '" ' + Math.round(width) + 'x' + Math.round(height)))
`;

if (!hasChromium) {
  test.skip(skippedName, () => undefined);
} else {
  let browser: Browser;
  let room: OpenRoom;
  beforeAll(async () => {
    browser = await openBrowser();
    room = await openRoom();
    const wren = slips['WREN-2345-67'];
    if (!wren) throw new Error('nobody');
    room.house.post(
      message(talkTo, 'Finch asks', [
        prose('Finch asks:'),
        { type: 'quotation', text: 'Why does each limpet need its own spot?', by: 'Finch' },
        {
          type: 'choices',
          prompt: null,
          choices: [
            { label: 'Answer', action: { kind: 'look', name: 'step', args: { do: 'answer' } }, main: true },
          ],
        },
      ]),
    );
    for (let n = 0; n < 5; n += 1)
      room.house.post(message(own(wren), `note ${n}`, [prose(`A note for you, number ${n}.`)]));
    room.house.post(message(staffTo, 'A note', [prose('Wren has told a grown-up.')]));
  });
  afterAll(async () => {
    await browser.close();
    await room.stop();
  });

  const visitors = [
    ['outside', null, ['/', '/in/WREN-2345-67', '/page', '/words']],
    ['a pupil', 'WREN-2345-67', pupilPages],
    ['a tutor', 'PLOVER-LINK', tutorPages],
    ['an administrator', 'HERON-LINK', ['/roster', '/settings', '/commands/roster/erase']],
    ['a safeguarding lead', 'TERN-LINK', ['/alarms', '/alarm-words?alarm=a1']],
    ['a safeguarding deputy', 'KNOT-LINK', ['/alarms', '/commands/held/alarms']],
  ] as const;

  const dress = (page: Page, look: string): Promise<unknown> =>
    page.evaluate(`document.documentElement.className = ${JSON.stringify(look)}`);

  /** All that is wrong with the page that is open, one line each. */
  const wrong = async (page: Page): Promise<string[]> => {
    const found: string[] = [];
    const note = (where: string, what: readonly string[]): void => {
      found.push(...what.map((one) => `${where}: ${one}`));
    };
    note('axe', await findings(page));
    for (const ground of ['foam', 'night']) {
      await dress(page, `size-normal spacing-normal ground-${ground}`);
      note(`axe, ${ground}`, await findings(page, ['color-contrast']));
    }
    for (const width of [1200, 360, 320]) {
      await page.setViewportSize({ width, height: 740 });
      for (const look of width === 320
        ? ['normal spacing-normal', 'largest spacing-wide']
        : ['normal spacing-normal']) {
        await dress(page, `size-${look} ground-sand`);
        note(`small at ${width} px, ${look}`, await page.evaluate<string[]>(smallTargets));
        const [content, window] = await page.evaluate<[number, number]>(
          '[document.documentElement.scrollWidth, document.documentElement.clientWidth]',
        );
        if (content > window) note(`wide at ${width} px, ${look}`, [`${content} px`]);
      }
    }
    return found;
  };

  describe('Every page has nothing that axe finds in any colour, targets of 44 px, and fits 320 px in the largest letters', () => {
    test.each(visitors)('for %s', { timeout: 300_000 }, async (_, code, paths) => {
      const { context, outside } = await openContext(browser, { viewport: { width: 1200, height: 740 } });
      const page = await context.newPage();
      if (code !== null) await comeIn(page, room.url, code);
      for (const path of paths) {
        await page.goto(room.url + path, { waitUntil: 'domcontentloaded' });
        await page.evaluate("document.querySelectorAll('details').forEach((one) => (one.open = true))");
        expect([path, await wrong(page)]).toEqual([path, []]);
      }
      expect(outside).toEqual([]);
      await context.close();
    });
  });

  test('The page that asks for pictures is as good as the others', { timeout: 120_000 }, async () => {
    const { context } = await openContext(browser, { viewport: { width: 1200, height: 740 } });
    const page = await context.newPage();
    for (const key of ['', 'leaf boat key']) {
      room.house.secondKeys.set(slips['FNCH-2345-67']!.person, key);
      await page.goto(`${room.url}/in/FNCH-2345-67`);
      await page.getByRole('button', { name: 'Come in' }).click();
      await page.getByRole('group', { name: 'Third picture' }).waitFor();
      await page.evaluate("document.querySelectorAll('details').forEach((one) => (one.open = true))");
      expect([key, await wrong(page)]).toEqual([key, []]);
    }
    room.house.secondKeys.clear();
    await context.close();
  });

  // Widths of phones and tablets as their makers give them (CSS px; from memory).
  test.each([
    ['a small Android phone', 360],
    ['a small iPhone', 375],
    ['an iPhone', 390],
    ['an Android phone', 412],
    ['an iPad', 820],
  ])(
    'The page for the table fits %s, its picks in rows, the text larger than elsewhere',
    async (_, width) => {
      const { context } = await openContext(browser, { viewport: { width, height: 800 }, hasTouch: true });
      const page = await context.newPage();
      room.house.show('at-the-table', (who) => [
        message(own(who), 'At the table', [
          { type: 'quotation', text: part, by: null, reading: true },
          {
            type: 'form',
            title: 'Note a turn',
            action: { kind: 'move', name: 'note-live', args: {} },
            submit: 'Note it',
            fields: ['Wren Finch Pipit Dunlin', 'Level-0 Level-1 Level-2 Level-3'].map((words, nth) => ({
              kind: 'pick',
              name: nth === 0 ? 'person' : 'level',
              label: 'Pick',
              required: true,
              options: words.split(' ').map((label) => ({ value: label, label })),
            })),
          },
        ]),
      ]);
      await comeIn(page, room.url, 'PLOVER-LINK');
      await page.goto(`${room.url}/at-the-table`);
      const [content, size, base, rows, picks] = await page.evaluate<
        [number, number, number, number, number]
      >(`(() => {
      const tops = [...document.querySelectorAll('fieldset.field')].map((set) =>
        [...set.querySelectorAll('.pick')].map((one) => Math.round(one.getBoundingClientRect().top)));
      return [
        document.documentElement.scrollWidth,
        parseFloat(getComputedStyle(document.querySelector('.reading blockquote')).fontSize),
        parseFloat(getComputedStyle(document.body).fontSize),
        tops.reduce((sum, set) => sum + new Set(set).size, 0),
        tops.flat().length,
      ];
    })()`);
      expect(content).toBeLessThanOrEqual(width);
      expect(size).toBeGreaterThanOrEqual(base * 1.5);
      expect(picks).toBeGreaterThan(0);
      expect(rows).toBeLessThan(picks);
      expect(await page.evaluate<string[]>(smallTargets)).toEqual([]);
      await context.close();
    },
  );

  test('The check of targets sees one that is too small', async () => {
    const { context } = await openContext(browser);
    const page = await context.newPage();
    await page.goto(room.url);
    await page.evaluate(
      "document.querySelector('main').insertAdjacentHTML('beforeend', '<a href=\"/\">x</a>')",
    );
    expect(await page.evaluate<string[]>(smallTargets)).toHaveLength(1);
    await context.close();
  });

  // British Dyslexia Association style guide: 16-19 px, line spacing 1.5, 60-70 characters a line, left-aligned.
  test('The text to read is set as the style guide for dyslexic readers asks', async () => {
    const { context } = await openContext(browser, { viewport: { width: 1280, height: 900 } });
    const page = await context.newPage();
    await comeIn(page, room.url, 'WREN-2345-67');
    const [base, size, height, align, family, perLine, loaded] = await page.evaluate<
      [number, number, number, string, string, number, boolean]
    >(`(async () => {
      await document.fonts.ready;
      const text = document.querySelector('.reading blockquote');
      const style = getComputedStyle(text);
      const range = document.createRange();
      range.selectNodeContents(text);
      const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size;
      return [
        parseFloat(getComputedStyle(document.body).fontSize),
        parseFloat(style.fontSize),
        parseFloat(style.lineHeight) / parseFloat(style.fontSize),
        style.textAlign,
        style.fontFamily,
        text.textContent.length / lines,
        document.fonts.check('18px "Atkinson Hyperlegible"'),
      ];
    })()`);
    expect(base).toBeGreaterThanOrEqual(16);
    expect(base).toBeLessThanOrEqual(19);
    expect(size).toBeGreaterThan(base);
    expect(height).toBeGreaterThanOrEqual(1.5);
    expect(['left', 'start']).toContain(align);
    expect(family).toContain('Atkinson Hyperlegible');
    expect(perLine).toBeGreaterThan(45);
    expect(perLine).toBeLessThanOrEqual(70);
    expect(loaded).toBe(true);
    await context.close();
  });

  test('The digest on paper is black on white with nothing to press, on A4 and on Letter', async () => {
    const { context } = await openContext(browser, { viewport: { width: 794, height: 1123 } });
    const page = await context.newPage();
    await comeIn(page, room.url, 'PLOVER-LINK');
    await page.goto(`${room.url}/digest`);
    await page.emulateMedia({ media: 'print' });
    for (const name of ['What waits', 'Sign out', 'How the page looks']) {
      expect(await page.getByText(name, { exact: true }).isVisible()).toBe(false);
    }
    expect(await page.getByText('met 3 of 5').isVisible()).toBe(true);
    expect(await page.evaluate('getComputedStyle(document.documentElement).backgroundColor')).toBe(
      'rgb(255, 255, 255)',
    );
    for (const format of ['A4', 'Letter']) expect((await page.pdf({ format })).length).toBeGreaterThan(1000);
    await context.close();
  });

  /** How many sheets a page takes. */
  const sheets = async (page: Page, format: string): Promise<number> =>
    (await page.pdf({ format })).toString('latin1').match(/\/Type \/Page\b/gu)?.length ?? 0;

  test('Six slips fit one sheet of A4 and of Letter, two in a row, each with its code on one line', async () => {
    const { context } = await openContext(browser, { viewport: { width: 680, height: 960 } });
    const page = await context.newPage();
    await comeIn(page, room.url, 'PLOVER-LINK');
    await page.goto(`${room.url}/slips`);
    await page.getByRole('button', { name: 'Make new slips for Limpets' }).click();
    await page.getByRole('heading', { name: 'Slips of Limpets' }).waitFor();
    for (const format of ['A4', 'Letter']) expect([format, await sheets(page, format)]).toEqual([format, 1]);
    await page.emulateMedia({ media: 'print' });
    const drawn = await page.evaluate<
      [number, number, string, number][]
    >(`[...document.querySelectorAll('.slip')].map((slip) => {
      const box = slip.getBoundingClientRect();
      const code = slip.querySelector('strong');
      return [Math.round(box.left), Math.round(box.top), getComputedStyle(slip).borderTopStyle, code.getClientRects().length];
    })`);
    expect(drawn).toHaveLength(6);
    expect(new Set(drawn.map(([left]) => left)).size).toBe(2);
    expect(new Set(drawn.map(([, top]) => top)).size).toBe(3);
    for (const [, , border, lines] of drawn) expect([border, lines]).toEqual(['dashed', 1]);
    for (const name of ['Make new slips for Limpets', 'Print this page', 'Sign out'])
      expect(await page.getByText(name, { exact: true }).isVisible()).toBe(false);
    await context.close();
  });

  test('The morning list is one sheet of A4 and of Letter', async () => {
    const { context } = await openContext(browser, { viewport: { width: 794, height: 1123 } });
    const page = await context.newPage();
    await comeIn(page, room.url, 'PLOVER-LINK');
    await page.goto(`${room.url}/morning-list`);
    expect(await page.getByRole('button', { name: 'Print this page' }).isVisible()).toBe(true);
    for (const format of ['A4', 'Letter']) expect([format, await sheets(page, format)]).toEqual([format, 1]);
    await context.close();
  });
}

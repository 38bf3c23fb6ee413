import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findings, hasChromium, openBrowser, openContext, skippedName } from '../support/open-browser.js';
import { serve, type Served } from '../support/served.js';

const phone = { width: 320, height: 640 };
const desk = { width: 1200, height: 900 };

describe.skipIf(!hasChromium)(hasChromium ? 'The whole job in the room' : skippedName, () => {
  let folder: string;
  let server: Served;
  let browser: Browser;
  const outside: string[][] = [];

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'turnstone-room-'));
    server = await serve(folder);
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  });

  async function come(link: string, viewport: typeof phone, javaScriptEnabled = true): Promise<Page> {
    const opened = await openContext(browser, { viewport, javaScriptEnabled });
    outside.push(opened.outside);
    const page = await opened.context.newPage();
    await page.goto(link);
    await page.getByRole('button', { name: 'Come in' }).click();
    await page.getByRole('navigation', { name: 'Pages' }).waitFor();
    return page;
  }

  /** Fills the one text of a step's form and presses its big button, then sends the draft. */
  async function write(page: Page, step: string, text: string): Promise<string> {
    await page.goto(`${server.ready.url}/step/${step}`);
    await page.getByRole('main').locator('textarea[name=text]').fill(text);
    await page.getByRole('main').locator('button.main').click();
    const feedback = await page.getByRole('main').innerText();
    await page.getByRole('main').getByRole('button', { name: 'Send it' }).first().click();
    return feedback;
  }

  it('from a link to a digest: a pupil with script, one without, a tutor who publishes, and nothing asked of the network', async () => {
    const [wrenLink = '', finchLink = ''] = server.ready.links.pupils;
    const wren = await come(wrenLink, phone);
    const finch = await come(finchLink, phone, false);
    const tutor = await come(server.ready.links.tutor, desk);

    // Each pupil's page has one big thing to do.
    await expect.poll(() => wren.getByRole('main').locator('.main').count()).toBe(1);
    await wren.getByRole('main').getByRole('button', { name: 'Not sure yet' }).click();

    const feedback = await write(
      wren,
      'question',
      'why does grandmother need a clock that only shows the sea',
    );
    expect(feedback).toMatch(/You asked why or how|Your question goes to/u);
    await write(finch, 'sum-up', 'A clock tells when the harbour is full.');

    // A new class holds what is doubtful; this one now holds everything: nobody sees a word before the tutor does.
    await tutor.goto(`${server.ready.url}/commands`);
    await tutor
      .getByRole('textbox', { name: 'Type a slash command' })
      .fill('/class set setting:moderation value:hold everything');
    await tutor.getByRole('button', { name: 'Do it' }).click();
    await finch.goto(`${server.ready.url}/talk`);
    expect(await finch.getByRole('main').innerText()).toContain('only shows the sea');
    await finch
      .getByRole('main')
      .getByRole('link', { name: 'Answer' })
      .or(finch.getByRole('main').getByRole('button', { name: 'Answer' }))
      .first()
      .click();
    await finch
      .getByRole('main')
      .locator('textarea[name=text]')
      .fill('so she knows when you can walk to the rock');
    await finch.getByRole('main').locator('button.main').click();
    await finch.getByRole('main').getByRole('button', { name: 'Send it' }).first().click();

    // The answer reaches the asker's open page by itself once it is public.
    await wren.goto(`${server.ready.url}/`);
    expect(await wren.getByRole('main').innerText()).not.toContain('walk to the rock');
    await tutor.goto(`${server.ready.url}/waiting`);
    await tutor.getByRole('button', { name: /^Publish these \d/ }).click();
    await expect
      .poll(() => wren.getByRole('main').innerText(), { timeout: 20_000 })
      .toContain('walk to the rock');

    await tutor.goto(`${server.ready.url}/digest`);
    const digest = await tutor.getByRole('main').innerText();
    for (const words of ['For the next session', 'Wren', 'Finch', 'only shows the sea', 'not enough yet'])
      expect(digest).toContain(words);
    expect(outside.flat()).toEqual([]);
  }, 180_000);

  it('a passage added, set and read by typing slash commands', async () => {
    const teacher = await come(server.ready.links.teacher, desk);
    await teacher.goto(`${server.ready.url}/commands`);
    const typed =
      'title:Two Kites text:Mo made a kite from an old sail. It was heavy, but it flew well.\n\nOne day the string snapped, because it had rubbed on the gate. Mo ran after his kite. It hung in a tall tree by the canal.';
    await teacher.getByRole('textbox', { name: 'Type a slash command' }).fill(`/passages add ${typed}`);
    await teacher.getByRole('button', { name: 'Do it' }).click();
    await teacher.goto(`${server.ready.url}/passages`);
    expect(await teacher.getByRole('main').innerText()).toContain('Two Kites');
    await teacher.goto(`${server.ready.url}/commands`);
    await teacher.getByRole('textbox', { name: 'Type a slash command' }).fill('/practise start');
    await teacher.getByRole('button', { name: 'Do it' }).click();
    expect(await teacher.getByRole('main').innerText()).toContain('expected one of /passages');
  });

  it.each([
    [
      'a pupil on a small phone',
      0,
      phone,
      ['', 'talk', 'for-you', 'words', 'step/question', 'step/sum-up', 'step/clarify', 'step/predict'],
    ],
    [
      'a tutor',
      'tutor',
      desk,
      [
        'waiting',
        'digest',
        'passages',
        'roster',
        'at-the-table',
        'morning-list',
        'talk',
        'settings',
        'commands',
        'words',
        'alarms',
      ],
    ],
  ] as const)(
    '%s meets no barrier that axe knows, and nothing scrolls sideways',
    async (_, who, size, paths) => {
      const page = await come(
        who === 'tutor' ? server.ready.links.tutor : (server.ready.links.pupils[2] ?? ''),
        size,
      );
      for (const path of paths) {
        await page.goto(`${server.ready.url}/${path}`);
        expect([path, await findings(page)]).toEqual([path, []]);
        const wide = await page.evaluate<number>('document.documentElement.scrollWidth - window.innerWidth');
        expect([path, wide <= 0]).toEqual([path, true]);
      }
    },
  );
});

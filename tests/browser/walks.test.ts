/** What people do in the room: by keyboard alone, without script, and live with it. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { message, own, prose, slips, talkTo } from '../support/fake-class.js';
import { comeIn, hasChromium, openBrowser, openContext, skippedName } from '../support/open-browser.js';
import { openRoom, type OpenRoom } from '../support/open-room.js';

if (!hasChromium) {
  test.skip(skippedName, () => undefined);
} else {
  let browser: Browser;
  let room: OpenRoom;
  let context: BrowserContext;
  let page: Page;
  let faults: string[];
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());
  beforeEach(async () => {
    room = await openRoom({ live: { keepAlive: 1000, gather: 20, each: 6, all: 50 } });
    const opened = await openContext(browser);
    context = opened.context;
    page = await context.newPage();
    faults = [];
    page.on('pageerror', ({ message: words }) => faults.push(words));
    page.on('console', (line) => {
      if (line.type() === 'error' && !line.text().includes('status of 4')) faults.push(line.text());
    });
  });
  afterEach(async () => {
    await context.close();
    await room.stop();
    expect(faults).toEqual([]);
  });

  const say = (text: string): void => room.house.post(message(talkTo, text, [prose(text)]));
  const focused = (): Promise<string> =>
    page.evaluate<string>(
      'document.activeElement.textContent.trim() || document.activeElement.name || document.activeElement.id',
    );
  const tabTo = async (name: string): Promise<void> => {
    for (let presses = 0; presses < 60; presses += 1) {
      if ((await focused()) === name) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`the keyboard never reached ${name}`);
  };

  describe('By keyboard alone', () => {
    test('a pupil comes in, asks a question and posts it, and sees at each step where they are', async () => {
      await page.goto(room.url);
      await tabTo('code');
      await page.keyboard.type('WREN-2345-67');
      await page.keyboard.press('Enter');
      await page.getByRole('navigation').waitFor();
      await tabTo('Skip to the page');
      await page.keyboard.press('Enter');
      await tabTo('Ask a question');
      expect(await page.evaluate('getComputedStyle(document.activeElement).outlineStyle')).toBe('solid');
      await page.keyboard.press('Enter');
      await page.getByLabel('Your question').waitFor();
      await page.getByLabel('Your question').focus();
      await page.keyboard.type('why does it go back?');
      await tabTo('Show me what you think');
      await page.keyboard.press('Enter');
      await page.getByText('About your question').waitFor();
      await expect.poll(() => page.evaluate('document.activeElement.id')).toBe('answer');
      await tabTo('Post it');
      await page.keyboard.press('Space');
      await page.getByText('Your question is in the talk now.').waitFor();
      expect(room.house.updates.map(({ move }) => move)).toEqual(['send-draft', 'post-draft']);
    });

    test('three pictures are picked with arrows, each heard by its word', async () => {
      room.house.secondKeys.set(slips['WREN-2345-67']!.person, 'boat leaf key');
      await page.goto(`${room.url}/in/WREN-2345-67`);
      await page.getByRole('button', { name: 'Come in' }).press('Enter');
      await page
        .getByRole('radiogroup')
        .or(page.getByRole('group', { name: 'First picture' }))
        .first()
        .waitFor();
      for (const [field, presses] of [
        ['first', 1],
        ['second', 0],
        ['third', 2],
      ] as const) {
        await page.locator(`input[name=${field}]`).first().focus();
        await page.keyboard.press('Space');
        for (let n = 0; n < presses; n += 1) await page.keyboard.press('ArrowRight');
      }
      expect(await page.getByRole('radio', { name: 'boat' }).first().isChecked()).toBe(true);
      await page.getByRole('button', { name: 'Come in' }).press('Enter');
      await page.getByRole('navigation').waitFor();
      expect(room.house.sessions.size).toBe(1);
    });

    test('a word and a sentence are picked with arrows', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/clarify`);
      await page.locator('input[name=place]').first().focus();
      await page.keyboard.press('Space');
      for (let n = 0; n < 6; n += 1) await page.keyboard.press('ArrowRight');
      await page.getByLabel('What may it mean?').fill('a shell animal');
      await page.getByRole('button', { name: 'Show me what you think' }).click();
      await page.getByText('About your question').waitFor();
      const place = room.house.updates[0]?.fields['place'] ?? '';
      const [start, end] = place.split('-').map(Number);
      const { part } = await import('../support/fake-class.js');
      expect(part.slice(start, end)).toBe('limpets');
    });
  });

  describe('Without script', () => {
    beforeEach(async () => {
      await context.close();
      const opened = await openContext(browser, {
        javaScriptEnabled: false,
        viewport: { width: 360, height: 700 },
      });
      context = opened.context;
      page = await context.newPage();
    });

    test('every step works: come in by link, tap a sentence, answer, post, change the letters, sign out', async () => {
      await page.goto(`${room.url}/in/WREN-2345-67`);
      await page.getByRole('button', { name: 'Come in' }).click();
      await page.goto(`${room.url}/step/answer`);
      await page.locator('.tap-piece span').nth(1).click();
      await page.getByLabel('Your answer').fill('so it stays wet');
      await page.getByRole('button', { name: 'Show me what you think' }).click();
      await page.getByRole('button', { name: 'Post it' }).click();
      expect(room.house.updates[0]?.fields).toMatchObject({ do: 'answer', text: 'so it stays wet' });
      expect(room.house.updates[0]?.fields['place']).toMatch(/^\d+-\d+$/u);
      await page.getByRole('link', { name: 'The talk' }).click();
      expect(await page.getByText('so it stays wet').isVisible()).toBe(true);
      await page.getByRole('link', { name: 'How the page looks' }).click();
      await page.getByLabel('Very big').check();
      await page.getByRole('button', { name: 'Show it like this' }).click();
      expect(await page.locator('html.size-largest').count()).toBe(1);
      await page.getByText('Tell a grown-up').click();
      await page.getByRole('button', { name: 'Send to my tutor' }).click();
      expect(room.house.updates.at(-1)?.move).toBe('tell-grown-up');
      await page.getByRole('button', { name: 'Sign out' }).click();
      expect(await page.getByText('You are signed out.').isVisible()).toBe(true);
    });

    test('a tutor publishes, types a command, and adds a file', async () => {
      await comeIn(page, room.url, 'PLOVER-LINK');
      await page.getByRole('button', { name: 'Publish' }).click();
      await page.getByRole('link', { name: 'Commands' }).click();
      await page.getByRole('textbox', { name: 'Type a slash command' }).fill('/practice start group:Limpets');
      await page.getByRole('button', { name: 'Do it' }).click();
      expect(await page.getByText('Done: /practice start.').isVisible()).toBe(true);
      await page.getByRole('link', { name: 'Passages', exact: true }).click();
      await page.getByLabel('The file').setInputFiles({
        name: 'crab.md',
        mimeType: 'text/markdown',
        buffer: Buffer.from('# The crab\n\nA crab waits.'),
      });
      await page.getByRole('button', { name: 'Add', exact: true }).click();
      expect(room.house.updates.map(({ move }) => move)).toEqual(['release', 'add-passage']);
      expect(room.house.updates[1]?.fields['text']).toBe('# The crab\n\nA crab waits.');
    });
  });

  describe('Live', () => {
    test('what others say appears by itself and is announced', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/talk`);
      say('Finch asks why.');
      await page.locator('#talk').getByText('Finch asks why.').waitFor();
      await page.locator('#news', { hasText: 'Finch asks why.' }).waitFor();
    });

    test('what is being typed stays, and so does the focus', async () => {
      room.house.show('turn', (who) => [
        message(own(who), 'Your turn', [
          { type: 'heading', text: 'Your turn' },
          prose(`There are ${room.house.updates.length} things.`),
          {
            type: 'form',
            title: 'Say where',
            action: { kind: 'move', name: 'ask-help', args: { do: 'question' } },
            fields: [{ kind: 'text', name: 'text', label: 'Why?', required: false, max: 200 }],
            submit: 'Keep',
          },
        ]),
      ]);
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.getByLabel('Why?').fill('because the sh');
      const wren = slips['WREN-2345-67'];
      if (!wren) throw new Error('nobody');
      room.house.post(message(own(wren), 'A note', [prose('A note for you.')]));
      await page.locator('#tray').getByText('A note for you.').waitFor();
      await page.keyboard.type('ell fits');
      expect(await page.getByLabel('Why?').inputValue()).toBe('because the shell fits');
      expect(await page.evaluate('document.activeElement.name')).toBe('text');
      room.house.updates.push({ id: 'x', who: wren, move: 'x', fields: {} });
      say('changes the turn');
      await page.locator('#turn').getByRole('link', { name: 'Something new is here. Show it.' }).click();
      await page.getByText('There are 1 things.').waitFor();
      await expect
        .poll(() => page.getByLabel('Why?').inputValue(), { timeout: 15_000 })
        .toBe('because the shell fits');
    });

    test('a button keeps the focus when the part around it is swapped', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.getByRole('button', { name: 'Help me' }).focus();
      let asked = 0;
      const before = room.house.look.bind(room.house);
      room.house.look = async (who, look, fields) => {
        const reply = await before(who, look, fields);
        asked += 1;
        if (look !== 'turn') return reply;
        const [first] = reply.messages;
        return first
          ? { ...reply, messages: [{ ...first, blocks: [...first.blocks, prose(`asked ${asked}`)] }] }
          : reply;
      };
      say('anything');
      await page
        .locator('#turn')
        .getByText(/asked \d/u)
        .waitFor();
      expect(await focused()).toBe('Help me');
    });

    test('a hidden tab lets go of its line and catches up when it is seen', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/talk`);
      await expect.poll(() => room.house.listeners()).toBe(1);
      const hide = (hidden: boolean) =>
        page.evaluate(
          `Object.defineProperty(document, 'hidden', { value: ${hidden}, configurable: true }); document.dispatchEvent(new Event('visibilitychange'))`,
        );
      await hide(true);
      await expect.poll(() => room.house.listeners()).toBe(0);
      say('said meanwhile');
      await hide(false);
      await page.locator('#talk').getByText('said meanwhile').waitFor();
      await expect.poll(() => room.house.listeners()).toBe(1);
    });

    test('ten tabs of one browser all work', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      const tabs = await Promise.all(Array.from({ length: 10 }, () => context.newPage()));
      for (const tab of tabs) {
        await tab.goto(`${room.url}/talk`);
        await tab.evaluate(
          "Object.defineProperty(document, 'hidden', { value: true, configurable: true }); document.dispatchEvent(new Event('visibilitychange'))",
        );
      }
      await tabs[9]?.goto(`${room.url}/words`);
      expect(await tabs[9]?.title()).toContain('Words');
    });

    test('a draft stays in the tab until it is sent, and is gone after signing out', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/question`);
      await page.getByLabel('Your question').fill('why does');
      await page.goto(`${room.url}/words`);
      await page.goto(`${room.url}/step/question`);
      expect(await page.getByLabel('Your question').inputValue()).toBe('why does');
      await page.getByRole('link', { name: 'How can …' }).click();
      await expect
        .poll(() => page.getByLabel('Your question').inputValue(), { timeout: 15_000 })
        .toBe('How can why does');
      await page.getByRole('button', { name: 'Sign out' }).click();
      await page.getByText('You are signed out.').waitFor();
      expect(await page.evaluate('sessionStorage.length')).toBe(0);
      await comeIn(page, room.url, 'FNCH-2345-67');
      await page.goto(`${room.url}/step/question`);
      expect(await page.getByLabel('Your question').inputValue()).toBe('');
    });

    test('where one person alone uses the device a draft outlives the tab, and signing out ends it there too', async () => {
      await page.goto(room.url);
      await page.getByLabel('The code on your slip').fill('WREN-2345-67');
      await page.getByLabel('Only I use this device. Keep me signed in.').check();
      await page.getByRole('button', { name: 'Come in' }).click();
      await page.goto(`${room.url}/step/question`);
      await page.getByLabel('Your question').fill('why does');
      await page.close();
      page = await context.newPage();
      await page.goto(`${room.url}/step/question`);
      expect(await page.getByLabel('Your question').inputValue()).toBe('why does');
      await page.getByRole('button', { name: 'Sign out' }).click();
      await page.getByText('You are signed out.').waitFor();
      expect(await page.evaluate('localStorage.length')).toBe(0);
    });

    test('where several use it a draft goes with the tab, and with a session that ended while nobody was there', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/question`);
      await page.getByLabel('Your question').fill('why does');
      expect(await page.evaluate('[localStorage.length, sessionStorage.length]')).toEqual([0, 1]);
      const other = await context.newPage();
      await other.goto(`${room.url}/step/question`);
      expect(await other.getByLabel('Your question').inputValue()).toBe('');
      await other.close();
      room.house.pass(31 * 60_000);
      await page.goto(room.url);
      await page.getByText('You were away for a while').waitFor();
      expect(await page.evaluate('sessionStorage.length')).toBe(0);
    });

    test('what is told to a grown-up is kept nowhere on the device', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.getByText('Tell a grown-up').click();
      await page.getByLabel('What is it?').fill('something sad');
      expect(
        await page.evaluate('JSON.stringify([{ ...localStorage }, { ...sessionStorage }])'),
      ).not.toContain('sad');
    });

    test('a sent draft does not come back', async () => {
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/question`);
      await page.getByLabel('Your question').fill('why does it?');
      await page.getByRole('button', { name: 'Show me what you think' }).click();
      await page.getByText('About your question').waitFor();
      await page.goto(`${room.url}/step/question`);
      expect(await page.getByLabel('Your question').inputValue()).toBe('');
    });
  });

  describe('Reading aloud', () => {
    const voices = (local: boolean): string => `
      window.spoken = [];
      const voice = { name: 'Device', lang: 'en-GB', localService: ${local}, default: true, voiceURI: 'x' };
      Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: class { constructor(text) { this.text = text; } } });
      Object.defineProperty(window, 'speechSynthesis', { value: {
        getVoices: () => [voice],
        addEventListener() {},
        cancel() {},
        speak(words) {
          window.spoken.push([words.text.trim(), document.querySelector('.speaking-now')?.textContent.trim() ?? null, words.voice.name]);
          setTimeout(() => words.onend(), 5);
        },
      } });`;

    test('goes sentence by sentence by a voice of the device, and marks the one that is read', async () => {
      await page.addInitScript(voices(true));
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.getByRole('button', { name: 'Read to me', exact: true }).click();
      const first = 'When the tide goes out, the limpets on the rocks stop moving.';
      await expect.poll(() => page.evaluate<unknown[]>('window.spoken')).toHaveLength(5);
      expect((await page.evaluate<unknown[]>('window.spoken'))[0]).toEqual([first, first, 'Device']);
      await expect.poll(() => page.locator('.speaking-now').count()).toBe(0);
      expect(await page.locator('.reading blockquote').textContent()).toContain(
        'limpets on the rocks stop moving. Each one',
      );
    });

    test('reads labels and own words too', async () => {
      await page.addInitScript(voices(true));
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/question`);
      await page.getByLabel('Your question').fill('Why so? I wonder.');
      await page.getByRole('button', { name: 'Read my words to me' }).click();
      await expect
        .poll(() => page.evaluate('window.spoken.map(([text]) => text)'))
        .toEqual(['Why so? I wonder.']);
      await page.getByRole('button', { name: 'Read this aloud' }).first().click();
      await expect
        .poll(() => page.evaluate<string[]>('window.spoken.map(([text]) => text)'))
        .toEqual(
          expect.arrayContaining(['Your question', 'Show me what you think', 'A grown-up typed this for me']),
        );
    });

    test('reads a text in which a word is tapped', async () => {
      await page.addInitScript(voices(true));
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.goto(`${room.url}/step/clarify`);
      await page.locator('.tap').getByRole('button', { name: 'Read to me' }).click();
      await expect.poll(() => page.evaluate<unknown[]>('window.spoken'), { timeout: 40_000 }).toHaveLength(5);
    });

    test('is not offered where every voice would send the words out, or where there is none', async () => {
      await page.addInitScript(voices(false));
      await comeIn(page, room.url, 'WREN-2345-67');
      await page.getByRole('link', { name: 'Ask a question' }).waitFor();
      expect(await page.getByRole('button', { name: /Read/u }).count()).toBe(0);
    });
  });
}

import { describe, expect, it } from 'vitest';
import { keeping, keepingForFamilies } from '../../shared/keeping.js';
import { doorLimits } from '../../src/app/doors.js';
import { verb } from '../../src/app/verbs/keeping.js';
import { settingDefaults } from '../../src/practice/settings.js';
import { settingNames } from '../../shared/moves.js';
import { openRoom } from '../support/open-room.js';
import { openWalker } from '../support/walker.js';

const rowOf = (table: string) => keeping.find(({ tables }) => table in tables)!;
const plain = (html: string): string =>
  html.replaceAll('&#39;', "'").replaceAll('&quot;', '"').replaceAll('&amp;', '&');

const mainOf = (html: string): string => /<main[\s\S]*<\/main>/u.exec(html)?.[0] ?? '';

describe('What is kept', () => {
  it('is told with the numbers that a class starts with', () => {
    const { wordsKept, longestKept, yearEnds, alarmWordsKept } = settingDefaults;
    expect([wordsKept, longestKept, yearEnds, alarmWordsKept]).toEqual([14, 120, '07-31', 1]);
    for (const text of [rowOf('said').howLong, rowOf('said').families]) {
      expect(text).toContain(`${wordsKept} days`);
      expect(text).toContain(`${longestKept} days`);
    }
    for (const text of [rowOf('evidence').howLong, rowOf('evidence').families])
      expect(text).toContain('31 July');
    expect(rowOf('sealed').howLong).toMatch(/^sealed; one year/u);
    const days = (milliseconds: number) => `${milliseconds / (24 * 3600_000)} days`;
    expect(rowOf('slip').howLong).toContain(days(doorLimits.pupilSlip));
    expect(rowOf('slip').howLong).toContain(days(doorLimits.staffLink));
  });

  it('names only settings that there are', () => {
    const quoted = keeping.flatMap(({ howLong }) =>
      [...howLong.matchAll(/“([^”]+)”/gu)].map(([, name]) => name),
    );
    expect(quoted.length).toBeGreaterThan(4);
    for (const name of quoted) expect(settingNames).toContain(name);
  });

  it('is printed, and given as JSON', async () => {
    let out = '';
    const io = {
      out: async (text: string) => void (out += text),
      err: () => {},
      input: (async function* () {})(),
      env: {},
    };
    expect(await verb.run([], io)).toBe(0);
    for (const { what, howLong } of keeping) {
      expect(out).toContain(`${what}\n  why `);
      expect(out).toContain(howLong);
    }
    out = '';
    expect(await verb.run(['--json'], io)).toBe(0);
    expect(JSON.parse(out)).toEqual(keeping);
  });
});

describe('The page for families', () => {
  it('needs no sign-in, is the same for everybody, and is linked from every page’s foot', async () => {
    const room = await openRoom();
    try {
      const outside = openWalker(room.url);
      const page = await outside.get('/what-is-kept');
      expect(page.status).toBe(200);
      const words = plain(page.text);
      for (const sentence of [
        ...Object.values(keepingForFamilies),
        ...keeping.flatMap(({ families }) => families ?? []),
      ])
        expect(words).toContain(sentence);
      expect((await outside.get('/')).text).toContain('href="/what-is-kept"');
      const wren = openWalker(room.url);
      await wren.signIn('WREN-2345-67');
      expect((await wren.get('/')).text).toContain('href="/what-is-kept"');
      const inside = (await wren.get('/what-is-kept')).text;
      expect(mainOf(inside)).toBe(mainOf(page.text));
      expect(mainOf(inside)).not.toMatch(/Wren|Tuesday readers/u);
    } finally {
      await room.stop();
    }
  });
});

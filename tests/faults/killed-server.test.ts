import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { PlainBrowser, serve, type Served } from '../support/served.js';

let base: string;
beforeAll(() => {
  base = mkdtempSync(join(tmpdir(), 'turnstone-killed-'));
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** Small seeded generator, so that a failing run can be seen again. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const pause = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms));

/** A form that a child pressed. */
interface Pressed {
  readonly browser: PlainBrowser;
  readonly form: Awaited<ReturnType<PlainBrowser['form']>>;
  readonly text: string;
}

const kills = 12;
/** Servers side by side, each with a folder of its own, since a start mostly waits. */
const servers = 2;

it(`servers killed ${kills} times in the middle of a practice lose nothing that they acknowledged and say nothing twice`, async () => {
  const ran = await Promise.all(
    Array.from({ length: servers }, (_, nth) => killOver(join(base, String(nth)), 20261125 + nth)),
  );
  // Else the kills came when nothing was under way, and this would say little.
  expect(ran.reduce((sum, { acknowledged }) => sum + acknowledged, 0)).toBeGreaterThan(kills);
  expect(ran.reduce((sum, { pressedAgain }) => sum + pressedAgain, 0)).toBeGreaterThan(0);
}, 600_000);

/** Kills one server its share of times; how many posts it acknowledged, and how many were cut off and pressed again. */
async function killOver(
  folder: string,
  seed: number,
): Promise<{ readonly acknowledged: number; readonly pressedAgain: number }> {
  const random = chance(seed);
  let server: Served = await serve(folder);
  const port = Number(new URL(server.ready.url).port);
  const pupils = await Promise.all(
    server.ready.links.pupils.map(async (link) => {
      const browser = new PlainBrowser(server.ready.url);
      await browser.comeIn(link);
      return browser;
    }),
  );
  /** What the clients know: texts whose post was answered, and those that were cut off and pressed again. */
  const acknowledged = new Set<string>();
  let pressedAgain = 0;

  for (let round = 0; round < kills / servers; round += 1) {
    let down = false;
    // Killed a moment after a few posts of this round were answered, so that it is in the middle of work on any machine.
    const enough = acknowledged.size + Math.floor(random() * 5);
    const later = random() * 30;
    const killing = (async () => {
      for (let waits = 0; acknowledged.size < enough && waits < 500; waits += 1) await pause(5);
      await pause(later);
      down = true;
      await server.kill();
    })();
    const unanswered = new Set<Pressed>();
    await Promise.all(
      pupils.map(async (browser, at) => {
        // Two a round, since more than forty in five minutes from one pupil are refused.
        for (let n = 0; !down && n < 2; n += 1) {
          const text = `why does it say number ${round} ${at} ${n}`;
          try {
            const form = await browser.form('/step/question', '/move/send-draft');
            const pressed = { browser, form, text };
            unanswered.add(pressed);
            const { status } = await browser.post(form, { text });
            unanswered.delete(pressed);
            if (status === 303) acknowledged.add(text);
          } catch {
            return;
          }
        }
      }),
    );
    await killing;
    server = await serve(folder, port);
    // The same form is pressed again, as a child would: with the same update id it must be done once.
    for (const { browser, form, text } of unanswered) {
      const { status } = await browser.post(form, { text });
      expect(status).toBe(303);
      acknowledged.add(text);
      pressedAgain += 1;
    }
  }
  expect(await server.stop()).toBe(0);

  const store = await openSqliteStore(folder);
  try {
    const [classId] = await store.classes();
    if (classId === undefined) throw new Error('expected a class');
    const events = await store.events(classId);
    const texts = events.flatMap((event) =>
      (event.type === 'draft-judged' || event.type === 'draft-held') && 'text' in event.text
        ? [event.text.text]
        : [],
    );
    expect([...acknowledged].filter((text) => !texts.includes(text))).toEqual([]);
    expect(texts.length).toBe(new Set(texts).size);
    expect(texts.filter((text) => !acknowledged.has(text))).toEqual([]);
    return { acknowledged: acknowledged.size, pressedAgain };
  } finally {
    await store.close();
  }
}

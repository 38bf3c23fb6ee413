import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asId, type ClassId } from '../../shared/ids.js';
import { wordsOf } from '../../shared/said.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { channel } from '../support/commits.js';
import { compileTo } from '../support/compiled.js';

const oak = asId<ClassId>('oak');
const kills = 20;
/** Folders side by side, since a process that starts mostly waits. */
const folders = 2;
const base = mkdtempSync(join(tmpdir(), 'store-kill-'));
let writer: string;
beforeAll(() => {
  mkdirSync(join(base, 'built'));
  writer = compileTo(join(base, 'built'), join(import.meta.dirname, 'store-writer.ts'));
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** Runs the writer and kills it a random time after its first word; what it said it would do, and what it said was done. */
async function writeAndKill(folder: string, first: number): Promise<{ tried: number; acknowledged: number }> {
  const child = spawn(process.execPath, [writer, folder, String(first)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let text = '';
  let timer: NodeJS.Timeout | undefined;
  child.stdout.setEncoding('utf8');
  child.stdout.on('data', (part: string) => {
    text += part;
    timer ??= setTimeout(() => child.kill('SIGKILL'), Math.random() * 300);
  });
  const signal = await new Promise((resolve) => child.on('close', (_, by) => resolve(by)));
  expect(signal).toBe('SIGKILL');
  const last = (word: string): number => {
    const numbers = [...text.matchAll(new RegExp(`^${word} (\\d+)\n`, 'gmu'))].map(([, n]) => Number(n));
    return numbers.at(-1) ?? first - 1;
  };
  return { tried: last('try'), acknowledged: last('ack') };
}

/** Kills writers of one folder their share of times, looking after each at all that is there. */
async function killOver(folder: string): Promise<{ acknowledged: number; midway: number }> {
  let acknowledged = 0;
  let midway = 0;
  let replied = 0;
  for (let round = 0; round < kills / folders; round += 1) {
    // Like a client, it sends again what it had no answer for.
    const run = await writeAndKill(folder, acknowledged + 1);
    acknowledged = Math.max(acknowledged, run.acknowledged);
    if (run.tried > run.acknowledged) midway += 1;
    const store = await openSqliteStore(folder);
    const texts = (await store.events(oak)).map((event) => 'text' in event && event.text);
    const said = texts.map((text) => (typeof text === 'object' && text ? wordsOf(text) : text));
    expect(said.length).toBeGreaterThanOrEqual(acknowledged);
    expect(said).toEqual(said.map((_, n) => `text ${n + 1}`));
    const shown = await store.shown(oak, channel, 0, 1_000_000);
    expect(shown.map(({ key }) => key)).toEqual(said.map((_, n) => `post-${n + 1}`));
    expect(await store.evidence({ classId: oak })).toHaveLength(said.length);
    // Replies of rounds before were looked at then, and all once more at the end.
    const from = round + 1 < kills / folders ? replied + 1 : 1;
    for (let n = from; n <= said.length; n += 1) expect(await store.reply(oak, `u-${n}`)).toBe(`reply ${n}`);
    replied = said.length;
    await store.close();
  }
  return { acknowledged, midway };
}

describe('A process that is killed at any instant', () => {
  it('has kept all that it acknowledged, and nothing twice', async () => {
    const ran = await Promise.all(
      Array.from({ length: folders }, (_, nth) => killOver(join(base, `data-${nth}`))),
    );
    // Else the kills came when nothing was under way, and this would say little.
    expect(ran.reduce((sum, { acknowledged }) => sum + acknowledged, 0)).toBeGreaterThan(kills);
    expect(ran.reduce((sum, { midway }) => sum + midway, 0)).toBeGreaterThan(0);
  }, 400_000);
});

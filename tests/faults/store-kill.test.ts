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
const base = mkdtempSync(join(tmpdir(), 'store-kill-'));
const folder = join(base, 'data');
let writer: string;
beforeAll(() => {
  mkdirSync(join(base, 'built'));
  writer = compileTo(join(base, 'built'), join(import.meta.dirname, 'store-writer.ts'));
});
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** Runs the writer and kills it a random time after its first word; what it said it would do, and what it said was done. */
async function writeAndKill(first: number): Promise<{ tried: number; acknowledged: number }> {
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

describe('A process that is killed at any instant', () => {
  it('has kept all that it acknowledged, and nothing twice', async () => {
    let acknowledged = 0;
    let midway = 0;
    for (let round = 0; round < kills; round += 1) {
      // Like a client, it sends again what it had no answer for.
      const run = await writeAndKill(acknowledged + 1);
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
      for (let n = 1; n <= said.length; n += 1) expect(await store.reply(oak, `u-${n}`)).toBe(`reply ${n}`);
      await store.close();
    }
    // Else the kills came when nothing was under way, and this would say little.
    expect(acknowledged).toBeGreaterThan(kills);
    expect(midway).toBeGreaterThan(0);
  }, 400_000);
});

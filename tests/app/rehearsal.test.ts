import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, turnstone } from '../support/command-line.js';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnstone-rehearsal-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Printed {
  readonly type: string;
  readonly event?: { readonly type: string };
  readonly digest?: { readonly alarms: number; readonly held: number };
}

const worry = 'my dad hits me when i get home';

async function rehearse(
  posts: readonly object[],
): Promise<{ out: string; lines: Printed[]; err: string; code: number | null }> {
  const file = join(folder, 'posts.jsonl');
  writeFileSync(file, posts.map((post) => JSON.stringify(post)).join('\n'));
  const ran = await turnstone([
    'rehearse',
    '--passage',
    'fixtures/passages/demo/the-tide-clock.md',
    '--posts',
    file,
    '--json',
  ]);
  return { ...ran, lines: linesOf<Printed>(ran.out) };
}

describe('A rehearsal', () => {
  it('raises an alarm from an answer to nobody, and prints the words of an alarm nowhere', async () => {
    const { out, lines, code } = await rehearse([
      { at: '2026-04-13T08:00:00Z', by: 'Smew', do: 'answer', text: worry },
      { at: '2026-04-13T08:05:00Z', by: 'Knot', do: 'sum-up', text: worry },
    ]);
    expect(lines.filter(({ event }) => event?.type === 'alarm-raised')).toHaveLength(2);
    expect(lines.at(-1)?.digest?.alarms).toBe(2);
    // A rule's own name may share words with a post; the post's words themselves stand nowhere.
    expect(out.includes(worry)).toBe(false);
    expect(code).toBe(0);
  });

  it('refuses an answer to nobody and an empty post with their lines, and goes on', async () => {
    const { lines, err, code } = await rehearse([
      { at: '2026-04-13T08:00:00Z', by: 'Smew', do: 'answer', text: 'because of the tide' },
      { at: '2026-04-13T08:01:00Z', by: 'Smew', do: 'question', text: ' ' },
      { at: '2026-04-13T08:02:00Z', by: 'Knot', do: 'question', text: 'why are there two clocks' },
    ]);
    expect(err).toMatch(/line 1: Cannot/);
    expect(err).toMatch(/line 2: Cannot/);
    expect(lines.filter(({ event }) => event?.type === 'draft-posted')).toHaveLength(1);
    expect(code).toBe(1);
  });
});

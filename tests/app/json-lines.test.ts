import { describe, expect, it } from 'vitest';
import { longestLine, readJsonLines, type JsonLine } from '../../src/app/json-lines.js';

async function* chunks(bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function read(text: string | Uint8Array, size = 7): Promise<JsonLine[]> {
  const bytes = typeof text === 'string' ? Buffer.from(text) : text;
  const lines: JsonLine[] = [];
  for await (const line of readJsonLines(chunks(bytes, size))) lines.push(line);
  return lines;
}

describe('JSON Lines', () => {
  it('counts physical lines from 1 and skips blank ones', async () => {
    expect(await read('{"a":1}\n\n  \n{"a":2}')).toEqual([
      { line: 1, value: { a: 1 } },
      { line: 4, value: { a: 2 } },
    ]);
  });

  it('accepts CRLF, a byte-order mark and a missing last line end', async () => {
    expect(await read('\uFEFF{"a":1}\r\n{"a":2}\r\n{"a":"é"}')).toEqual([
      { line: 1, value: { a: 1 } },
      { line: 2, value: { a: 2 } },
      { line: 3, value: { a: 'é' } },
    ]);
  });

  it('goes on after a line that is not JSON', async () => {
    const lines = await read('{"a":1}\nnot json\n{"a":2}\n');
    expect(lines.map((line) => ('fault' in line ? 'fault' : 'value'))).toEqual(['value', 'fault', 'value']);
  });

  it('goes on after a line that is not UTF-8', async () => {
    const lines = await read(Buffer.concat([Buffer.from([0x22, 0xff, 0x22, 10]), Buffer.from('{"a":2}')]));
    expect(lines).toEqual([
      { line: 1, fault: expect.stringContaining('UTF-8') as string },
      { line: 2, value: { a: 2 } },
    ]);
  });

  const padded = (bytes: number): string => `"${'x'.repeat(bytes - 2)}"`;
  it.each([
    ['exactly the longest line', padded(longestLine), 'value'],
    ['the longest line with CRLF', `${padded(longestLine)}\r`, 'value'],
    ['one byte more', padded(longestLine + 1), 'fault'],
    ['much more', padded(longestLine * 3), 'fault'],
  ])('%s is a %s', async (_, first, kind) => {
    const lines = await read(`${first}\n{"a":2}\n`, 65_536);
    expect(lines.map((line) => ('fault' in line ? 'fault' : 'value'))).toEqual([kind, 'value']);
    expect(lines[1]).toEqual({ line: 2, value: { a: 2 } });
  });
});

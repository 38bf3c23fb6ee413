import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, turnstone } from '../support/command-line.js';

const segment =
  'Pipit found a cracked bell in the reeds. It would not ring, because mud had filled it. She washed it in the stream until it shone.';
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'turnstone-line-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function file(name: string, text: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('judge', () => {
  const shapes = [
    [
      { kind: 'question', segment, text: 'why wouldnt the bell ring' },
      ['kind', 'isQuestion', 'inferential', 'label', 'relationship', 'level', 'reasons', 'feedback'],
    ],
    [
      { kind: 'sum-up', segment, text: 'Pipit cleaned a muddy bell she found.' },
      [
        'kind',
        'content',
        'wording',
        'sentences',
        'words',
        'coverage',
        'copied',
        'onTopic',
        'level',
        'reasons',
        'feedback',
      ],
    ],
    [
      { kind: 'clarify', segment, word: 'reeds', text: 'tall grass by water' },
      ['kind', 'found', 'misspelt', 'fit', 'clue', 'level', 'reasons', 'feedback'],
    ],
    [
      {
        kind: 'predict',
        segment,
        text: 'i think it will ring becuase its clean now',
        next: 'She shook it. A clear note rang out.',
      },
      ['kind', 'grounded', 'outcome', 'level', 'reasons', 'feedback'],
    ],
    [
      { kind: 'answer', segment, question: 'why wouldnt the bell ring', text: 'mud was in it' },
      ['kind', 'fits', 'level', 'reasons', 'feedback'],
    ],
    [{ kind: 'level', text: segment }, ['kind', 'grade', 'range', 'ease', 'formulas']],
    [{ kind: 'hard-word', segment, word: 'reeds' }, ['kind', 'difficulty', 'clue']],
    [{ kind: 'screen', text: 'my number is 0170 5551234' }, ['kind', 'hold', 'alarm', 'findings']],
  ] as const;

  it('answers each kind on one line, in order, with every named field', async () => {
    const input = shapes.map(([line]) => JSON.stringify(line)).join('\n');
    const ran = await turnstone(['judge'], { input });
    const answers = linesOf(ran.out);
    expect(answers.map(({ kind }) => kind)).toEqual(shapes.map(([{ kind }]) => kind));
    shapes.forEach(([, fields], at) =>
      expect(Object.keys(answers[at] ?? {})).toEqual(expect.arrayContaining([...fields])),
    );
    expect(ran.code).toBe(0);
  });

  it('gives reasons with a rule, a place or null, and words', async () => {
    const { out } = await turnstone(['judge'], { input: JSON.stringify(shapes[0][0]) });
    const [answer] = linesOf<{ reasons: { rule: unknown; place: unknown; words: unknown }[] }>(out);
    expect(answer?.reasons.length).toBeGreaterThan(0);
    for (const reason of answer?.reasons ?? []) {
      expect(reason).toEqual({
        rule: expect.any(String) as string,
        place: reason.place,
        words: expect.any(String) as string,
      });
    }
  });

  it('says of a bad line which and why, goes on, and ends with 1', async () => {
    const input = [
      '{"kind":"level","text":"A cat."}',
      'nonsense',
      '',
      '{"kind":"level"}',
      '{"kind":"poem","text":"x"}',
      '[1]',
      '{"kind":"level","text":"A dog."}',
    ].join('\r\n');
    const ran = await turnstone(['judge'], { input: `\uFEFF${input}` });
    const answers = linesOf<{ error?: { line: number; message: string } }>(ran.out);
    expect(answers.map(({ error }) => error?.line ?? null)).toEqual([null, 2, 4, 5, 6, null]);
    for (const { error } of answers)
      if (error) expect(error.message).toMatch(/^Cannot (read|judge) this line/);
    expect(ran.code).toBe(1);
  });

  it('gives the same bytes for the same input', async () => {
    const input = shapes.map(([line]) => JSON.stringify(line)).join('\n');
    const [one, two] = await Promise.all([turnstone(['judge'], { input }), turnstone(['judge'], { input })]);
    expect(one.out).toBe(two.out);
  });

  it('takes what asks nothing as no question: level 0, unsure', async () => {
    const { out } = await turnstone(['judge'], {
      input: JSON.stringify({ kind: 'question', segment, text: 'the bell is old' }),
    });
    expect(linesOf(out)[0]).toMatchObject({ isQuestion: false, level: 0, label: 'unsure' });
  });

  it('takes an empty text, an emoji, half a letter, a flood, another script and a turned direction as posts of any kind', async () => {
    const texts = ['', '🙂', '\ud800', 'x'.repeat(20_000), '不知道', '\u202e right to left'];
    const input = texts
      .flatMap((text) => shapes.map(([line]) => JSON.stringify({ ...line, text })))
      .join('\n');
    const { code, out } = await turnstone(['judge'], { input });
    expect(linesOf(out)).toHaveLength(texts.length * shapes.length);
    expect(code).toBe(0);
  });
});

describe('read', () => {
  it('prints stops, key terms, hard words and questions as JSON', async () => {
    const ran = await turnstone(['read', 'fixtures/passages/demo/why-shingle-sings.md', '--json']);
    const reading = JSON.parse(ran.out) as {
      title: string;
      level: { grade: number | null };
      segments: { text: string; keyTerms: { weight: number }[] }[];
    };
    expect(reading.title).toBe('Why Shingle Sings');
    expect(reading.segments.length).toBeGreaterThan(2);
    for (const { text, keyTerms } of reading.segments) {
      expect(text).toMatch(/[.!?…”"’]$/u);
      for (const { weight } of keyTerms) expect(weight > 0 && weight <= 1).toBe(true);
    }
    expect(ran.code).toBe(0);
  });

  it.each([
    ['an empty file', ''],
    ['one sentence', 'A bell rang.'],
    ['binary bytes', new Uint8Array([0, 159, 146, 150, 1, 2, 3])],
    ['over a million bytes', 'The bell rang and rang. '.repeat(50_000)],
    ['a thousand headings', '# Bell\n\n'.repeat(1000)],
  ])('%s is refused with what was expected and how to mend it', async (name, text) => {
    const ran = await turnstone(['read', file(`${name}.md`, text)]);
    expect(ran.out).toBe('');
    expect(ran.err).toMatch(/Cannot .*expected .*\n.+/);
    expect(ran.code).toBe(1);
  });
});

describe('Wrong usage', () => {
  it.each([
    ['no verb', []],
    ['an unknown verb', ['judgement']],
    ['an unknown option', ['read', '--loud', 'x']],
    ['a missing file name', ['read']],
    ['a file that is not there', ['read', '/nowhere/at-all.md']],
    ['a file of lines that is not there', ['judge', '/nowhere/at-all.jsonl']],
    ['rehearse without posts', ['rehearse', '--passage', 'README.md']],
    ['evaluate without data', ['evaluate']],
    ['erase without yes', ['erase', '--nickname', 'Wren']],
  ])('%s ends with 2 and says so on standard error', async (_, args) => {
    const ran = await turnstone(args);
    expect([ran.code, ran.out]).toEqual([2, '']);
    expect(ran.err.length).toBeGreaterThan(10);
  });
});

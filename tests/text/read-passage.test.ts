import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Fault } from '../../shared/fault.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { analyse } from '../../src/text/analyse.js';
import { cleanText, inlineMarks } from '../../src/text/clean.js';
import { cutSegments } from '../../src/text/cut.js';
import { hardWordDifficulty } from '../../src/text/hard-words.js';
import { readPassage } from '../../src/text/read-passage.js';
import weights from '../../src/text/weights/hard-words.json' with { type: 'json' };

const lexicon = readLexicon();
const load = (file: string) =>
  readFileSync(new URL(`../../fixtures/passages/${file}`, import.meta.url), 'utf8');
const own = [
  ['snail-foot.md', 3, 'A House on One Foot'],
  ['borrowed-umbrella.txt', 3, 'The Borrowed Umbrella'],
  ['bread-holes.md', 5, 'Why Bread Is Full of Holes'],
  ['night-ferry.md', 5, 'The Last Ferry'],
  ['pigeon-map.txt', 8, "THE MAP IN A PIGEON'S HEAD"],
  ['second-chair.md', 8, 'The Second Chair'],
] as const;

describe.each(own)('%s, grade %i', (file, grade, title) => {
  const reading = readPassage(load(file), { grade }, lexicon);

  it('has its title, 4 to 6 stops and all its words in order', () => {
    expect(reading.title).toBe(title);
    expect(reading.segments.length).toBeGreaterThanOrEqual(4);
    expect(reading.segments.length).toBeLessThanOrEqual(6);
    const whole = cleanText(load(file))
      .blocks.map(({ text }) => text)
      .join(' ');
    const words = (text: string) => text.split(/\s+/).join(' ');
    expect(words(reading.segments.map(({ text }) => text).join(' '))).toBe(words(whole));
  });

  it('cuts near the size for the grade (common practice, no source), never inside a sentence', () => {
    const [least, most] = grade <= 4 ? [40, 80] : grade <= 6 ? [60, 120] : [100, 200];
    for (const { text } of reading.segments) {
      const count = analyse(text, lexicon).tokens.length;
      expect(count).toBeGreaterThanOrEqual(least * 0.75);
      expect(count).toBeLessThanOrEqual(most * 1.25);
      expect(text).toMatch(/[.!?…:]["”’']?$/);
      expect(text.trim()).toBe(text);
    }
  });

  it('gives places that hold what they say', () => {
    for (const segment of reading.segments) {
      const weightsOf = segment.keyTerms.map(({ weight }) => weight);
      expect(weightsOf[0]).toBe(1);
      expect(weightsOf).toEqual([...weightsOf].sort((a, b) => b - a));
      for (const { word, start, difficulty, clue } of segment.hardWords) {
        expect(segment.text.slice(start, start + word.length)).toBe(word);
        expect(difficulty).toBeGreaterThan(0);
        expect(difficulty).toBeLessThanOrEqual(1);
        if (clue) expect(segment.text.slice(clue.place.start, clue.place.end).trim()).not.toBe('');
      }
      expect(segment.questions.some(({ relationship }) => relationship === 'author and me')).toBe(true);
      for (const { text } of segment.questions) expect(text).toMatch(/^(?:Why|Who|What|How) .*\?$/);
    }
  });

  it('is read the same twice', () => {
    expect(readPassage(load(file), { grade }, lexicon)).toEqual(reading);
  });
});

describe('what a close reading finds', () => {
  const bread = readPassage(load('bread-holes.md'), { grade: 5 }, lexicon);
  it('finds the clue beside a hard word', () => {
    const found = bread.segments.flatMap(({ hardWords, text }) =>
      hardWords.map(({ word, clue }) => [
        word,
        clue?.kind,
        clue && text.slice(clue.place.start, clue.place.end),
      ]),
    );
    expect(found).toContainEqual(['gluten', 'definition', 'a substance in the wheat']);
    expect(found).toContainEqual(['lukewarm', 'contrast', 'hot']);
  });
  it('takes the first sentence of a paragraph that explains for its topic', () => {
    const [, second] = bread.segments;
    const topic = second?.topicSentence;
    expect(topic && second.text.slice(topic.start, topic.end)).toBe('Most bread is made with yeast.');
  });
  it('takes none from a scene', () => {
    const { segments } = readPassage(load('night-ferry.md'), { grade: 5 }, lexicon);
    expect(segments.slice(0, 4).map(({ topicSentence }) => topicSentence)).toEqual([null, null, null, null]);
  });
  it('cuts by its own level where no grade is given, and takes the title given', () => {
    const reading = readPassage(load('pigeon-map.txt'), { title: 'Homing' }, lexicon);
    expect(reading.title).toBe('Homing');
    expect(reading.segments.length).toBeGreaterThan(3);
  });
  it('keeps a pronoun with its noun where it can', () => {
    const lone =
      'The old heron stood in the reeds by the lake all morning and looked for fish. He did not move.';
    const other =
      'Rain fell on the hills behind the town until the river ran brown and fast. Boats lay still.';
    const text = Array.from({ length: 6 }, (_, n) => (n % 2 ? other : lone)).join(' ');
    const cut = cutSegments(analyse(text, lexicon), 3).map(({ start, end }) => text.slice(start, end));
    expect(cut.length).toBeGreaterThan(1);
    for (const segment of cut) expect(segment).not.toMatch(/^He\b/);
  });
});

describe('cleaning', () => {
  it.each(inlineMarks.map((mark) => [mark.name, mark] as const))(
    'takes off: %s',
    (_, { pattern, leaves, example, not }) => {
      expect(example.replace(pattern, leaves)).not.toBe(example);
      expect(not.replace(pattern, leaves)).toBe(not);
    },
  );
  it.each([
    [
      'a byte-order mark, Windows lines and a title',
      '\ufeffThe Fox\r\n\r\nIt ran.\r\nIt hid.\r\n',
      'The Fox',
      ['It ran. It hid.'],
    ],
    [
      'marks of Markdown',
      '# Fox\n\nIt *ran* to the [den](x.html).\n\n- one\n- two',
      'Fox',
      ['It ran to the den.', 'one\ntwo'],
    ],
    ['an underlined heading', 'Fox\n===\n\nIt ran.', 'Fox', ['It ran.']],
    ['front matter', '---\na: b\n---\n# Fox\n\nIt ran.', 'Fox', ['It ran.']],
    ['a quotation block', '# Fox\n\n> It ran\n> off.', 'Fox', ['It ran off.']],
    [
      'verses',
      '# Fox\n\nThe fox ran out\nBeyond the hill\nAnd then stood still.',
      'Fox',
      ['The fox ran out\nBeyond the hill\nAnd then stood still.'],
    ],
    ['curly quotes and dashes, which stay', '# Fox\n\n“Oh—no,” it said.', 'Fox', ['“Oh—no,” it said.']],
  ])('%s', (_, raw, title, blocks) => {
    const cleaned = cleanText(raw);
    expect([cleaned.title, cleaned.blocks.map(({ text }) => text)]).toEqual([title, blocks]);
  });
});

describe('what is no passage is refused with a reason and a remedy', () => {
  it.each([
    ['empty', ' \n\ufeff', 'an empty one'],
    ['one sentence', `A fox ${'ran over the hill and '.repeat(8)}hid.`, '1 and'],
    ['a megabyte', 'The fox ran. '.repeat(80_000), '1040000'],
    ['binary', '\u0000\u0001PNG the fox ran. It hid.', 'a binary file'],
    [
      'a thousand headings',
      Array.from({ length: 1000 }, (_, n) => `# Part ${n}\n`).join('\n'),
      'headings among',
    ],
    [
      'another language',
      'Der alte Fuchs schlich langsam über den verschneiten Hügel. Niemand hatte ihn dort erwartet, außer vielleicht den Krähen im Baum.',
      'words are known',
    ],
    ['junk', 'asdf qwer zxcv uiop. '.repeat(20), 'words are known'],
  ])('%s', (_, raw, got) => {
    const read = () => readPassage(raw, {}, lexicon);
    expect(read).toThrow(Fault);
    try {
      read();
    } catch (error) {
      expect(error).toMatchObject({ code: 'bad passage' });
      expect((error as Fault).message).toContain('expected');
      expect((error as Fault).message).toContain(got);
      expect((error as Fault).remedy).not.toBe('');
    }
  });
});

describe('how hard a word is', () => {
  const of = (word: string) =>
    hardWordDifficulty(word, `The ${word} was there in the morning.`, undefined, lexicon);
  it.each([
    ['cat', 'estuary'],
    ['school', 'stalactites'],
    ['river', 'naturalists'],
    ['leaf', 'larva'],
  ])('%s is easier than %s', (easy, hard) => {
    expect(of(easy)).toBeLessThan(of(hard));
  });
  it('keeps within 0 and 1 for anything', () => {
    for (const word of ['', '-', '😀', 'x'.repeat(5000), '__proto__']) {
      expect(of(word)).toBeGreaterThanOrEqual(0);
      expect(of(word)).toBeLessThanOrEqual(1);
    }
  });
  it('stands by the figure in the header of its weights', () => {
    expect(weights.header.figures['r over five folds by word']).toBeGreaterThan(0.71);
  });
});

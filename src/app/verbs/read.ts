import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import type { PassageReading, SegmentReading } from '../../../shared/text.js';
import { readLexicon } from '../../lexicon/read-lexicon.js';
import { readPassage } from '../../text/read-passage.js';
import { readTextFile, type Verb } from '../io.js';

function gradeOf(raw: string | undefined): number | undefined {
  if (raw === undefined) return undefined;
  const grade = Number(raw);
  if (Number.isInteger(grade) && grade >= 1 && grade <= 12) return grade;
  throw new Fault(
    'usage',
    `Cannot read for grade “${raw}”, expected a number from 1 to 12`,
    'Use for instance --grade 5.',
  );
}

function segmentLines(segment: SegmentReading, at: number): string[] {
  const clue = (word: SegmentReading['hardWords'][number]): string =>
    word.clue === null
      ? 'no clue'
      : `${word.clue.kind}: “${segment.text.slice(word.clue.place.start, word.clue.place.end)}”`;
  return [
    '',
    `Stop ${at + 1}`,
    segment.text,
    `  key terms: ${segment.keyTerms.map(({ term, weight }) => `${term} ${weight.toFixed(2)}`).join(', ') || 'none'}`,
    ...segment.hardWords.map(
      (word) => `  hard word: ${word.word} (${word.difficulty.toFixed(2)}), ${clue(word)}`,
    ),
    ...(segment.topicSentence === null
      ? []
      : [
          `  likely topic sentence: “${segment.text.slice(segment.topicSentence.start, segment.topicSentence.end)}”`,
        ]),
    ...segment.questions.map(({ text, relationship }) => `  question (${relationship}): ${text}`),
  ];
}

function asText(reading: PassageReading): string {
  const { level } = reading;
  const grade =
    level.grade === null
      ? 'no grade, since it has under 100 words'
      : `grade about ${level.grade.toFixed(1)}${level.range === null ? '' : `, between ${level.range[0].toFixed(1)} and ${level.range[1].toFixed(1)} by formula`}`;
  const head = [
    reading.title,
    `${level.words} words, ${level.sentences} sentences; ${grade}.`,
    'Formulas see word and sentence length only and can differ by three grades on one text.',
  ];
  return [...head, ...reading.segments.flatMap(segmentLines)].join('\n');
}

/** Numbers that JSON can't hold become null. */
function asJson(reading: PassageReading): string {
  return JSON.stringify({
    title: reading.title,
    level: reading.level,
    segments: reading.segments.map(({ text, keyTerms, hardWords, topicSentence, questions }) => ({
      text,
      keyTerms,
      hardWords,
      topicSentence,
      questions,
    })),
  });
}

/** Prints how the bot reads a passage. */
export const verb: Verb = {
  name: 'read',
  usage: 'read FILE [--grade N] [--title TITLE] [--json]',
  words: 'how the bot reads a passage: level, stops, key terms, hard words, questions',
  async run(args, io) {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { json: { type: 'boolean' }, grade: { type: 'string' }, title: { type: 'string' } },
    });
    const [path] = positionals;
    if (path === undefined || positionals.length > 1) {
      throw new Fault('usage', 'Cannot read, expected one file', `Use: ${verb.usage}`);
    }
    const grade = gradeOf(values.grade);
    const reading = readPassage(
      await readTextFile(path),
      {
        ...(grade === undefined ? {} : { grade }),
        ...(values.title === undefined ? {} : { title: values.title }),
      },
      readLexicon(),
    );
    await io.out(`${values.json ? asJson(reading) : asText(reading)}\n`);
    return 0;
  },
};

import { Fault } from '../../shared/fault.js';
import type { PassageReading, Range, SegmentReading } from '../../shared/text.js';
import type { Lexicon } from '../lexicon/lexicon.js';
import { analyse } from './analyse.js';
import type { Analysis } from './analysis.js';
import { checkCleaned, checkRaw } from './check-passage.js';
import { cleanText } from './clean.js';
import { cutSegments } from './cut.js';
import { hardWords } from './hard-words.js';
import { keyTerms } from './key-terms.js';
import { readLevel } from './level.js';
import { seedQuestions } from './seed-questions.js';
import { topicSentence } from './topic-sentence.js';

const grades = { least: 3, most: 8, unknown: 5 };
const longestTitle = 120;

function readSegment(
  passage: Analysis,
  { start, end }: Range,
  grade: number,
  lexicon: Lexicon,
): SegmentReading {
  const text = passage.text.slice(start, end);
  const segment = analyse(text, lexicon);
  const terms = keyTerms(segment, lexicon, passage);
  const words = hardWords(segment, grade, lexicon, passage);
  return {
    text,
    sentences: segment.sentences,
    keyTerms: terms,
    hardWords: words,
    topicSentence: topicSentence(segment, terms),
    questions: seedQuestions(segment, terms, words, lexicon),
  };
}

function titleOf(given: string | undefined, found: string | null, passage: Analysis): string {
  const title = given?.trim() ?? found ?? '';
  if (title !== '') return title.slice(0, longestTitle);
  const first = passage.sentences[0];
  const words = first ? passage.text.slice(first.start, first.end).split(/\s+/) : [];
  return words.length <= 6 ? words.join(' ') : `${words.slice(0, 6).join(' ')} …`;
}

/** Reads and cuts a passage for a grade (3..8, by its own level where left out); throws `Fault` 'bad passage' where it can't be used. */
export function readPassage(
  raw: string,
  options: { readonly title?: string; readonly grade?: number },
  lexicon: Lexicon,
): PassageReading {
  checkRaw(raw);
  const cleaned = cleanText(raw);
  const text = cleaned.blocks.map((block) => block.text).join('\n\n');
  const passage = analyse(text, lexicon);
  checkCleaned(cleaned.blocks, passage, lexicon);
  const level = readLevel(text, lexicon);
  const wanted = options.grade ?? (level.grade === null ? grades.unknown : Math.round(level.grade));
  if (!Number.isFinite(wanted))
    throw new Fault(
      'bad passage',
      'Cannot cut the passage, expected a grade from 3 to 8',
      'Give a whole number as grade.',
    );
  const grade = Math.min(grades.most, Math.max(grades.least, wanted));
  const segments = cutSegments(passage, grade).map((range) => readSegment(passage, range, grade, lexicon));
  return { title: titleOf(options.title, cleaned.title, passage), level, segments };
}

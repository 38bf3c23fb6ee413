import type { Block } from '../../shared/messages.js';
import type { PassageReading, SegmentReading } from '../../shared/text.js';
import { staff } from './asked.js';
import { heading, list, prose, reading } from './blocks.js';

/** How hard the whole text is: a range with a caution, and no grade where there is too little text. */
export function levelBlocks({ level }: PassageReading): readonly Block[] {
  const { grade, range, ease, words, sentences } = level;
  const line =
    grade === null || range === null
      ? staff('no grade', { words })
      : staff('level line', {
          grade: grade.toFixed(1),
          from: range[0].toFixed(1),
          to: range[1].toFixed(1),
          ease: ease === null ? '–' : Math.round(ease),
        });
  return [prose(staff('size line', { words, sentences })), prose(line), prose(staff('level caution'))];
}

function hardWordLine(segment: SegmentReading): readonly string[] {
  return segment.hardWords.map(({ word, clue }) => {
    if (clue === null) return staff('hard word alone', { word });
    const { place, kind } = clue;
    const quote = segment.text.slice(place.start, place.end);
    return staff('hard word', { word, kind, quote });
  });
}

/** One segment as the bot reads it: text, key terms, hard words with the text's own clues, questions it could seed. */
export function segmentBlocks(segment: SegmentReading, stop: number, many: number): readonly Block[] {
  const terms = segment.keyTerms.map(({ term }) => term).join(', ');
  const hard = hardWordLine(segment);
  const topic = segment.topicSentence;
  return [
    heading(staff('segment title', { part: stop + 1, many })),
    reading(segment.text),
    ...(terms === '' ? [] : [prose(staff('key terms', { terms }))]),
    ...(topic === null
      ? []
      : [prose(staff('topic sentence', { quote: segment.text.slice(topic.start, topic.end) }))]),
    ...(hard.length === 0 ? [] : [prose(staff('hard words')), ...list(hard)]),
    ...(segment.questions.length === 0
      ? []
      : [
          prose(staff('seeds')),
          ...list(segment.questions.map(({ text, relationship }) => `${text} (${relationship})`)),
        ]),
  ];
}

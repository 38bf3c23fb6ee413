import { asId, type PassageId } from '../../shared/ids.js';
import type { HardWord, SegmentReading } from '../../shared/text.js';
import type { ClassState, ShelfPassage } from '../../src/practice/state.js';

export const harbour = asId<PassageId>('pa-harbour');
export const lantern = asId<PassageId>('pa-lantern');

function mooring(text: string): HardWord {
  const clue = 'a ring set in stone';
  const start = text.indexOf(clue);
  return {
    word: 'mooring',
    start: text.indexOf('mooring'),
    difficulty: 0.8,
    clue: { kind: 'definition', place: { in: 'segment', start, end: start + clue.length } },
  };
}

function segment(text: string): SegmentReading {
  const sentences = [...text.matchAll(/[^.?!]+[.?!]/gu)].map((found) => ({
    start: found.index + (found[0].length - found[0].trimStart().length),
    end: found.index + found[0].length,
  }));
  return {
    text,
    sentences,
    keyTerms: [
      { term: 'harbour', weight: 1 },
      { term: 'tide', weight: 0.6 },
    ],
    hardWords: text.includes('mooring') ? [mooring(text)] : [],
    topicSentence: sentences[0] ?? null,
    questions: [{ text: 'Why do the boats wait for the tide?', relationship: 'think and search' }],
  };
}

const segments = [
  'The small harbour sleeps at low water. Boats lie on the mud and wait for the tide. Each is tied to a mooring, a ring set in stone.',
  'At noon the tide creeps back over the mud. The boats lift one by one. Gulls follow the first boat out.',
  'By evening the harbour is full again. The crews hang up their wet nets. Nobody speaks much.',
];

function onShelf(id: PassageId, title: string): ShelfPassage {
  return {
    id,
    grade: 4,
    reading: {
      title,
      level: {
        grade: 4.2,
        range: [3.1, 5],
        ease: 82,
        formulas: { 'Flesch-Kincaid': 4.2 },
        words: 240,
        sentences: 22,
      },
      segments: segments.map(segment),
    },
    gists: {},
    spareQuestions: {},
    withdrawn: false,
  };
}

export const passages: ClassState['shelf'] = {
  [harbour]: onShelf(harbour, 'The Sleeping Harbour'),
  [lantern]: onShelf(lantern, 'A Lantern for the Lane'),
};

/*
 * Labelled examples of question-answer relationships, paraphrased from published teaching material on
 * Raphael 1986 and Raphael & Au 2005, The Reading Teacher 59:206-221, laid on a passage of ours that has the facts.
 */
import { describe, expect, it } from 'vitest';
import { judgeQuestion } from '../../src/judging/judge-question.js';
import { makeTools } from '../../src/judging/tools.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';

const tools = makeTools(readLexicon());
const wolves =
  'Wolves live in packs. Most packs have six to eight wolves. Where moose and deer are plentiful a pack can grow larger. ' +
  'In a hard winter some of the young wolves leave, and the pack becomes smaller. Disease also makes packs shrink. ' +
  'Roads and farms now cut through many of the old hunting grounds.';
const train =
  'Dunnock reached the station at ten to nine, out of breath. The train left at nine. She sat down on her case and laughed at first. ' +
  'By evening she no longer laughed. A porter had shared his bread with her, and she had told him the whole story, even the part where she was to blame. ' +
  'Since that day she has always come early, and always with bread for two. The writer thinks that lateness is often the start of a friendship.';

describe('question-answer relationships (Raphael 1986)', () => {
  it.each([
    [wolves, 'How many wolves live in a pack?', ['right there']],
    [wolves, 'What factors change the size of a pack?', ['think and search']],
    [wolves, 'From the article, why might packs struggle today?', ['author and me']],
    [wolves, 'Should wolves be protected?', ['on my own']],
    [train, 'When did the train leave?', ['right there']],
    [train, 'What caused Dunnock to change over the story?', ['think and search', 'author and me']],
    [train, 'Do you agree with the writer?', ['on my own', 'author and me']],
    [train, 'Have you ever quarrelled with a friend?', ['on my own']],
  ])('%#', (segment, text, relationships) => {
    expect(relationships).toContain(
      judgeQuestion({ kind: 'question', segment, text }, tools).measures.relationship,
    );
  });
});

import { describe, expect, test } from 'vitest';
import { copiedLines } from '../../src/judging/sum-up-level.js';
import { judgeSumUp } from '../../src/judging/judge-sum-up.js';
import { makeTools } from '../../src/judging/tools.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { misspell } from '../../src/app/evaluate/misspell.js';
import { seededRandom } from '../../src/app/evaluate/seeded-random.js';

const tools = makeTools(readLexicon());
const segment =
  'Mud is treacherous stuff: it looks as solid as a pavement and then swallows you to the knee. Rook, the heaviest, tested each step with the broom handle, and the others trod exactly where he had trodden. By noon they stood inside four roofless walls, furred with green weed. Aunt Linnet closed her eyes. She walked eleven paces from the doorway, turned left, and rapped on the floor with her stick until one flagstone gave back a hollow sound.';
const sentences = segment.split(/(?<=\.) /);

function copied(text: string, peers?: readonly string[]) {
  const judged = judgeSumUp({ kind: 'sum-up', segment, text, ...(peers ? { peers } : {}) }, tools);
  return { level: judged.level, ...judged.measures };
}

describe('a pasted text is caught', () => {
  test.each([
    ['whole', segment],
    ['without capitals and punctuation', segment.toLowerCase().replace(/[^a-z ]/g, '')],
    ['one sentence', sentences[1]!],
    ['sentences in another order', [...sentences].reverse().join(' ')],
    ['glued from two places', `${sentences[0]!} ${sentences[4]!}`],
    [
      'words changed here and there',
      'Mud is dangerous stuff: it looks as hard as a pavement and then eats you to the knee. Rook, the biggest, tested every step with the broom stick, and the others walked exactly where he had trodden.',
    ],
    [
      'words left out and put in',
      'Mud is really treacherous stuff, it looks solid as a pavement and swallows you to the knee. By noon they all stood inside the four roofless walls, furred with weed.',
    ],
    [
      'words swapped within a sentence',
      'With the broom handle Rook tested each step, the heaviest, and exactly where he had trodden the others trod. Furred with green weed, by noon inside four roofless walls they stood.',
    ],
  ])('%s', (_, text) => {
    const { copied: share, level } = copied(text);
    expect(share).toBeGreaterThanOrEqual(copiedLines.most);
    expect(level).toBeLessThanOrEqual(1);
  });

  test('misspelt, in twenty seeded ways', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const share = copied(misspell(segment, 1 / 3, seededRandom(seed))).copied;
      expect(share, `seed ${seed}`).toBeGreaterThanOrEqual(copiedLines.most);
    }
  });
});

describe('what is no copy', () => {
  test.each([
    ['own words', 'They cross dangerous mud and Aunt Linnet finds a hollow stone in the old school.'],
    ['five words in a row', 'They got to four roofless walls with weed on, so it was the school.'],
    ['names and terms that nobody can avoid', 'Rook, Aunt Linnet and the others walked there.'],
    ['nothing', ''],
  ])('%s', (_, text) => {
    expect(copied(text).copied).toBe(0);
  });

  test('a moderate borrowing lies between', () => {
    const share = copied(
      'It is a hard walk for all of them because mud looks as solid as a pavement and then swallows you, but they arrive at the old school and the aunt is looking for the place where she hid a thing.',
    ).copied;
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThan(copiedLines.most);
  });
});

describe('copying from a peer', () => {
  const peer =
    'The mud is tricky so they go slow and then the old lady knocks around to find her secret spot.';
  test('is noticed, also with a word changed', () => {
    expect(copied(peer, [peer]).copiedFromPeers).toBeGreaterThanOrEqual(copiedLines.most);
    expect(copied(peer.replace('tricky', 'nasty'), [peer]).copiedFromPeers).toBeGreaterThanOrEqual(
      copiedLines.most,
    );
  });
  test('does not count what both took from the segment', () => {
    expect(copied(sentences[1]!, [sentences[1]!]).copiedFromPeers).toBe(0);
  });
  test('does not lower the level: it is told to the tutor only', () => {
    expect(copied(peer, [peer]).level).toBe(copied(peer).level);
  });
});

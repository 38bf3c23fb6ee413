import { describe, expect, it } from 'vitest';
import { judgeLine } from '../../src/app/judge-line.js';
import { makeJudges } from '../../src/app/judges.js';
import { readLexicon } from '../../src/lexicon/read-lexicon.js';
import { memoryStore } from '../../src/store/memory-store.js';
import { plainCharacters } from '../../src/text/clean.js';
import { readMove } from '../../shared/moves.js';
import { openPlayed, playClass, pupilNames } from '../support/played-class.js';

const lexicon = readLexicon();
const judges = makeJudges(lexicon);
const segment = 'The constructor built the boat in the harbour. He used planks from the old pier.';

/** What was found by chance once, each as a rule of its own. */
describe('A word that names what every object has', () => {
  it.each(['constructor', 'toString', 'valueOf', 'hasOwnProperty', '__proto__'])(
    '%s is judged as any other word',
    (word) => {
      for (const value of [
        { kind: 'question', segment, text: `What did the ${word} build?` },
        { kind: 'sum-up', segment, text: `The ${word} built a boat.` },
        { kind: 'clarify', segment, word, text: `It means ${word}.` },
        { kind: 'predict', segment, text: `I think the ${word} will sail because he has planks.` },
        { kind: 'answer', segment, question: `What did the ${word} use?`, text: `The ${word} used planks.` },
        { kind: 'hard-word', segment, word },
        { kind: 'screen', text: `The ${word} is here.`, passage: segment, names: [word] },
      ]) {
        expect(judgeLine(value, judges, lexicon)).toHaveProperty('answer');
      }
    },
  );

  it('stands in a passage as it was written', () => {
    expect(plainCharacters('A &constructor; of boats &amp; sails')).toBe('A &constructor; of boats & sails');
  });

  it('is no id', () => {
    expect(() => readMove('release', { posts: 'constructor' })).toThrow(
      'expected the id of something that is there',
    );
    expect(() => readMove('set-goal', { person: 'constructor', strategy: 'predict' })).toThrow(
      'expected the id',
    );
  });

  it('comes back in the word review once a tutor has confirmed its meaning, and not before', async () => {
    const played = await openPlayed((now) => memoryStore({ now }));
    const one = await playClass(played);
    for (const by of pupilNames) await one.act(by, { type: 'visit' });
    const early = await one.act('Finch', { type: 'review-word', word: 'constructor', known: true });
    expect(early.done).toBe(false);
    await one.act('Finch', {
      type: 'send-draft',
      do: 'clarify',
      word: 'constructor',
      text: 'who builds a thing',
    });
    const { posts } = await played.house.classes.load(one.classId);
    const post = Object.values(posts)[0]!.id;
    await one.act('Finch', { type: 'post-draft', post });
    const confirmed = await one.act('Plover', {
      type: 'confirm-meaning',
      post,
      meaning: 'who builds something',
    });
    expect(confirmed.done ? '' : confirmed.why).toBe('');
    const { reviews } = await played.house.classes.load(one.classId);
    for (const name of pupilNames)
      expect(Object.keys(reviews[one.people[name]!] ?? {})).toEqual(['constructor']);
    await played.store.close();
  });
});

describe('An update that comes again after its words have gone', () => {
  it('is refused as before, and says what to do', async () => {
    const played = await openPlayed((now) => memoryStore({ now }));
    const one = await playClass(played);
    const who = { classId: one.classId, person: one.people['Wren']! };
    const update = { id: 'once', who, move: 'take-back', fields: { post: 'nothing' } };
    expect((await played.house.move(update)).done).toBe(false);
    await one.act('Plover', { type: 'erase-person', person: one.people['Pipit']! });
    await played.store.erasePerson(one.classId, who.person);
    played.house.classes.drop(one.classId);
    const again = await played.house.move(update);
    expect(again.done).toBe(false);
    expect(again.messages.map(({ summary }) => summary).join()).toMatch(/\w/u);
    await played.store.close();
  });
});

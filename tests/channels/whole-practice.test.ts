import { afterEach, describe, expect, it } from 'vitest';
import { openWholeClass, type PlatformName, type Somebody, type WholeClass } from '../support/whole-class.js';

const kite = [
  'Mo made a kite from an old sail. It was heavy, but it flew well. Every evening he ran along the canal until the string hummed in his hand.',
  'One day the string snapped, because it had rubbed on the gate. Mo ran after his kite. It hung in a tall tree by the canal, and the heron that lived there looked quite indignant.',
].join('\n\n');

const platforms: readonly (readonly [string, PlatformName])[] = [
  ['Discord', 'discord'],
  ['Slack', 'slack'],
];

describe.each(platforms)('The invented class on %s, with the real judges', (_, platform) => {
  let there: WholeClass;
  afterEach(async () => {
    expect(there.breaches()).toEqual([]);
    expect(there.logged()).not.toMatch(/kite|string|indignant|stupid/iu);
    await there.stop();
  });

  /** Does a step from the pupil's own page: the feedback that comes privately, before anything is sent. */
  const draft = async (
    one: Somebody,
    step: RegExp,
    values: Readonly<Record<string, string>>,
  ): Promise<string> => {
    await one.page();
    await one.press(step);
    await one.fill(values);
    return one.sees();
  };
  const send = async (one: Somebody): Promise<void> => {
    await one.press(/^Send it/u);
    await there.sent();
  };

  it('practises from /passages add to the digest: all four strategies, what is doubtful held, published and removed', async () => {
    there = await openWholeClass(platform);
    const tutor = there.as('Plover', 'staff');
    const [wren, finch, pipit, dunlin] = (['Wren', 'Finch', 'Pipit', 'Dunlin'] as const).map((nickname) =>
      there.as(nickname, 'talk'),
    ) as [Somebody, Somebody, Somebody, Somebody];
    const group = await tutor.suggested('practice', 'start', 'group', 'Group 1');
    const passage = (action: string, title: string) => tutor.suggested('passages', action, 'passage', title);

    // The tutor ends what the class was reading, adds a text, and sets it before another.
    await tutor.command('practice', 'end', { group });
    await tutor.command('passages', 'add', { title: 'The Kite', text: kite, grade: '5' });
    await tutor.command('passages', 'unset', { passage: await passage('unset', 'Why Shingle'), group });
    await tutor.command('passages', 'set', { passage: await passage('set', 'The Kite'), group });
    await tutor.command('practice', 'start', { group });
    expect(tutor.sees()).toContain('Done.');
    await there.sent();
    expect(there.said('talk')).toContain('A new text: The Kite');

    // Predict: one guesses, the others look.
    const guessed = await draft(wren, /what may come/u, {
      text: 'I think the kite will fly over the canal because the string is long.',
    });
    expect(guessed).toContain('You used a clue from the text');
    expect(there.said('talk')).not.toContain('because the string is long');
    await send(wren);
    for (const one of [finch, pipit, dunlin]) {
      await one.page();
      await one.press(/not sure/iu);
    }
    await there.pass(60_000);
    await there.sent();
    expect(there.said('talk')).toContain('The Kite, part 1');

    // Question, answer, a hard word, a sum-up; each has its feedback before anybody else reads it.
    expect(await draft(wren, /^Ask a question/u, { text: 'Why did the string snap in the end?' })).toMatch(
      /You asked/u,
    );
    expect(there.said('talk')).not.toContain('Why did the string snap');
    await send(wren);
    expect(there.said('talk')).toContain('Why did the string snap in the end?');
    await draft(finch, /^Answer/u, { text: 'Because it had rubbed on the gate again and again.' });
    await send(finch);
    await draft(dunlin, /hard word/u, { word: 'indignant', text: 'I think it means the heron was cross.' });
    await send(dunlin);
    await draft(pipit, /^Sum up/u, { text: 'Mo loses his kite in a tree when its string breaks at last.' });
    await send(pipit);
    // An answer's words are kept from those who may still answer.
    for (const words of ['Answers came from Finch', 'the heron was cross', 'Mo loses his kite'])
      expect(there.said('talk')).toContain(words);
    expect(there.said('talk')).not.toContain('rubbed on the gate again');

    // What is doubtful waits for an adult: one is published, one removed.
    await draft(dunlin, /question/u, { text: 'Did Mo look at www.kites.example before he made it?' });
    expect(there.said('talk')).not.toContain('www.kites');
    await tutor.command('held', 'list');
    expect(tutor.sees()).toMatch(/A link: .*www\.kites\.example/u);
    await tutor.press(/^Publish/u);
    await there.sent();
    expect(there.said('talk')).toContain('before he made it?');
    await draft(finch, /question/u, { text: 'Dunlin you are so stupid, why did you ask that?' });
    await tutor.command('held', 'list');
    expect(tutor.sees()).toContain('Dunlin you are so stupid');
    await tutor.press(/^Remove/u);
    await there.sent();
    expect(there.said('talk')).not.toContain('so stupid');

    // Every kind was judged by the real judges, and the digest tells of everybody.
    const { posts } = await there.house.classes.load(there.classId);
    const judged = Object.values(posts).flatMap(({ latest }) => (latest === null ? [] : [latest]));
    expect(new Set(judged.map(({ kind }) => kind))).toEqual(
      new Set(['predict', 'question', 'answer', 'clarify', 'sum-up']),
    );
    expect(judged.filter(({ version }) => version.startsWith('fake'))).toEqual([]);
    await tutor.command('digest', 'now');
    for (const words of ['For the next session', 'Wren', 'Finch', 'Pipit', 'Dunlin', 'not enough yet'])
      expect(tutor.sees()).toContain(words);
    expect(there.said('staff')).not.toBe('');
  });
});

import { describe, expect, it } from 'vitest';
import type { Reply, Update } from '../../shared/channel.js';
import type { ClassEvent } from '../../shared/events.js';
import { mayMove, moveShapes, type MoveName } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import { replay } from '../../src/practice/evolve.js';
import { memoryStore } from '../../src/store/memory-store.js';
import { openPlayed, playClass, pupilNames } from '../support/played-class.js';
import { chanceFrom } from './chance.js';
import { fieldsFor } from './fields.js';

const textsOf = (events: readonly ClassEvent[]): string[] =>
  events.flatMap((event) =>
    event.type === 'draft-judged' || event.type === 'draft-held' ? [wordsOf(event.text) ?? ''] : [],
  );

async function openClass() {
  const played = await openPlayed((now) => memoryStore({ now }));
  const one = await playClass(played);
  for (const by of pupilNames) await one.act(by, { type: 'visit' });
  return { ...played, one, who: (name: string) => ({ classId: one.classId, person: one.people[name]! }) };
}

describe('Two pupils who press everything at once', () => {
  it.each([1, 2, 3])(
    'are each answered, in one order, and the class is the same when it is read anew (seed %i)',
    async (seed) => {
      const { house, store, one, who } = await openClass();
      const chance = chanceFrom(seed);
      const moves = (Object.keys(moveShapes) as MoveName[]).filter((name) => mayMove[name].includes('pupil'));
      for (const [by, text] of [
        ['Wren', 'Why is the tide early?'],
        ['Finch', 'Why is the tide late?'],
        ['Finch', 'Why is it night?'],
      ] as const)
        await one.act(by, { type: 'send-draft', do: 'question', text });
      const { posts, people } = await house.classes.load(one.classId);
      const asked: Update[] = [];
      for (let n = 0; n < 400; n += 1) {
        const move = chance.pick(moves);
        const ids = [
          ...Object.keys(posts),
          ...Object.keys(people),
          ...Array.from({ length: 30 }, (_, at) => `p${40 + at}`),
        ];
        const update = {
          id: `press-${n}`,
          who: who(chance.pick(['Wren', 'Finch'])),
          move,
          fields: fieldsFor(chance, moveShapes[move], ids),
        };
        asked.push(update);
        if (n % 10 === 0) {
          const own = chance.pick(Object.values(posts));
          const by = { classId: one.classId, person: own.person! };
          asked.push({ id: `post-${n}`, who: by, move: 'post-draft', fields: { post: own.id } });
        }
        // An impatient finger: the same press again, before the first is answered.
        if (chance.oneIn(3)) asked.push(update);
      }
      const replies = await Promise.all(asked.map((update) => house.move(update)));

      const byId = new Map<string, Reply>();
      for (const [at, { id }] of asked.entries()) {
        const before = byId.get(id);
        if (before) expect(replies[at]).toEqual(before);
        byId.set(id, replies[at]!);
      }
      for (const { done, messages } of byId.values()) if (!done) expect(messages.length).toBeGreaterThan(0);

      const events = await store.events(one.classId);
      const state = await house.classes.load(one.classId);
      expect(replay(one.classId, events)).toEqual(state);
      const posted = events.flatMap((event) => (event.type === 'draft-posted' ? [event.post] : []));
      expect(new Set(posted).size).toBe(posted.length);
      expect(posted.length).toBeGreaterThan(0);
      await store.close();
    },
  );
});

describe('A pupil who sends a thousand posts in a minute', () => {
  it('is asked for a break after forty, kindly; what was taken is kept once, and others are taken all the while', async () => {
    const { house, store, clock, one, who } = await openClass();
    const taken: string[] = [];
    const refused = new Set<string>();
    const others: boolean[] = [];
    for (let n = 0; n < 1000; n += 1) {
      clock.pass(60);
      const text = `Why did the tide turn at number ${n}?`;
      const reply = await house.move({
        id: `flood-${n}`,
        who: who('Wren'),
        move: 'send-draft',
        fields: { do: 'question', text },
      });
      if (reply.done) taken.push(text);
      else refused.add(reply.messages.map(({ summary }) => summary).join(' '));
      if (n % 100 === 50) {
        const calm = await house.move({
          id: `calm-${n}`,
          who: who('Finch'),
          move: 'send-draft',
          fields: { do: 'question', text: `Why is it calm at ${n}?` },
        });
        others.push(calm.done);
      }
    }
    expect(taken).toHaveLength(40);
    expect([...refused]).toHaveLength(1);
    for (const words of refused) {
      expect(words).not.toMatch(/Cannot|expected|got/u);
      expect(words.split(/\s+/u).length).toBeLessThanOrEqual(12);
    }
    expect(others).toEqual(Array.from({ length: 10 }, () => true));
    const kept = textsOf(await store.events(one.classId));
    for (const text of taken) expect(kept.filter((one) => one === text)).toHaveLength(1);
    expect(kept).toHaveLength(50);
    clock.pass(5 * 60_000);
    const rested = await house.move({
      id: 'rested',
      who: who('Wren'),
      move: 'send-draft',
      fields: { do: 'question', text: 'Why is it quiet now?' },
    });
    expect(rested.done ? '' : rested.why).toBe('');
    await store.close();
  });

  it('is heard all the same when one of them may mean harm', async () => {
    const { house, store, clock, one, who } = await openClass();
    for (let n = 0; n < 200; n += 1) {
      clock.pass(60);
      const text = n === 150 ? 'I am unsafe at home' : `Why did the tide turn at number ${n}?`;
      await house.move({
        id: `flood-${n}`,
        who: who('Wren'),
        move: 'send-draft',
        fields: { do: 'question', text },
      });
    }
    const raised = (await store.events(one.classId)).filter(({ type }) => type === 'alarm-raised');
    expect(raised).toHaveLength(1);
    await store.close();
  });
});

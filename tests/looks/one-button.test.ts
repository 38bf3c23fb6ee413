import { describe, expect, it } from 'vitest';
import { slashCommands } from '../../commands/all.js';
import { readLook } from '../../shared/looks.js';
import { readMove } from '../../shared/moves.js';
import type { Message } from '../../shared/messages.js';
import { lookAt } from '../../src/looks/look-at.js';
import type { LookPort } from '../../src/looks/port.js';
import { digestOf } from '../../src/progress/digest.js';
import { fakeJudges } from '../support/fake-judges.js';
import { makeClass, minute, type Played } from '../practice/playing.js';
import { allPressed, type Pressed } from './pressing.js';

function portOf(played: Played): LookPort {
  return {
    store: {
      events: () => Promise.resolve(played.events),
      evidence: () => Promise.resolve([...played.evidence.values()]),
      sealedWords: () => Promise.resolve(null),
      sealedLooks: () => Promise.resolve([]),
      slipsOf: () => Promise.resolve([]),
      stuck: () => Promise.resolve([]),
      secondKey: () => Promise.resolve(null),
    },
    judges: fakeJudges,
    when: (at) => new Date(at).toISOString(),
    commands: slashCommands,
  };
}

function look(
  played: Played,
  nickname: string,
  name: string,
  args: Pressed['fields'] = {},
): Promise<readonly Message[]> {
  return lookAt(portOf(played), played.state, played.person(nickname), readLook(name, args), played.now);
}

/** Presses the one big button of a pupil's page until something has happened; what it was, or null where there is none. */
async function pressMain(played: Played, nickname: string, words: string): Promise<string | null> {
  let messages = await look(played, nickname, 'turn');
  for (let steps = 0; steps < 3; steps += 1) {
    const main = allPressed(messages, words).find((pressed) => pressed.main);
    if (main === undefined) return null;
    const raw = { ...main.fields, ...main.action.args };
    if (main.action.kind === 'move') {
      played.move(played.person(nickname), readMove(main.action.name, raw));
      return main.action.name;
    }
    messages = await look(played, nickname, main.action.name, raw);
  }
  throw new Error(`${nickname} presses on and on and nothing happens`);
}

/** All pupils in turn press nothing but the big button until nobody has one; how often each thing was done. */
async function pressOn(played: Played, pupils: readonly string[]): Promise<ReadonlyMap<string, number>> {
  const done = new Map<string, number>();
  for (let rounds = 0; rounds < 60; rounds += 1) {
    let pressed = 0;
    for (const pupil of pupils) {
      const what = await pressMain(played, pupil, `Why ${pupil} ${rounds}?`);
      if (what === null) continue;
      done.set(what, (done.get(what) ?? 0) + 1);
      pressed += 1;
      played.until(played.now + minute);
    }
    if (pressed > 0) continue;
    if (played.phase === 'none') break;
    played.until(played.now + 60 * minute);
  }
  return done;
}

describe('Pupils who press nothing but the one big button', () => {
  it('read a passage to its end, with a question, replies and a sum-up on each segment, and nothing refused', async () => {
    const pupils = ['Finch', 'Wren', 'Robin'];
    const played = makeClass({ pupils, segments: 3 });
    for (const strategy of ['question', 'clarify', 'sum-up', 'predict'] as const) {
      if (!played.group.open.includes(strategy)) {
        played.staff({ type: 'open-strategy', strategy, group: played.groupId });
      }
    }
    played.staff({ type: 'start-practice', group: played.groupId });
    const done = await pressOn(played, pupils);

    expect(played.group.finished).toHaveLength(1);
    expect(done.get('send-draft')).toBeGreaterThanOrEqual(9);
    expect(done.get('post-draft')).toBe(done.get('send-draft'));
    const posts = Object.values(played.state.posts);
    for (const stop of [0, 1, 2]) {
      const here = posts.filter((post) => post.stop === stop).map((post) => post.do);
      expect(here, `segment ${stop}`).toEqual(expect.arrayContaining(['question', 'answer', 'sum-up']));
    }
  });

  it('fill a digest in which all of them are seen', async () => {
    const pupils = ['Finch', 'Wren', 'Robin'];
    const played = makeClass({ pupils, segments: 2 });
    played.staff({ type: 'start-practice', group: played.groupId });
    await pressOn(played, pupils);
    const rows = [...played.evidence.values()];
    const digest = digestOf({ state: played.state, group: null, rows, at: played.now });
    expect(digest.passages).toEqual([{ title: 'Shore birds', segments: 2, closed: 2 }]);
    expect(digest.pupils.map(({ nickname }) => nickname).toSorted()).toEqual(pupils.toSorted());
    for (const pupil of digest.pupils) {
      expect(pupil.posts, pupil.nickname).toBeGreaterThan(0);
      expect(pupil.evidence.length, pupil.nickname).toBeGreaterThan(0);
    }
    expect(digest.next).toHaveLength(3);
    expect(new Set(digest.next.map(({ pupil }) => pupil)).size).toBeGreaterThan(1);
  });

  it('go on when every post waits for an adult, who publishes all of them by one button', async () => {
    const pupils = ['Finch', 'Wren'];
    const played = makeClass({ pupils, segments: 1, moderation: 'hold everything' });
    played.staff({ type: 'start-practice', group: played.groupId });
    await pressMain(played, 'Finch', 'What is this about?');
    await pressMain(played, 'Wren', 'What is this about?');
    for (let presses = 0; presses < 6; presses += 1) {
      await pressMain(played, presses % 2 === 0 ? 'Finch' : 'Wren', `Why stones ${presses}?`);
    }
    const waits = Object.values(played.state.posts).filter(({ stage }) => stage.stage === 'held').length;
    expect(waits).toBeGreaterThan(0);
    const publish = allPressed(await look(played, 'Heron', 'waiting')).find(({ main }) => main);
    expect(publish?.label).toBe(`Publish these ${waits}`);
    played.move(played.person('Heron'), readMove(publish?.action.name ?? '', publish?.action.args ?? {}));
    expect(Object.values(played.state.posts).some(({ stage }) => stage.stage === 'held')).toBe(false);
  });
});

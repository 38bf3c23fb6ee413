import { describe, expect, it } from 'vitest';
import type { Telling } from '../../shared/tellings.js';
import { emptyState } from '../../src/practice/empty-state.js';
import { evolve } from '../../src/practice/evolve.js';
import { runningOf } from '../../src/practice/lookup.js';
import { inTalk } from '../../src/practice/talk-of.js';
import { tell } from '../../src/practice/tell.js';
import { startClass, weekday } from './playing.js';

/** A passage played to its end, every telling with the practice that it belongs to. */
function played(): { readonly told: readonly Telling[]; readonly practice: string; readonly title: string } {
  const one = startClass({ segments: 2, pupils: ['Finch', 'Wren', 'Robin'] });
  const running = runningOf(one.group.practice);
  const title = running === null ? '' : (one.state.shelf[running.passage]?.reading.title ?? '');
  one.post(one.leader, 'question', 'Why do birds turn stones?');
  one.until(weekday(2, '15:00'));
  one.staff({ type: 'end-practice', group: one.groupId });
  let state = emptyState(one.state.id);
  const told = one.events.flatMap((event) => {
    const before = state;
    state = evolve(state, event);
    return tell(state, event).map((telling) => inTalk(before, state, event, telling));
  });
  return { told, practice: running?.practice ?? '', title };
}

describe('a telling and its practice', () => {
  const { told, practice, title } = played();
  const talkOf = (telling: Telling) => ('talk' in telling ? telling.talk : undefined);
  const audienceOf = (telling: Telling) =>
    'message' in telling ? telling.message.audience : telling.audience;
  const toChannel = told.filter((one) => audienceOf(one).to === 'channel' && one.do !== 'withdraw');

  it('what the channel is told of a text, first and last message included, belongs to one practice', () => {
    const kinds = toChannel.map(({ key }) => key.split('/')[0]);
    expect(kinds).toEqual(expect.arrayContaining(['card', 'segment', 'post', 'leg', 'finished']));
    expect(new Set(toChannel.map((one) => JSON.stringify(talkOf(one))))).toEqual(
      new Set([JSON.stringify({ practice, title })]),
    );
    expect(practice).not.toBe('');
  });

  it('what one person or staff are told belongs to none', () => {
    const others = told.filter((one) => audienceOf(one).to !== 'channel');
    expect(others.length).toBeGreaterThan(3);
    expect(others.filter((one) => talkOf(one) !== undefined)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import type { MessageKey } from '../../shared/tellings.js';
import { isLookName, readLook } from '../../shared/looks.js';
import { isMoveName, readMove } from '../../shared/moves.js';
import { tell } from '../../src/practice/tell.js';
import { hour, monday, startClass, weekday, type Played } from './playing.js';

/** A week with everything in it: two moderations, help, replies, a pause, an alarm, an undo, a leg's end. */
function fullWeek(): Played {
  const played = startClass({ segments: 5, pupils: ['Finch', 'Wren', 'Robin', 'Plover'] });
  const { leader, others } = played;
  const [first = '', second = '', third = ''] = others;
  for (const name of others) played.move(played.person(name), { type: 'pass-prediction' });
  played.move(played.person(leader), { type: 'ask-help', do: 'question' });
  const question = played.post(leader, 'question', 'Why do birds turn stones?');
  const answer = played.post(first, 'answer', 'For food.', { question: question.id });
  played.move(played.person(leader), {
    type: 'respond',
    post: answer.id,
    response: 'look again here',
    place: { start: 0, end: 6 },
  });
  played.post(second, 'answer', 'so rude', { question: question.id });
  const word = played.post(third, 'clarify', 'It means rocks.', { word: 'Stones' });
  played.staff({ type: 'confirm-meaning', post: word.id });
  played.post(leader, 'sum-up', 'Birds turn stones.');
  const predicted = played.post(first, 'predict', 'They fly off.');
  played.staff({ type: 'close-segment', group: played.groupId });
  played.staff({ type: 'undo-close', group: played.groupId });
  played.staff({ type: 'close-segment', group: played.groupId });
  played.move(played.person(first), { type: 'check-prediction', post: predicted.id, outcome: 'changed' });
  played.until(monday('15:00'));
  played.staff({ type: 'name-leader', group: played.groupId, person: played.person(second) });
  played.move(played.person(third), { type: 'tell-grown-up', text: 'help' });
  played.staff({ type: 'pause-practice', group: played.groupId });
  played.now += hour;
  played.staff({ type: 'resume-practice', group: played.groupId });
  played.staff({ type: 'extend-segment', group: played.groupId, days: 1 });
  played.now = weekday(2, '09:00');
  played.move(played.person(first), { type: 'review-word', word: 'stones', known: false });
  played.until(weekday(12, '09:00'));
  return played;
}

const week = fullWeek();
const messages = week.tellings.flatMap(({ telling }) =>
  telling.do === 'say' || telling.do === 'replace' ? [telling.message] : [],
);

describe('what is told', () => {
  it('says each message before it replaces it, under a key of its own', () => {
    const said = new Set<MessageKey>();
    for (const { telling, by } of week.tellings) {
      if (telling.do === 'say') {
        expect(said.has(telling.key), `${telling.key} said twice, at ${by.type}`).toBe(false);
        said.add(telling.key);
      }
      if (telling.do === 'replace') expect(said, `at ${by.type}`).toContain(telling.key);
      if (telling.do === 'withdraw') said.delete(telling.key);
    }
  });

  it('offers only moves and looks that exist, with arguments that they take', () => {
    const actions = messages.flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.type === 'choices' ? block.choices.map(({ action }) => action) : [])),
    );
    expect(actions.length).toBeGreaterThan(20);
    for (const { kind, name, args } of actions) {
      if (kind === 'move') {
        expect(isMoveName(name), name).toBe(true);
        expect(() => readMove(name, args)).not.toThrow();
      } else {
        expect(isLookName(name), name).toBe(true);
        expect(() => readLook(name, args)).not.toThrow();
      }
    }
  });

  it('has one next thing a message at most, and a summary', () => {
    for (const message of messages) {
      const main = message.blocks.flatMap((block) =>
        block.type === 'choices' ? block.choices.filter((one) => one.main) : [],
      );
      expect(main.length).toBeLessThanOrEqual(1);
      expect(message.summary).not.toBe('');
    }
  });

  it('keeps a pupil’s words in quotations, in every message', () => {
    const words = [
      'Why do birds turn stones?',
      'For food.',
      'so rude',
      'It means rocks.',
      'Birds turn stones.',
      'They fly off.',
    ];
    for (const { blocks } of messages) {
      for (const block of blocks) {
        if (block.type === 'quotation' || block.type === 'list') continue;
        const text = JSON.stringify(block);
        // The confirmed meaning is the tutor's word by then, told by its word review.
        for (const one of words.filter((word) => word !== 'It means rocks.')) expect(text).not.toContain(one);
      }
    }
  });

  it('never tells the group what is held, private or a level', () => {
    const public_ = messages.filter(({ audience }) => audience.to === 'channel');
    for (const message of public_) {
      const text = JSON.stringify(message.blocks);
      expect(text).not.toContain('rude');
      expect(text).not.toMatch(/level|wrong|copied|literal|inferential|segment/iu);
    }
  });

  it('speaks to older pupils in their register', () => {
    const played = startClass();
    played.staff({ type: 'change-setting', setting: 'register', value: '11-14' });
    played.draft('Finch', 'question', 'Why?');
    expect(played.told(played.person('Finch')).at(-1)).toContain('[Post it]');
  });

  it('quotes nothing where words are gone', () => {
    const played = startClass();
    const post = played.post('Finch', 'question', 'Why do birds turn stones?');
    const gone = {
      ...played.at(post.id),
      text: { kind: 'said', by: played.person('Finch'), gone: 'expired' } as const,
    };
    const state = { ...played.state, posts: { ...played.state.posts, [post.id]: gone } };
    const told = tell(state, {
      type: 'draft-posted',
      post: post.id,
      how: 'by the pupil',
      to: 'group',
      at: 0,
      by: 'clock',
    });
    expect(JSON.stringify(told)).toContain('These words are gone.');
  });
});

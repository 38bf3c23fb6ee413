import { describe, expect, it } from 'vitest';
import { hour, monday, startClass, weekday } from './playing.js';

describe('a practice from end to end', () => {
  it('opens, is led, answered, summed up, and closes when all have done their share', () => {
    const played = startClass();
    const { leader, others } = played;
    const question = played.post(leader, 'question', 'Why do birds turn stones?');
    expect(question.stage.stage).toBe('public');
    for (const name of others) {
      played.post(name, 'answer', 'They look for food.', { question: question.id });
      played.post(name, 'clarify', 'It means rocks.', { word: 'Stones' });
    }
    expect(played.segment.stop).toBe(0);
    played.post(leader, 'sum-up', 'Birds turn stones to eat.');
    expect(played.of('segment-closed').map(({ why }) => why)).toEqual(['all done']);
    expect(played.segment.stop).toBe(1);
    expect(played.turn(leader).soFar).toEqual(['Birds turn stones to eat.']);
  });

  it('closes by itself in the end, with a note to staff when nobody comes', () => {
    const played = startClass();
    played.post('Finch', 'question', 'Why do birds turn stones?');
    played.until(monday() + 20 * 24 * hour);
    expect(played.phase).toBe('paused');
    expect(played.of('practice-paused')).toHaveLength(1);
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['time', weekday(2, '19:00')],
    ]);
    expect(played.of('leg-ended')).toHaveLength(1);
  });

  it('goes on with the next passage in the next leg, and ends after the last', () => {
    const played = startClass({ segments: 1 });
    const second = played.addPassage(1, 'Second');
    played.staff({ type: 'set-passage', passage: second, group: played.groupId });
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.phase).toBe('waiting');
    played.until(weekday(2, '07:30'));
    expect(played.phase).toBe('open');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.phase).toBe('none');
    expect(played.group.finished).toHaveLength(2);
  });
});

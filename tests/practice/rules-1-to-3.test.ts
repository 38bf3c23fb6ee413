import { describe, expect, it, test } from 'vitest';
import { makeClass, monday, startClass, weekday } from './playing.js';

describe('rule 1: a leg runs from one live session to the next', () => {
  test.each([
    {
      row: 'two sessions a week, begun the morning after one',
      sessions: 'Tue 14:00, Thu 14:00',
      at: weekday(3, '07:30'),
      segments: 1,
      ends: weekday(4, '11:00'),
    },
    {
      row: 'over the weekend: Friday and Monday',
      sessions: 'Tue 14:00, Thu 14:00',
      at: weekday(5, '07:30'),
      segments: 2,
      ends: weekday(9, '11:00'),
    },
    {
      row: 'one session a week: three segments at most',
      sessions: 'Mon 14:00',
      at: weekday(2, '07:30'),
      segments: 3,
      ends: weekday(8, '11:00'),
    },
    {
      row: 'begun too late before a session: runs to the one after',
      sessions: 'Tue 14:00, Thu 14:00',
      at: weekday(2, '09:00'),
      segments: 2,
      ends: weekday(4, '11:00'),
    },
    {
      row: 'begun on a Saturday: opens on Monday',
      sessions: 'Tue 14:00',
      at: weekday(6, '10:00'),
      segments: 1,
      ends: weekday(9, '11:00'),
    },
    {
      row: 'no session days: three segments, no end by the clock',
      sessions: 'none',
      at: monday(),
      segments: 3,
      ends: null,
    },
  ])('$row', ({ sessions, at, segments, ends }) => {
    const played = makeClass({ sessions, segments: 5 });
    played.now = at;
    played.staff({ type: 'start-practice', group: played.groupId });
    expect(played.of('leg-began').map((leg) => [leg.segments, leg.endsAt])).toEqual([[segments, ends]]);
  });

  it('ends 3 hours before the session, and the digest goes out', () => {
    const played = startClass({ sessions: 'Thu 14:00' });
    played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    played.until(weekday(4, '14:00'));
    expect(played.of('leg-ended').map(({ why, at }) => [why, at])).toEqual([
      ['reached the session', weekday(4, '11:00')],
    ]);
    const shown = played.tellings.filter(({ telling }) => telling.do === 'show');
    expect(shown.map(({ telling }) => telling)).toEqual([
      {
        do: 'show',
        key: expect.stringContaining('digest/') as string,
        look: { type: 'digest', group: played.groupId },
        audience: { to: 'staff', group: played.groupId },
      },
    ]);
  });

  it('begins the next leg the morning after the session', () => {
    const played = startClass({ sessions: 'Thu 14:00', segments: 6 });
    played.until(weekday(4, '10:00'));
    played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    played.until(weekday(5, '07:30'));
    expect(played.of('leg-began').map(({ at }) => at)).toEqual([monday(), weekday(5, '07:30')]);
  });

  it('opens nothing more once its segments are done, and waits for its end', () => {
    const played = startClass({ sessions: 'Thu 14:00', segments: 6 });
    for (const _ of [1, 2, 3]) {
      if (played.phase !== 'open')
        played.until(played.group.practice.phase === 'waiting' ? played.group.practice.opensAt : played.now);
      played.staff({ type: 'close-segment', group: played.groupId });
    }
    expect(played.phase).toBe('waiting');
    expect(played.of('leg-ended')).toEqual([]);
    expect(played.turn('Finch').until).toBeNull();
    played.until(weekday(4, '11:00'));
    expect(played.of('leg-ended').map(({ why }) => why)).toEqual(['all segments done']);
  });
});

describe('rule 2: look first', () => {
  it('shows a card with the title, words that are needed and a prediction', () => {
    const played = startClass();
    const [card] = played.told('channel');
    expect(card).toContain('A new text: Shore birds');
    expect(card).toContain('Words you will meet: Stones.');
    expect(card).toContain('[I think that …]');
    expect(card).toContain('[Not sure yet]');
  });

  it('asks for no prediction where that strategy is closed', () => {
    const played = makeClass();
    played.staff({ type: 'close-strategy', strategy: 'predict' });
    played.staff({ type: 'start-practice', group: played.groupId });
    const [card] = played.told('channel');
    expect(card).not.toContain('[Not sure yet]');
    expect(card).toContain('[Read]');
  });

  it('blocks nobody else, and "Not sure yet" passes', () => {
    const played = startClass();
    expect(played.turn('Finch')).toMatchObject({
      phase: 'look first',
      next: { step: 'look first', stop: 0 },
    });
    played.move(played.person('Finch'), { type: 'pass-prediction' });
    expect(played.turn('Finch').phase).toBe('open');
    expect(played.turn('Wren').phase).toBe('look first');
  });

  it('opens the first part at once when an adult starts, also out of hours, and takes a prediction from the card', () => {
    const played = startClass({ at: weekday(7, '10:00') });
    expect(played.turn('Finch').phase).toBe('look first');
    const guess = played.post('Finch', 'predict', 'Birds will find food.', { stop: -1 });
    expect(guess).toMatchObject({ stop: -1, late: false, first: { kind: 'predict' } });
    expect(played.turn('Finch').phase).toBe('open');
    played.until(weekday(8, '07:30'));
    expect(played.turn('Wren').phase).toBe('look first');
  });

  it('opens later parts with the sum-ups that closed the earlier ones', () => {
    const played = startClass();
    played.post(played.leader, 'sum-up', 'Birds turn stones to eat.');
    played.staff({
      type: 'write-gist',
      passage: played.passage(),
      stop: 1,
      text: 'The second beach is stony too.',
    });
    played.staff({ type: 'close-segment', group: played.groupId });
    played.staff({ type: 'close-segment', group: played.groupId });
    played.until(weekday(2, '07:30'));
    expect(played.turn('Wren').soFar).toEqual([
      'Birds turn stones to eat.',
      'The second beach is stony too.',
    ]);
    expect(played.told('channel').at(-1)).toContain(
      'So far Birds turn stones to eat. The second beach is stony too.',
    );
  });
});

describe('rule 3: open', () => {
  test.each(['Finch', 'Wren', 'Robin'])('%s may clarify and ask from the start, whoever leads', (name) => {
    const played = startClass();
    expect(played.post(name, 'clarify', 'It means rocks.', { word: 'Stones' }).stage.stage).toBe('public');
    expect(played.post(name, 'question', 'Why turn stones?').stage.stage).toBe('public');
  });

  it('shows the next part to whoever has predicted or passed', () => {
    const played = startClass();
    played.post('Finch', 'predict', 'The birds will fly off.');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.segment.stop).toBe(1);
    expect(played.turn('Finch').phase).toBe('open');
    expect(played.turn('Wren').phase).toBe('look first');
  });

  it('doesn’t score a prediction made after seeing what it is about', () => {
    const played = startClass();
    played.staff({ type: 'close-segment', group: played.groupId });
    const before = played.post('Wren', 'predict', 'The birds will fly off.', { stop: 0 });
    expect(before.first).not.toBeNull();
    played.move(played.person('Finch'), { type: 'pass-prediction' });
    const after = played.post('Finch', 'predict', 'The birds will fly off.', { stop: 0 });
    expect(after.first).toBeNull();
    expect(played.evidence.has(after.id)).toBe(false);
  });

  it('simply doesn’t ask for a strategy that is closed, and still takes it', () => {
    const played = startClass();
    played.staff({ type: 'close-strategy', strategy: 'clarify', pupil: played.person('Finch') });
    played.move(played.person('Finch'), { type: 'pass-prediction' });
    const { next, also } = played.turn('Finch');
    const asked = [next, ...also].flatMap((step) => (step?.step === 'do' ? [step.do] : []));
    expect(asked).not.toContain('clarify');
    expect(played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' }).stage.stage).toBe('public');
  });

  it('refuses what isn’t open yet', () => {
    const played = startClass();
    expect(
      played.refused(played.person('Finch'), { type: 'send-draft', do: 'question', text: 'Why?', stop: 2 }),
    ).toBe('wrong time');
  });
});

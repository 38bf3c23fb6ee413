import { describe, expect, it, test } from 'vitest';
import { replay } from '../../src/practice/evolve.js';
import { day, hour, makeClass, monday, startClass, weekday, type Played } from './playing.js';

/** Everybody does their share of the open segment; the leader last. */
function allDo(played: Played): void {
  const { leader, others } = played;
  const question = played.post(leader, 'question', 'Why do birds turn stones?');
  for (const name of others) {
    played.post(name, 'answer', 'For food.', { question: question.id });
    played.post(name, 'clarify', 'It means rocks.', { word: 'Stones' });
  }
  played.post(leader, 'sum-up', 'Birds turn stones to eat.');
}

/** A question, a sum-up, and a reply of one of the two others. */
function quorum(played: Played): void {
  const { leader, others } = played;
  const question = played.post(leader, 'question', 'Why do birds turn stones?');
  played.post(others[0] ?? '', 'answer', 'For food.', { question: question.id });
  played.post(leader, 'sum-up', 'Birds turn stones to eat.');
}

describe('rule 9: close', () => {
  test.each([
    { row: 'before 17:00 the next opens at once', at: monday('16:59'), opens: monday('16:59') },
    { row: 'from 17:00 on it opens the next school day', at: monday('17:00'), opens: weekday(2, '07:30') },
    { row: 'on a Friday evening it opens on Monday', at: weekday(5, '18:00'), opens: weekday(8, '07:30') },
    {
      row: 'outside open hours it opens in the morning',
      at: weekday(2, '06:00'),
      opens: weekday(2, '07:30'),
    },
  ])('all done: closes at once; $row', ({ at, opens }) => {
    const played = makeClass({ at: Math.min(at, monday()) });
    played.now = at > weekday(4) ? weekday(5, '07:30') : monday();
    played.staff({ type: 'start-practice', group: played.groupId });
    played.now = at;
    allDo(played);
    expect(played.of('segment-closed').map((event) => [event.why, event.at, event.nextOpensAt])).toEqual([
      ['all done', at, opens],
    ]);
  });

  it('opens at most two a day', () => {
    const played = startClass();
    allDo(played);
    expect(played.segment.stop).toBe(1);
    allDo(played);
    expect(played.phase).toBe('waiting');
    expect(played.of('segment-closed').at(-1)?.nextOpensAt).toBe(weekday(2, '07:30'));
  });

  it('quorum: closes at the day’s end', () => {
    const played = startClass();
    quorum(played);
    played.until(weekday(2, '07:29'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['quorum', monday('19:00')],
    ]);
  });

  it('quorum: not before 4 h, so what opened late closes the day after', () => {
    const played = startClass({ at: monday('15:30') });
    quorum(played);
    played.until(weekday(3, '07:00'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['quorum', weekday(2, '19:00')],
    ]);
  });

  it('a quorum that comes on the second day waits for that day’s end', () => {
    const played = startClass();
    played.until(weekday(2, '10:00'));
    quorum(played);
    expect(played.phase).toBe('open');
    played.until(weekday(2, '19:00'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['quorum', weekday(2, '19:00')],
    ]);
  });

  test.each([
    { row: 'no sum-up', has: ['question', 'answer'] as const },
    { row: 'no question', has: ['sum-up', 'clarify'] as const },
    { row: 'no reply', has: ['question', 'sum-up'] as const },
  ])('$row is no quorum: closes at the end of the second school day', ({ has }) => {
    const played = startClass();
    const { leader, others } = played;
    for (const doing of has) {
      if (doing === 'answer') played.post(others[0] ?? '', 'answer', 'For food.');
      else played.post(leader, doing, 'Why? Because.');
    }
    played.until(weekday(3, '07:00'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['time', weekday(2, '19:00')],
    ]);
  });

  it('closes when the leg ends', () => {
    const played = startClass({ sessions: 'Tue 14:00' });
    played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    played.until(weekday(2, '12:00'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['leg ended', weekday(2, '11:00')],
    ]);
  });

  it('gives who finishes early unanswered questions and word review, never the next leg', () => {
    const played = startClass({ segments: 6, sessions: 'Mon 14:00', at: weekday(2, '08:00') });
    const words = played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    played.staff({ type: 'confirm-meaning', post: words.id });
    const question = played.post('Wren', 'question', 'Where are the stones?');
    for (const _ of [1, 2, 3]) {
      if (played.group.practice.phase === 'waiting') played.until(played.group.practice.opensAt);
      played.staff({ type: 'close-segment', group: played.groupId });
    }
    played.now = weekday(4, '09:00');
    const { next, also, phase } = played.turn('Finch');
    expect(phase).toBe('waiting');
    expect([next, ...also]).toEqual([
      { step: 'do', do: 'answer', to: question.id },
      { step: 'review word', word: 'stones' },
    ]);
  });

  it('doesn’t ask for replies where questions are closed', () => {
    const played = makeClass();
    played.staff({ type: 'close-strategy', strategy: 'question' });
    played.staff({ type: 'start-practice', group: played.groupId });
    const { leader, others } = played;
    for (const name of others) played.post(name, 'clarify', 'It means rocks.', { word: 'Stones' });
    played.post(leader, 'sum-up', 'Birds turn stones.');
    expect(played.of('segment-closed').map(({ why }) => why)).toEqual(['all done']);
  });

  it('moves a close that fell while the machine slept to the next school day', () => {
    const played = startClass();
    played.post('Finch', 'question', 'Why?');
    played.until(weekday(2, '18:00'));
    played.sleepUntil(weekday(3, '12:00'));
    expect(played.phase).toBe('open');
    expect(played.segment.times.closesAt).toBe(weekday(3, '19:00'));
    played.until(weekday(3, '19:00'));
    expect(played.of('segment-closed').map(({ why, at }) => [why, at])).toEqual([
      ['time', weekday(3, '19:00')],
    ]);
  });

  it('makes one of the reminders that were missed', () => {
    const played = startClass();
    played.move(played.person(played.others[0] ?? ''), { type: 'visit' });
    const events = played.sleepUntil(weekday(2, '15:00'));
    expect(
      events.map(({ type }) => type).filter((type) => /nudged|offered|seeded|reminded/.test(type)),
    ).toHaveLength(1);
  });
});

describe('rule 10: late', () => {
  function closed(): Played {
    const played = startClass();
    const question = played.post(played.leader, 'question', 'Why do birds turn stones?');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.at(question.id).late).toBe(false);
    return played;
  }

  it('joins its own segment, is marked, counts fully, reopens nothing', () => {
    const played = closed();
    const question = played.of('draft-judged')[0]?.post ?? ('' as never);
    const asker = played.nickname(played.at(question).person);
    const name = ['Finch', 'Wren', 'Robin'].find((one) => one !== asker) ?? '';
    const from = played.tellings.length;
    const answer = played.post(name, 'answer', 'For food.', { question });
    expect(answer).toMatchObject({ stop: 0, late: true });
    expect(played.evidence.get(answer.id)).toMatchObject({ late: true, level: 2, stop: 0 });
    expect(played.segment.stop).toBe(1);
    // The asker hears of it in their tray, at the next visit; nobody else does.
    const trays = played.tellings
      .slice(from)
      .flatMap(({ telling }) =>
        telling.do === 'say' && telling.message.audience.to === 'person'
          ? [telling.message.audience.person]
          : [],
      );
    expect(new Set(trays)).toEqual(new Set([played.person(name), played.person(asker)]));
    const said = played.tellings
      .slice(from)
      .filter(({ telling }) => telling.do === 'say' && telling.message.audience.to === 'channel');
    expect(said).toEqual([]);
  });

  it('takes a late thing of one’s own with the part named', () => {
    const played = closed();
    expect(played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones', stop: 0 })).toMatchObject({
      stop: 0,
      late: true,
    });
  });

  it('doesn’t count towards the part that is open', () => {
    const played = closed();
    for (const name of ['Finch', 'Wren', 'Robin'])
      played.post(name, 'clarify', 'It means rocks.', { word: 'Stones', stop: 0 });
    expect(played.turn('Finch').phase).toBe('look first');
  });

  test.each([
    { row: 'the seventh school day after', at: weekday(8, '08:00') + 2 * day, taken: true },
    { row: 'the day after that', at: weekday(8, '08:00') + 3 * day, taken: false },
  ])('is taken until 7 school days after the passage closed: $row', ({ at, taken }) => {
    const played = startClass({ segments: 1 });
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.group.finished[0]?.at).toBe(monday());
    played.now = at;
    const move = { type: 'send-draft', do: 'clarify', text: 'Rocks.', word: 'Stones' } as const;
    expect(played.refused(played.person('Finch'), move)).toBe(taken ? null : 'wrong time');
  });

  it('goes to the passage before while the next one waits', () => {
    const played = startClass({ segments: 1 });
    played.staff({ type: 'set-passage', passage: played.addPassage(1, 'Two'), group: played.groupId });
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.phase).toBe('waiting');
    expect(played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' })).toMatchObject({
      passage: played.passage(0),
      late: true,
    });
    expect(hour).toBeGreaterThan(0);
  });

  it('lets posts of passages long finished go from the state, and nothing else', () => {
    const played = startClass({ segments: 1 });
    const first = played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' }).id;
    for (let nth = 1; nth <= 13; nth += 1) {
      played.staff({
        type: 'set-passage',
        passage: played.addPassage(1, `Text ${nth}`),
        group: played.groupId,
      });
      played.staff({ type: 'close-segment', group: played.groupId });
      expect(played.state.posts[first] !== undefined).toBe(nth <= 12);
      if (played.group.practice.phase === 'waiting') played.until(played.group.practice.opensAt);
      played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' });
    }
    expect(Object.keys(played.state.posts)).toHaveLength(13);
    expect(played.evidence.size).toBe(14);
    expect(replay(played.state.id, played.events)).toEqual(played.state);
  });
});

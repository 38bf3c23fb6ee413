import { describe, expect, it, test } from 'vitest';
import { day, hour, makeClass, minute, monday, startClass, weekday, type Played } from './playing.js';

/** Those named visit; then the segment closes by time. */
function closeWith(played: Played, names: readonly string[]): void {
  for (const name of names) played.move(played.person(name), { type: 'visit' });
  played.until(played.segment.times.closesAt);
  if (played.group.practice.phase === 'waiting') played.until(played.group.practice.opensAt);
}

describe('rule 13: away', () => {
  it('is whoever was unseen for two segments; back at the first visit, at the open part', () => {
    const played = startClass({ segments: 6 });
    closeWith(played, ['Finch', 'Wren']);
    expect(played.of('person-away')).toEqual([]);
    closeWith(played, ['Finch', 'Wren']);
    expect(played.of('person-away').map(({ person }) => played.nickname(person))).toEqual(['Robin']);
    expect(played.segment.active.map((id) => played.nickname(id))).toEqual(['Finch', 'Wren']);
    played.move(played.person('Robin'), { type: 'visit' });
    expect(played.state.people[played.person('Robin')]?.away).toBe(false);
    expect(played.segment.active.map((id) => played.nickname(id))).toEqual(['Finch', 'Wren', 'Robin']);
  });

  it('is back by posting, too', () => {
    const played = startClass({ segments: 6 });
    closeWith(played, ['Finch', 'Wren']);
    closeWith(played, ['Finch', 'Wren']);
    played.post('Robin', 'clarify', 'Rocks.', { word: 'Stones' });
    expect(played.segment.active).toContain(played.person('Robin'));
  });

  it('doesn’t count parts that were closed at once or read together', () => {
    const played = startClass({ segments: 6 });
    played.staff({ type: 'read-live', group: played.groupId, to: 2 });
    played.staff({ type: 'read-live', group: played.groupId });
    expect(played.of('person-away')).toEqual([]);
  });
});

describe('rule 14: alone', () => {
  it('gets the spare question at once and isn’t counted as having led', () => {
    const played = startClass({ pupils: ['Finch'] });
    expect(played.segment.leader).toBeNull();
    expect(played.of('question-seeded')).toHaveLength(1);
    const question = played.of('question-seeded')[0]?.post;
    played.post('Finch', 'answer', 'Stones.', question === undefined ? {} : { question });
    played.post('Finch', 'sum-up', 'Birds turn stones.');
    expect(played.of('segment-closed').map(({ why, led }) => [why, led])).toEqual([['all done', []]]);
    expect(played.group.led[played.person('Finch')]).toBe(0);
  });

  it('asks staff the second time: pause, or read it live?', () => {
    const played = startClass({ pupils: ['Finch'] });
    closeWith(played, ['Finch']);
    expect(played.of('staff-reminded').map(({ of }) => of)).toEqual(['alone']);
    expect(played.told('staff').at(-1)).toBe(
      'Finch has been alone for two segments. Pause, or read it live? [Pause] [Read it live]',
    );
  });

  it('pauses itself with one note to staff when nobody was there until a deadline', () => {
    const played = startClass();
    played.until(monday() + 30 * day);
    expect(played.of('practice-paused').map(({ why, at }) => [why, at])).toEqual([
      ['nobody active', weekday(2, '19:00')],
    ]);
    expect(played.told('staff').filter((words) => words.includes('has paused'))).toHaveLength(1);
  });

  it('goes on with the first pupil who comes back', () => {
    const played = startClass();
    played.until(weekday(4, '09:00'));
    expect(played.phase).toBe('paused');
    played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' });
    expect(played.phase).toBe('open');
    expect(played.segment.stop).toBe(0);
  });

  it('ends its leg at the session also when it has paused', () => {
    const played = startClass({ sessions: 'Thu 14:00' });
    played.until(weekday(5, '08:00'));
    expect(played.of('leg-ended').map(({ why, at }) => [why, at])).toEqual([
      ['nobody active', weekday(4, '11:00')],
    ]);
    expect(played.tellings.filter(({ telling }) => telling.do === 'show')).toHaveLength(1);
  });
});

describe('rule 15: nudges', () => {
  it('come to the leader once a part, to the others once a leg, none outside open hours', () => {
    const played = startClass({ segments: 6 });
    played.until(weekday(5, '12:00'));
    for (const nudge of [...played.of('leader-nudged'), ...played.of('pupil-nudged')]) {
      const time = new Date(nudge.at).getUTCHours() * 60 + new Date(nudge.at).getUTCMinutes();
      expect(time).toBeGreaterThanOrEqual(7 * 60 + 30);
      expect(time).toBeLessThanOrEqual(19 * 60);
    }
    const others = played.of('pupil-nudged').map(({ person }) => person);
    expect(others.length).toBe(new Set(others).size);
    expect(played.of('leader-nudged').length).toBe(1);
  });

  it('spare whoever has done their share', () => {
    const played = startClass();
    const question = played.post(played.leader, 'question', 'Why do birds turn stones?');
    const [done = '', other = ''] = played.others;
    played.post(done, 'answer', 'For food.', { question: question.id });
    played.post(done, 'clarify', 'Rocks.', { word: 'Stones' });
    played.until(weekday(2, '18:00'));
    expect(played.of('pupil-nudged').map(({ person }) => played.nickname(person))).toEqual([other]);
  });
});

describe('rule 16: the adult at any time', () => {
  it('pauses and resumes: what was left of the time is left again', () => {
    const played = startClass();
    const { nudgeAt, closesAt } = played.segment.times;
    played.now = monday('09:00');
    played.staff({ type: 'pause-practice', group: played.groupId });
    expect(played.refused(played.person('Finch'), { type: 'send-draft', do: 'question', text: 'Why?' })).toBe(
      'wrong time',
    );
    played.until(weekday(3, '09:00'));
    played.staff({ type: 'resume-practice', group: played.groupId });
    expect(played.segment.times.nudgeAt - nudgeAt).toBe(2 * day);
    expect(played.segment.times.closesAt - closesAt).toBe(2 * day);
  });

  it('extends by school days', () => {
    const played = startClass({ at: weekday(4, '08:00') });
    played.staff({ type: 'extend-segment', group: played.groupId, days: 1 });
    expect(played.segment.times.closesAt).toBe(weekday(8, '19:00'));
    expect(played.told('channel').at(-1)).toBe('You have more time. You have until Monday at 19:00.');
  });

  it('never extends over the session', () => {
    const played = startClass({ sessions: 'Wed 14:00' });
    played.staff({ type: 'extend-segment', group: played.groupId, days: 5 });
    expect(played.segment.times.closesAt).toBe(weekday(3, '11:00'));
  });

  it('closes, and undoes the last close within 24 h', () => {
    const played = startClass();
    const { leader } = played;
    played.post(leader, 'question', 'Why?');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.group.led[played.person(leader)]).toBe(1);
    played.now = monday('12:00');
    played.staff({ type: 'undo-close', group: played.groupId });
    expect(played.segment).toMatchObject({ stop: 0, times: { closesAt: weekday(2, '19:00') } });
    expect(played.leader).toBe(leader);
    expect(played.group.led[played.person(leader)]).toBe(0);
    played.staff({ type: 'close-segment', group: played.groupId });
    played.now += 25 * hour;
    expect(played.refused(played.person('Heron'), { type: 'undo-close', group: played.groupId })).toBe(
      'wrong time',
    );
  });

  it('undoes the close that finished a passage', () => {
    const played = startClass({ segments: 1 });
    played.staff({ type: 'set-passage', passage: played.addPassage(1, 'Two'), group: played.groupId });
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.group.finished).toHaveLength(1);
    played.staff({ type: 'undo-close', group: played.groupId });
    expect(played.group).toMatchObject({
      finished: [],
      queue: [played.passage(1)],
      practice: { phase: 'open', passage: played.passage(0) },
    });
  });

  test.each([
    { row: 'the open part', to: undefined, next: 1 },
    { row: 'up to a later one', to: 2, next: 3 },
  ])('reads live: $row; the next opens the next morning', ({ to, next }) => {
    const played = startClass({ segments: 5 });
    played.staff({ type: 'read-live', group: played.groupId, ...(to === undefined ? {} : { to }) });
    expect(played.group.practice).toMatchObject({
      phase: 'waiting',
      nextStop: next,
      opensAt: weekday(2, '07:30'),
    });
  });

  it('reads to the end live: the passage is finished', () => {
    const played = startClass({ segments: 3 });
    played.staff({ type: 'read-live', group: played.groupId, to: 2 });
    expect(played.phase).toBe('none');
    expect(played.of('passage-finished')).toHaveLength(1);
  });

  it('reads live between legs what the leg didn’t reach', () => {
    const played = startClass({ segments: 5, sessions: 'Tue 14:00' });
    played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' });
    played.until(weekday(2, '14:30'));
    played.staff({ type: 'read-live', group: played.groupId, to: 3 });
    played.until(weekday(3, '07:30'));
    expect(played.segment.stop).toBe(4);
  });

  it('ends a practice, with its digest', () => {
    const played = startClass();
    played.staff({ type: 'end-practice', group: played.groupId });
    expect(played.of('leg-ended').map(({ why }) => why)).toEqual(['ended by staff']);
    expect(played.phase).toBe('none');
  });

  it('notes in a live session who led, a level, how it was given and with what help', () => {
    const played = startClass();
    const finch = played.person('Finch');
    played.staff({
      type: 'note-live',
      person: finch,
      do: 'sum-up',
      level: 2,
      given: 'said',
      help: 'shared',
      text: 'Birds eat.',
    });
    expect([...played.evidence.values()]).toMatchObject([
      {
        person: finch,
        do: 'sum-up',
        level: 2,
        given: 'said',
        help: 'shared',
        post: null,
        settledBy: 'tutor',
        day: '2026-01-05',
      },
    ]);
    played.staff({ type: 'note-led', person: finch });
    expect(played.group.led[finch]).toBe(1);
    expect(played.group.lastLeader).toBe(finch);
  });

  it.each([
    'pause-practice',
    'close-segment',
    'read-live',
    'undo-close',
    'end-practice',
    'resume-practice',
  ] as const)('a pupil may not %s', (type) => {
    const played = startClass();
    expect(played.refused(played.person('Finch'), { type, group: played.groupId })).toBe('not allowed');
  });
});

describe('people come and go', () => {
  it('offers a split above six pupils, and halves the group by lot', () => {
    const pupils = ['Finch', 'Wren', 'Robin', 'Plover', 'Tern', 'Knot', 'Dunlin'];
    const played = makeClass({ pupils });
    expect(played.of('staff-reminded').map(({ of }) => of)).toEqual(['split']);
    played.staff({ type: 'split-group', group: played.groupId });
    const groups = Object.values(played.state.groups).map(
      ({ id }) =>
        Object.values(played.state.people).filter(({ role, group }) => role === 'pupil' && group === id)
          .length,
    );
    expect(groups).toEqual([4, 3]);
  });

  it('takes the place in the lot along to another group', () => {
    const played = startClass();
    played.staff({ type: 'make-group', name: 'Second' });
    const second = Object.values(played.state.groups)[1]?.id ?? ('' as never);
    const { leader } = played;
    played.post(leader, 'question', 'Why?');
    played.staff({ type: 'close-segment', group: played.groupId });
    played.staff({ type: 'add-person', nickname: 'Tern', role: 'pupil', group: second });
    played.staff({ type: 'move-pupil', person: played.person(leader), group: second });
    expect(played.state.groups[second]?.led).toEqual({
      [played.person('Tern')]: 0,
      [played.person(leader)]: 1,
    });
  });

  it('hands the lead on when the leader leaves', () => {
    const played = startClass();
    const { leader } = played;
    played.staff({ type: 'remove-person', person: played.person(leader) });
    expect(played.leader).not.toBe(leader);
    expect(played.segment.active).toHaveLength(2);
  });

  it('is erased by an administrator: no word is left in the class', () => {
    const played = startClass();
    played.staff({ type: 'add-person', nickname: 'Crane', role: 'administrator' });
    const finch = played.person('Finch');
    played.post('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    played.move(played.person('Crane'), { type: 'erase-person', person: finch });
    expect(JSON.stringify(played.state)).not.toContain('Finch');
    expect(JSON.stringify(played.state)).not.toContain('It means rocks.');
    expect(played.state.people[finch]).toMatchObject({ removed: true, nickname: { gone: 'erased' } });
    expect(minute).toBe(60_000);
  });

  it('refuses a nickname that is used', () => {
    const played = makeClass();
    expect(
      played.refused(played.person('Heron'), { type: 'add-person', nickname: 'finch', role: 'pupil' }),
    ).toBe('in use');
  });
});

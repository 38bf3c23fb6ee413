import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { makeClass, monday, startClass, weekday, type Played } from './playing.js';

/** Leaders of the segments so far, by nickname. */
function leaders(played: Played): readonly string[] {
  return played.of('segment-opened').map(({ leader }) => played.nickname(leader));
}

/** The leader asks, and the segment closes; the next one opens when it may. */
function leadOnce(played: Played): void {
  if (played.phase === 'waiting' && played.group.practice.phase === 'waiting')
    played.until(played.group.practice.opensAt);
  if (played.phase !== 'open') return;
  for (const { id } of Object.values(played.state.people)) played.move(id, { type: 'visit' });
  played.post(played.leader, 'question', 'Why do birds turn stones?');
  played.staff({ type: 'close-segment', group: played.groupId });
}

describe('rule 4: the leader is drawn by lot', () => {
  it('lets everyone lead once before anyone leads twice, over legs and passages, nobody twice running', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.integer({ min: 2, max: 6 }), (seed, count) => {
        const pupils = ['Finch', 'Wren', 'Robin', 'Plover', 'Heron Two', 'Tern'].slice(0, count);
        const played = makeClass({ pupils, segments: 4 });
        played.seed = seed;
        played.staff({ type: 'set-passage', passage: played.addPassage(4, 'Two'), group: played.groupId });
        played.staff({ type: 'set-passage', passage: played.addPassage(4, 'Three'), group: played.groupId });
        played.staff({ type: 'start-practice', group: played.groupId });
        for (let nth = 0; nth < 12; nth += 1) leadOnce(played);
        const led = leaders(played);
        expect(led).toHaveLength(12);
        for (let round = 0; round + count <= 12; round += count) {
          expect(new Set(led.slice(round, round + count)).size, led.join()).toBe(count);
        }
        for (let nth = 1; nth < led.length; nth += 1) expect(led[nth], led.join()).not.toBe(led[nth - 1]);
      }),
      { numRuns: 30 },
    );
  });

  it('draws differently with another seed', () => {
    const drawn = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      const played = makeClass();
      played.seed = seed * 1000;
      played.staff({ type: 'start-practice', group: played.groupId });
      return played.leader;
    });
    expect(new Set(drawn).size).toBeGreaterThan(1);
  });

  it('keeps a front place for whoever is away', () => {
    const played = makeClass({ pupils: ['Finch', 'Wren', 'Robin'], segments: 8 });
    played.staff({ type: 'start-practice', group: played.groupId });
    const away = played.others[0] ?? '';
    const there = ['Finch', 'Wren', 'Robin'].filter((name) => name !== away);
    for (let nth = 0; nth < 4; nth += 1) {
      if (played.group.practice.phase === 'waiting') played.until(played.group.practice.opensAt);
      for (const name of there) played.move(played.person(name), { type: 'visit' });
      if (there.includes(played.leader)) played.post(played.leader, 'question', 'Why turn stones?');
      played.until(played.segment.times.closesAt);
    }
    expect(played.state.people[played.person(away)]?.away).toBe(true);
    const least = Math.min(...Object.values(played.group.led));
    expect(played.group.led[played.person(away)]).toBe(least);
    expect(played.group.lot[0]).toBe(played.person(away));
  });

  it('lets each pupil pass quietly once a leg, without a word about it', () => {
    const played = startClass();
    const first = played.leader;
    played.move(played.person(first), { type: 'quiet-pass' });
    expect(played.leader).not.toBe(first);
    expect(played.told('channel').at(-1)).toBe(
      `${played.leader} leads this part. ${first} leads another day.`,
    );
    played.staff({ type: 'name-leader', group: played.groupId, person: played.person(first) });
    expect(played.refused(played.person(first), { type: 'quiet-pass' })).toBe('wrong time');
  });

  test.each([
    {
      row: 'names',
      move: (p: Played) =>
        ({ type: 'name-leader', group: p.groupId, person: p.person(p.others[0] ?? '') }) as const,
      why: 'named',
    },
    {
      row: 'skips',
      move: (p: Played) => ({ type: 'skip-leader', group: p.groupId }) as const,
      why: 'skipped',
    },
    {
      row: 'pairs',
      move: (p: Played) =>
        ({ type: 'pair-leader', group: p.groupId, person: p.person(p.others[0] ?? '') }) as const,
      why: 'paired',
    },
    {
      row: 'leads themselves',
      move: (p: Played) => ({ type: 'name-leader', group: p.groupId, person: p.person('Heron') }) as const,
      why: 'named',
    },
  ])('the tutor $row', ({ move, why }) => {
    const played = startClass();
    played.staff(move(played));
    expect(played.of('leader-changed').map((event) => event.why)).toEqual([why]);
  });

  it('lets the tutor change who is drawn for the part that opens next', () => {
    const played = startClass({ at: weekday(7, '10:00') });
    const other = ['Finch', 'Wren', 'Robin']
      .map((name) => played.person(name))
      .find((id) => id !== played.of('leg-began')[0]?.leaders[0]);
    played.staff({ type: 'name-leader', group: played.groupId, person: other ?? ('' as never) });
    played.until(weekday(8, '07:30'));
    expect(played.segment.leader).toBe(other);
  });

  it('lets an adult lead first when a strategy has just been opened', () => {
    const played = makeClass();
    played.staff({ type: 'close-strategy', strategy: 'sum-up' });
    played.staff({ type: 'open-strategy', strategy: 'sum-up' });
    played.staff({ type: 'start-practice', group: played.groupId });
    expect(played.leader).toBe('Heron');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.leader).not.toBe('Heron');
  });

  it('lets the only pupil lead twice running rather than nobody', () => {
    const played = startClass({ pupils: ['Finch', 'Wren'], segments: 6 });
    leadOnce(played);
    const [first] = leaders(played);
    played.staff({ type: 'remove-person', person: played.person(first === 'Finch' ? 'Wren' : 'Finch') });
    expect(played.phase).toBe('open');
  });
});

describe('rule 5: the leader isn’t there', () => {
  it('nudges at 3 h, offers the lead at 6 h, and opens the talk at 8 h', () => {
    const played = startClass();
    const late = played.leader;
    for (const name of played.others) played.move(played.person(name), { type: 'visit' });
    const events = played.until(monday('16:00'));
    expect(
      events.filter(({ type }) => /nudged|offered|seeded/.test(type)).map(({ type, at }) => [type, at]),
    ).toEqual([
      ['leader-nudged', monday('11:00')],
      ['lead-offered', monday('14:00')],
      ['question-seeded', monday('16:00')],
    ]);
    expect(played.of('leader-nudged')[0]?.person).toBe(played.person(late));
    expect(
      played
        .of('lead-offered')[0]
        ?.to.map((id) => played.nickname(id))
        .toSorted(),
    ).toEqual(played.others.toSorted());
  });

  it('counts open hours only', () => {
    const played = startClass({ at: monday('16:00') });
    const events = played.until(weekday(2, '12:30'));
    expect(
      events
        .filter(({ type }) => type === 'leader-nudged' || type === 'question-seeded')
        .map(({ type, at }) => [type, at]),
    ).toEqual([
      ['leader-nudged', monday('19:00')],
      ['question-seeded', weekday(2, '12:30')],
    ]);
  });

  it('gives the lead to the first who posts a question once it is offered', () => {
    const played = startClass();
    const late = played.leader;
    const [taker = '', other = ''] = played.others;
    for (const name of [taker, other]) played.move(played.person(name), { type: 'visit' });
    played.until(monday('14:00'));
    expect(
      played
        .turn(taker)
        .also.concat(played.turn(taker).next ?? [])
        .some((step) => step.step === 'take the lead' || step.step === 'look first'),
    ).toBe(true);
    played.post(taker, 'question', 'Why do birds turn stones?');
    expect(played.leader).toBe(taker);
    expect(
      played
        .told('channel')
        .some((words) => words.includes(`${taker} leads this part. ${late} leads another day.`)),
    ).toBe(true);
    expect(played.told('channel').join(' ')).not.toMatch(/late|missed|fail|didn|forgot/i);
    played.post(other, 'question', 'Where do they live?');
    expect(played.leader).toBe(taker);
    const events = played.until(monday('18:00'));
    expect(events.some(({ type }) => type === 'question-seeded')).toBe(false);
  });

  it('adds a late leader’s question and keeps their front place', () => {
    const played = startClass();
    const late = played.leader;
    for (const name of played.others) played.move(played.person(name), { type: 'visit' });
    played.until(monday('16:30'));
    expect(played.post(late, 'question', 'Why do birds turn stones?').stage.stage).toBe('public');
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.group.led[played.person(late)]).toBe(0);
    expect(played.of('segment-closed')[0]?.led).toEqual([]);
  });

  it('asks the adult’s spare question where there is one, else one of its own that is marked', () => {
    const own = startClass();
    own.until(monday('16:00'));
    expect(own.told('channel').at(-1)).toContain('A question from the text: What is part 1 about?');
    const spare = makeClass();
    spare.staff({
      type: 'write-spare-question',
      passage: spare.passage(),
      stop: 0,
      text: 'What do birds turn?',
    });
    spare.staff({ type: 'start-practice', group: spare.groupId });
    spare.until(monday('16:00'));
    expect(spare.told('channel').at(-1)).toContain('A grown-up asks: What do birds turn?');
  });

  it('nudges nobody who has asked', () => {
    const played = startClass();
    played.post(played.leader, 'question', 'Why do birds turn stones?');
    const events = played.until(monday('18:00'));
    expect(events.filter(({ type }) => type !== 'person-seen')).toEqual([]);
  });
});

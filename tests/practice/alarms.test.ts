import { describe, expect, it, test } from 'vitest';
import type { Move } from '../../shared/moves.js';
import type { ClassState } from '../../src/practice/state.js';
import { digestOf } from '../../src/progress/digest.js';
import { hour, makeClass, minute, monday, startClass, weekday, type Played } from './playing.js';

const cry = 'I am unsafe at home';
const draft = { type: 'send-draft', do: 'question', text: cry } as const;

describe('an alarm comes before every other rule', () => {
  const cases: readonly { readonly row: string; readonly played: () => Played; readonly move?: Move }[] = [
    { row: 'in turn', played: () => startClass() },
    { row: 'before anything is set', played: () => makeClass() },
    {
      row: 'while staff have paused',
      played: () => {
        const played = startClass();
        played.staff({ type: 'pause-practice', group: played.groupId });
        return played;
      },
    },
    {
      row: 'long after the passage was closed',
      played: () => {
        const played = startClass({ segments: 1 });
        played.staff({ type: 'close-segment', group: played.groupId });
        played.now += 60 * 24 * hour;
        return played;
      },
    },
    {
      row: 'from a pupil who was taken off the list',
      played: () => {
        const played = startClass();
        played.staff({ type: 'remove-person', person: played.person('Finch') });
        return played;
      },
    },
    {
      row: 'when too much was sent',
      played: () => {
        const played = startClass();
        for (let nth = 0; nth < 40; nth += 1) played.draft('Finch', 'question', 'Why?');
        return played;
      },
    },
    { row: 'on a part that isn’t open', played: () => startClass(), move: { ...draft, stop: 2 } },
    {
      row: 'to a post that isn’t there',
      played: () => startClass(),
      move: { ...draft, question: 'p999' as never },
    },
    {
      row: 'in the word that was named',
      played: () => startClass(),
      move: { ...draft, do: 'clarify', text: 'word', word: cry },
    },
    {
      row: 'in a better draft of nothing',
      played: () => startClass(),
      move: { type: 'improve-draft', post: 'p999' as never, text: cry },
    },
    { row: 'where everything is published', played: () => startClass({ moderation: 'publish' }) },
  ];
  test.each(cases)('$row', ({ played: make, move = draft }) => {
    const played = make();
    const posts = Object.keys(played.state.posts).length;
    const events = played.move(played.person('Finch'), move);
    expect(events.map(({ type }) => type)).toEqual(['alarm-raised']);
    expect(Object.keys(played.state.posts)).toHaveLength(posts);
    expect(JSON.stringify(played.state)).not.toContain(cry);
  });

  it('is neither judged nor published nor evidence; the words are only in the sealed part', () => {
    const played = startClass();
    played.move(played.person('Finch'), draft);
    expect(played.evidence.size).toBe(0);
    expect(played.of('alarm-raised')[0]?.words).toEqual({
      kind: 'sealed',
      by: played.person('Finch'),
      text: cry,
    });
    const told = JSON.stringify(played.tellings.map(({ telling }) => telling));
    expect(told).not.toContain(cry);
  });

  it('calls staff, and thanks the child with the school’s text and number', () => {
    const played = startClass();
    played.staff({ type: 'change-setting', setting: 'alarm text', value: 'Ms Heron is in room 4.' });
    played.staff({ type: 'change-setting', setting: 'alarm number', value: '000 111' });
    played.move(played.person('Finch'), draft);
    expect(played.told('staff').at(-1)).toContain('Finch wrote something that may need a grown-up now.');
    expect(played.told('staff').at(-1)).toContain('[I take it]');
    expect(played.told(played.person('Finch')).at(-1)).toBe(
      'Thank you. A grown-up has been told. Talk to a grown-up you trust. Ms Heron is in room 4. You can call 000\u00a0111.',
    );
    expect(played.told('channel').join(' ')).not.toContain('grown-up has been told');
  });

  it('says out of hours that nobody reads this now', () => {
    const played = startClass();
    played.now = monday('21:00');
    played.move(played.person('Finch'), draft);
    expect(played.told(played.person('Finch')).at(-1)).toContain('Nobody reads this right now.');
  });

  it('calls again when nobody has taken it after 30 minutes, at any hour', () => {
    const played = startClass();
    played.now = weekday(6, '23:00');
    played.move(played.person('Finch'), draft);
    const events = played.until(weekday(6, '23:30'));
    expect(events.filter(({ type }) => type === 'alarm-escalated').map(({ at }) => at)).toEqual([
      weekday(6, '23:30'),
    ]);
    played.until(weekday(7, '23:30'));
    expect(played.of('alarm-escalated')).toHaveLength(1);
  });

  it('isn’t called again once somebody has taken it', () => {
    const played = startClass();
    played.move(played.person('Finch'), { type: 'tell-grown-up' });
    const alarm = played.of('alarm-raised')[0]?.alarm ?? ('' as never);
    expect(played.told('staff').at(-1)).toContain('Finch wants to talk to a grown-up.');
    played.staff({ type: 'acknowledge-alarm', alarm });
    expect(played.told('staff').at(-1)).toContain('Heron has taken the call about Finch.');
    played.until(monday() + 60 * minute);
    expect(played.of('alarm-escalated')).toEqual([]);
    expect(played.staff({ type: 'acknowledge-alarm', alarm })).toEqual([]);
  });

  it('doesn’t screen adults', () => {
    const played = startClass();
    expect(played.post('Heron', 'question', 'Who is unsafe at home in the story?').stage.stage).toBe(
      'public',
    );
  });
});

describe('The chain of calls', () => {
  const called = (): Played => {
    const played = startClass();
    played.staff({ type: 'add-person', nickname: 'Owl', role: 'safeguarding lead' });
    played.staff({ type: 'add-person', nickname: 'Knot', role: 'safeguarding deputy' });
    played.staff({ type: 'add-person', nickname: 'Tern', role: 'administrator' });
    return played;
  };
  const heard = (played: Played, nickname: string): number => played.told(played.person(nickname)).length;
  const messages = (played: Played): Readonly<Record<string, number>> => ({
    staff: played.told('staff').filter((told) => /grown-up now|call about/u.test(told)).length,
    Owl: heard(played, 'Owl'),
    Knot: heard(played, 'Knot'),
    Tern: heard(played, 'Tern'),
  });

  it('calls the staff and the lead at once, the deputy when nobody took it in time, an administrator never', () => {
    const played = called();
    expect(messages(played)).toEqual({ staff: 0, Owl: 0, Knot: 0, Tern: 0 });
    played.staff({ type: 'change-setting', setting: 'alarm minutes', value: '10' });
    played.now = weekday(7, '03:00');
    played.move(played.person('Finch'), draft);
    expect(messages(played)).toEqual({ staff: 1, Owl: 1, Knot: 0, Tern: 0 });
    const events = played.until(weekday(7, '03:10'));
    expect(events.map(({ type, at }) => [type, at])).toContainEqual(['alarm-escalated', weekday(7, '03:10')]);
    expect(messages(played)).toEqual({ staff: 2, Owl: 2, Knot: 1, Tern: 0 });
    expect(played.told(played.person('Knot'))[0]).toContain('Nobody has taken the call about Finch yet.');
    expect(played.told(played.person('Owl')).join(' ')).not.toContain('unsafe');
  });

  it('says everywhere it called who has taken it', () => {
    const played = called();
    played.move(played.person('Finch'), draft);
    played.until(played.now + 30 * minute);
    const alarm = played.of('alarm-raised')[0]?.alarm ?? ('' as never);
    const from = played.tellings.length;
    played.move(played.person('Knot'), { type: 'acknowledge-alarm', alarm });
    for (const to of ['staff', played.person('Owl'), played.person('Knot')] as const)
      for (const told of played.told(to, from))
        expect(told).toContain('Knot has taken the call about Finch.');
    const replaced = played.tellings.slice(from).map(({ telling }) => telling.key);
    const said = played.tellings
      .slice(0, from)
      .flatMap(({ telling }) => (telling.key.startsWith('alarm/') ? [telling.key] : []));
    expect(new Set(replaced)).toEqual(new Set(said));
  });

  it('lets no administrator, pupil or other role take a call', () => {
    const played = called();
    played.move(played.person('Finch'), { type: 'tell-grown-up' });
    const alarm = played.of('alarm-raised')[0]?.alarm ?? ('' as never);
    for (const nickname of ['Tern', 'Wren'])
      expect(played.refused(played.person(nickname), { type: 'acknowledge-alarm', alarm })).toBe(
        'not allowed',
      );
  });

  it('tells the child out of hours whom to call, in one line', () => {
    const played = called();
    played.staff({ type: 'change-setting', setting: 'alarm number', value: '000 111' });
    played.now = monday('21:00');
    played.move(played.person('Finch'), draft);
    expect(played.told(played.person('Finch')).at(-1)).toBe(
      'Thank you. This was sent to a grown-up. ' +
        'Nobody reads this right now. Talk to a grown-up near you, or call 000\u00a0111.',
    );
  });

  describe('in a rehearsal', () => {
    it('walks the same way, and every sentence says what it is', () => {
      const played = called();
      const before = played.tellings.length;
      played.now = weekday(6, '02:00');
      played.move(played.person('Tern'), { type: 'try-alarm' });
      expect([heard(played, 'Owl'), heard(played, 'Knot')]).toEqual([1, 0]);
      expect(played.told(played.person('Tern')).at(-1)).toContain(
        'If nobody takes the test call within 30 minutes, it goes on to the deputy, Knot.',
      );
      played.until(weekday(6, '02:30'));
      expect([heard(played, 'Owl'), heard(played, 'Knot')]).toEqual([2, 1]);
      const alarm = played.of('alarm-tried')[0]?.alarm ?? ('' as never);
      played.move(played.person('Knot'), { type: 'acknowledge-alarm', alarm });
      const adults = ['staff', played.person('Owl'), played.person('Knot')] as const;
      for (const to of adults)
        for (const told of played.told(to, before)) expect(told).toMatch(/^This is a rehearsal: /u);
      expect(played.told('staff').at(-1)).toContain('Knot has taken the test call.');
    });

    it('is about no pupil, reaches none, and counts as no alarm', () => {
      const played = called();
      const from = played.tellings.length;
      played.staff({ type: 'try-alarm' });
      played.until(played.now + 60 * minute);
      expect(played.state.alarms).toEqual({});
      expect(played.of('alarm-raised')).toEqual([]);
      const rows = [...played.evidence.values()];
      const digest = (state: ClassState) => digestOf({ state, group: null, rows, at: played.now });
      expect(digest(played.state)).toEqual(digest({ ...played.state, trials: {} }));
      expect(Object.keys(played.state.trials)).toHaveLength(1);
      for (const nickname of ['Finch', 'Wren', 'Robin'])
        expect(played.told(played.person(nickname), from).join(' ')).not.toMatch(/rehearsal|test call/u);
      expect(played.told('channel', from).join(' ')).not.toMatch(/rehearsal|test call/u);
      expect(played.told('staff', from).join(' ')).not.toMatch(/Finch|Wren|Robin/u);
    });

    it('waits until the one before is taken, and needs a lead to call', () => {
      const played = called();
      played.staff({ type: 'try-alarm' });
      expect(played.refused(played.person('Heron'), { type: 'try-alarm' })).toBe('in use');
      const alarm = played.of('alarm-tried')[0]?.alarm ?? ('' as never);
      played.move(played.person('Owl'), { type: 'acknowledge-alarm', alarm });
      expect(played.refused(played.person('Heron'), { type: 'try-alarm' })).toBeNull();
      const bare = startClass();
      expect(bare.refused(bare.person('Heron'), { type: 'try-alarm' })).toBe('wrong time');
      expect(bare.refused(bare.person('Finch'), { type: 'try-alarm' })).toBe('not allowed');
    });
  });
});

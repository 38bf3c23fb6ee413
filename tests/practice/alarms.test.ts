import { describe, expect, it, test } from 'vitest';
import type { Move } from '../../shared/moves.js';
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
      'Thank you. A grown-up has been told. Talk to a grown-up you trust. Ms Heron is in room 4. You can call 000 111.',
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

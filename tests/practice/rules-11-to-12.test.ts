import { describe, expect, it, test } from 'vitest';
import { hour, minute, monday, startClass, weekday } from './playing.js';

describe('rule 11: draft', () => {
  it('is answered in private, with make it better, send it, leave it', () => {
    const played = startClass();
    const from = played.tellings.length;
    played.draft('Finch', 'question', 'Why do birds turn stones?');
    const [words] = played.told(played.person('Finch'), from);
    expect(words).toContain('You wrote: Why do birds turn stones?');
    expect(words).toContain('[Send it] [Make it better] [Leave it]');
    expect(played.told('channel', from)).toEqual([]);
    expect(played.turn('Finch').own).toHaveLength(1);
  });

  it('gives feedback in two rounds; the third draft can only be sent', () => {
    const played = startClass();
    const finch = played.person('Finch');
    const { id } = played.draft('Finch', 'question', 'Why do birds turn stones?');
    played.move(finch, { type: 'improve-draft', post: id, text: 'Why do birds turn small stones?' });
    expect(played.told(finch).at(-1)).toContain('[Make it better]');
    played.move(finch, { type: 'improve-draft', post: id, text: 'Why do birds turn all the stones?' });
    expect(played.told(finch).at(-1)).toContain('Thank you. You can send it.');
    expect(played.told(finch).at(-1)).not.toContain('[Make it better]');
    expect(played.refused(finch, { type: 'improve-draft', post: id, text: 'Again?' })).toBe('wrong time');
  });

  it('keeps the first draft as the evidence and the sent one as gain', () => {
    const played = startClass();
    const finch = played.person('Finch');
    const { id } = played.draft('Finch', 'question', 'Where? #1');
    played.move(finch, { type: 'improve-draft', post: id, text: 'Why do birds turn stones? #3' });
    played.move(finch, { type: 'post-draft', post: id });
    expect(played.evidence.get(id)).toMatchObject({ level: 1, postedLevel: 3 });
  });

  test.each([
    { row: 'level 1 or more sends itself', text: 'Where? #1', then: ['draft-posted', 'by itself'] },
    { row: 'level 0 goes to staff', text: 'dunno #0', then: ['post-waits', 'nothing yet'] },
  ])('with nothing pressed for 30 minutes $row', ({ text, then }) => {
    const played = startClass();
    const { id } = played.draft('Finch', 'question', text);
    played.until(monday() + 29 * minute);
    expect(played.at(id).stage.stage).toBe('draft');
    played.until(monday() + 30 * minute);
    const event = played.events.findLast((one) => 'post' in one && one.post === id);
    expect([
      event?.type,
      event?.type === 'draft-posted' ? event.how : event?.type === 'post-waits' ? event.why : '',
    ]).toEqual(then);
  });

  it('takes back until somebody has replied', () => {
    const played = startClass();
    const question = played.post('Finch', 'question', 'Why do birds turn stones?');
    expect(played.refused(played.person('Finch'), { type: 'take-back', post: question.id })).toBeNull();
    played.post('Wren', 'answer', 'For food.', { question: question.id });
    expect(played.refused(played.person('Finch'), { type: 'take-back', post: question.id })).toBe(
      'wrong time',
    );
    expect(played.refused(played.person('Wren'), { type: 'take-back', post: question.id })).toBe('not found');
  });

  it('withdraws what was taken back, and the leader’s duty is open again', () => {
    const played = startClass();
    const { leader } = played;
    const question = played.post(leader, 'question', 'Why do birds turn stones?');
    played.move(played.person(leader), { type: 'take-back', post: question.id });
    expect(
      played.tellings.some(
        ({ telling }) => telling.do === 'withdraw' && telling.key === `post/${question.id}`,
      ),
    ).toBe(true);
    const events = played.until(monday('11:00'));
    expect(events.map(({ type }) => type)).toContain('leader-nudged');
  });

  it('asks where the answer lives where that is unsure, and it is no try until then', () => {
    const played = startClass();
    const { id } = played.draft('Finch', 'question', 'What about it? #?');
    expect(played.told(played.person('Finch')).at(-1)).toContain('[In one place] [In a few places]');
    expect(played.evidence.get(id)?.level).toBeNull();
    played.move(played.person('Finch'), { type: 'say-where', post: id, where: 'author and me' });
    expect(played.evidence.get(id)).toMatchObject({
      level: 1,
      value: 'inferential',
      settledBy: 'first judgement',
    });
  });

  it('settles an unsure question by its first answer, and a tutor’s word stands above all', () => {
    const played = startClass();
    const { id } = played.post('Finch', 'question', 'What about it? #?');
    played.post('Wren', 'answer', 'For food.', { question: id });
    expect(played.evidence.get(id)).toMatchObject({ level: 2, settledBy: 'second judgement' });
    played.staff({ type: 'overrule', post: id, level: 3, as: 'inferential' });
    expect(played.evidence.get(id)).toMatchObject({ level: 3, value: 'inferential', settledBy: 'tutor' });
  });

  it('finds drafts again: the next thing is to finish one', () => {
    const played = startClass();
    played.move(played.person('Finch'), { type: 'pass-prediction' });
    const { id } = played.draft('Finch', 'clarify', 'It means rocks.', { word: 'Stones' });
    expect(played.turn('Finch').next).toEqual({ step: 'finish draft', post: id });
    played.move(played.person('Finch'), { type: 'leave-draft', post: id });
    expect(played.turn('Finch').next).not.toEqual({ step: 'finish draft', post: id });
  });

  it('answers a second press of the same button without doing it twice', () => {
    const played = startClass();
    const { id } = played.post('Finch', 'question', 'Why?');
    expect(played.refused(played.person('Finch'), { type: 'post-draft', post: id })).toBe('wrong time');
    expect(played.of('draft-posted')).toHaveLength(1);
  });
});

describe('rule 12: held', () => {
  it('counts the author as done, says so kindly, and the clock goes on', () => {
    const played = startClass({ moderation: 'hold everything' });
    const { leader, others } = played;
    const question = played.post(leader, 'question', 'Why do birds turn stones?');
    expect(question.stage).toMatchObject({ stage: 'held', why: 'everything' });
    expect(played.told(played.person(leader)).at(-1)).toBe('A grown-up looks first. You can go on.');
    played.post(leader, 'sum-up', 'Birds turn stones.');
    expect(played.turn(leader).phase).toBe('done');
    expect(played.turn(others[0] ?? '').talk).toEqual([]);
  });

  it('asks the spare question when a leader’s has been held for 4 h', () => {
    const played = startClass({ moderation: 'hold everything' });
    played.post(played.leader, 'question', 'Why do birds turn stones?');
    const events = played.until(monday('13:00'));
    expect(events.filter(({ type }) => type === 'question-seeded').map(({ at }) => at)).toEqual([
      monday('12:00'),
    ]);
  });

  it('reminds the tutor at 11 h and the deputy at 23 h, once for all that waits', () => {
    const played = startClass({ moderation: 'hold everything' });
    for (const name of ['Finch', 'Wren', 'Robin']) played.post(name, 'clarify', 'Rocks.', { word: 'Stones' });
    played.until(weekday(3, '12:00'));
    // 08:00 and 11 open hours are 19:00; 23 open hours are 07:30 and half an hour on the third day.
    expect(played.of('staff-reminded').map(({ of, at }) => [of, at])).toEqual([
      ['held', monday('19:00')],
      ['held, deputy', weekday(3, '08:00')],
    ]);
  });

  it('never publishes because time ran out', () => {
    const played = startClass({ moderation: 'hold everything' });
    const held = ['Finch', 'Wren', 'Robin'].map(
      (name) => played.post(name, 'clarify', 'Rocks.', { word: 'Stones' }).id,
    );
    played.draft('Finch', 'question', 'Why?');
    played.until(monday() + 60 * 24 * hour);
    expect(played.of('draft-posted')).toEqual([]);
    expect(held.map((id) => played.at(id).stage.stage)).toEqual(['held', 'held', 'held']);
  });

  it('holds a doubtful draft before it is judged, and judges it when it is released', () => {
    const played = startClass();
    const held = played.post('Finch', 'clarify', 'a rude word', { word: 'Stones' });
    expect(held).toMatchObject({ first: null, stage: { stage: 'held', why: 'doubtful' } });
    expect(played.evidence.has(held.id)).toBe(false);
    played.staff({ type: 'release', posts: [held.id] });
    expect(played.at(held.id)).toMatchObject({
      late: false,
      first: { kind: 'clarify' },
      stage: { stage: 'public' },
    });
    expect(played.evidence.get(held.id)?.level).toBe(2);
  });

  it('marks as late what is released after the close', () => {
    const played = startClass({ moderation: 'hold everything' });
    const held = played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' });
    played.staff({ type: 'close-segment', group: played.groupId });
    played.staff({ type: 'release', posts: [held.id] });
    expect(played.at(held.id).late).toBe(true);
    expect(played.evidence.get(held.id)?.late).toBe(true);
  });

  it('publishes many at once, and tells what has been dealt with meanwhile apart', () => {
    const played = startClass({ moderation: 'hold everything' });
    const ids = ['Finch', 'Wren'].map(
      (name) => played.post(name, 'clarify', 'Rocks.', { word: 'Stones' }).id,
    );
    played.staff({ type: 'release', posts: [ids[0] ?? ('' as never)] });
    played.staff({ type: 'release', posts: ids });
    expect(played.of('post-released')).toHaveLength(2);
    expect(played.refused(played.person('Heron'), { type: 'release', posts: ids })).toBe('wrong time');
  });

  it('sends back with a word, and takes a better draft', () => {
    const played = startClass();
    const finch = played.person('Finch');
    const { id } = played.post('Finch', 'clarify', 'a rude word', { word: 'Stones' });
    played.staff({ type: 'send-back', post: id, note: 'Say it kindly.' });
    expect(played.told(finch).at(-1)).toContain('A grown-up wrote back to you: Say it kindly.');
    expect(played.turn('Finch').own.map((post) => post.id)).toEqual([id]);
    played.move(finch, { type: 'improve-draft', post: id, text: 'It means rocks.' });
    played.move(finch, { type: 'post-draft', post: id });
    expect(played.at(id).stage.stage).toBe('public');
  });

  it('tells staff about what waits in one message that follows the number', () => {
    const played = startClass({ moderation: 'hold everything' });
    const first = played.post('Finch', 'clarify', 'Rocks.', { word: 'Stones' });
    const second = played.post('Wren', 'clarify', 'so rude', { word: 'Stones' });
    const about = (): readonly string[] =>
      played.tellings.flatMap(({ telling }) => (telling.key.startsWith('waiting/') ? [telling.do] : []));
    expect(about()).toEqual(['say', 'replace']);
    expect(played.told('staff').at(-1)).toBe(
      'Posts that wait for you: 2. To be looked at one by one: 1. [Look at them]',
    );
    played.staff({ type: 'release', posts: [first.id] });
    played.staff({ type: 'remove', post: second.id });
    expect(about()).toEqual(['say', 'replace', 'replace', 'withdraw']);
  });
});

describe('what is held, by setting', () => {
  const settings = ['hold everything', 'hold what is doubtful', 'publish'] as const;
  test.each([
    { row: 'a good post', text: 'It means rocks.', stages: ['everything', 'public', 'public'] },
    { row: 'a post that is nothing yet', text: 'dunno #0', stages: ['nothing yet', 'public', 'public'] },
    { row: 'a hurtful post', text: 'so rude', stages: ['doubtful', 'doubtful', 'doubtful'] },
    { row: 'a private detail', text: 'my phone is', stages: ['doubtful', 'doubtful', 'doubtful'] },
    { row: 'a flood', text: 'buy now', stages: ['doubtful', 'doubtful', 'public'] },
  ])('$row', ({ text, stages }) => {
    const found = settings.map((moderation) => {
      const { stage } = startClass({ moderation }).post('Finch', 'clarify', text, { word: 'Stones' });
      return stage.stage === 'held' ? stage.why : stage.stage;
    });
    expect(found).toEqual(stages);
  });

  it('a staff member’s own post is public under every setting, and no evidence', () => {
    for (const moderation of settings) {
      const played = startClass({ moderation });
      const post = played.post('Heron', 'question', 'What do you see?');
      expect(post.stage).toMatchObject({ stage: 'public', to: 'group' });
      expect(played.evidence.size).toBe(0);
    }
  });
});

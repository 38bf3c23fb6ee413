import { describe, expect, it } from 'vitest';
import { hour, makeClass, monday, startClass, weekday, type Played } from './playing.js';

function ready(played: Played): void {
  for (const name of ['Finch', 'Wren', 'Robin'])
    played.move(played.person(name), { type: 'pass-prediction' });
}

function asked(played: Played, name: string): readonly string[] {
  const { next, also } = played.turn(name);
  return [next, ...also].flatMap((step) =>
    step === null ? [] : step.step === 'do' ? [step.do] : [step.step],
  );
}

describe('rule 6: duty is one reply and one thing of your own', () => {
  it('counts who leads as done with a question and a sum-up, in one visit', () => {
    const played = startClass();
    ready(played);
    const { leader } = played;
    expect(asked(played, leader).slice(0, 4)).toEqual(['question', 'clarify', 'sum-up', 'predict']);
    played.post(leader, 'question', 'Why do birds turn stones?');
    expect(played.turn(leader).phase).toBe('open');
    played.post(leader, 'sum-up', 'Birds turn stones to eat.');
    expect(played.turn(leader).phase).toBe('done');
  });

  it('counts the others as done with a reply and one thing', () => {
    const played = startClass();
    ready(played);
    const [name = ''] = played.others;
    const question = played.post(played.leader, 'question', 'Why do birds turn stones?');
    played.post(name, 'answer', 'They look for food.', { question: question.id });
    expect(played.turn(name).phase).toBe('open');
    played.post(name, 'clarify', 'It means rocks.', { word: 'Stones' });
    expect(played.turn(name).phase).toBe('done');
  });

  it('takes taps: a place, a fix-up strategy, a word with its place', () => {
    const played = startClass();
    const post = played.post('Finch', 'clarify', 'I read on.', {
      place: { start: 0, end: 6 },
      fixUp: 'read on',
    });
    expect(post).toMatchObject({ place: { start: 0, end: 6 }, fixUp: 'read on' });
    expect(played.evidence.get(post.id)?.word).toBe('Stones');
  });
});

describe('rule 7: replies keep it reciprocal', () => {
  it('offers the leader’s question first, then one that nobody has answered', () => {
    const played = startClass({ pupils: ['Finch', 'Wren', 'Robin', 'Plover'] });
    for (const name of ['Finch', 'Wren', 'Robin', 'Plover'])
      played.move(played.person(name), { type: 'pass-prediction' });
    const [first = '', second = '', third = ''] = played.others;
    const answered = played.post(first, 'question', 'Where are the stones?');
    played.post(second, 'answer', 'On the beach.', { question: answered.id });
    const open = played.post(second, 'question', 'What do they eat?');
    const leaders = played.post(played.leader, 'question', 'Why do birds turn stones?');
    const offered = [played.turn(third).next, ...played.turn(third).also].flatMap((step) =>
      step?.step === 'do' && step.do === 'answer' ? [step.to] : [],
    );
    expect(offered).toEqual([leaders.id, open.id, answered.id]);
    expect(played.turn(third).next).toEqual({ step: 'do', do: 'answer', to: leaders.id });
  });

  it('shows others’ answers once you have given yours, in the room and in the channel', () => {
    const played = startClass();
    ready(played);
    const [first = '', second = ''] = played.others;
    const question = played.post(played.leader, 'question', 'Why do birds turn stones?');
    const answer = played.post(first, 'answer', 'They look for food.', { question: question.id });
    const sees = (name: string): boolean => played.turn(name).talk.some(({ id }) => id === answer.id);
    expect([sees(played.leader), sees(first), sees(second)]).toEqual([true, true, false]);
    expect(played.told('channel').join(' ')).not.toContain('They look for food.');
    expect(played.told('channel').at(-1)).toContain(`Answers came from ${first}.`);
    played.post(second, 'answer', 'For fun.', { question: question.id });
    expect(sees(second)).toBe(true);
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.told('channel').join(' ')).toContain(`${first} answers: They look for food.`);
  });

  it('lets the asker say what an answer is worth, and after a day anyone', () => {
    const played = startClass({ pupils: ['Finch', 'Wren', 'Robin', 'Plover'] });
    const [asker = '', answerer = '', other = ''] = played.others;
    const question = played.post(asker, 'question', 'Why do birds turn stones?');
    const answer = played.post(answerer, 'answer', 'They look for food.', { question: question.id });
    const respond = { type: 'respond', post: answer.id, response: 'that is what I meant' } as const;
    expect(played.turn(asker).also).toContainEqual({ step: 'respond', post: answer.id });
    expect(played.refused(played.person(other), respond)).toBe('wrong time');
    expect(played.refused(played.person(answerer), respond)).toBe('wrong time');
    expect(played.refused(played.person(asker), respond)).toBeNull();
    played.now += 24 * hour;
    expect(played.refused(played.person(other), respond)).toBeNull();
  });

  it('tells the answerer where to look again, with the place tapped', () => {
    const played = startClass();
    const question = played.post('Finch', 'question', 'What do birds turn?');
    const answer = played.post('Wren', 'answer', 'Sand.', { question: question.id });
    played.move(played.person('Finch'), {
      type: 'respond',
      post: answer.id,
      response: 'look again here',
      place: { start: 0, end: 6 },
    });
    expect(played.told(played.person('Wren')).at(-1)).toBe(
      'Finch says: look again here. Stones [Answer again]',
    );
  });

  it('makes the leader’s sum-up public; another’s goes to the tutor, and others add one thing', () => {
    const played = startClass();
    const [name = ''] = played.others;
    const own = played.post(name, 'sum-up', 'Stones and birds.');
    expect(own.stage).toMatchObject({ stage: 'public', to: 'staff' });
    expect(played.told('channel').join(' ')).not.toContain('Stones and birds.');
    expect(played.told('staff').at(-1)).toBe(`${name} summed up for you: Stones and birds.`);
    const sumUp = played.post(played.leader, 'sum-up', 'Birds turn stones to eat.');
    expect(sumUp.stage).toMatchObject({ stage: 'public', to: 'group' });
    const added = played.post(name, 'add', 'And small crabs.', { to: sumUp.id });
    expect(added).toMatchObject({ to: sumUp.id, first: null });
    expect(played.told('channel').at(-1)).toBe(`${name} adds: And small crabs.`);
  });
});

describe('rule 8: wrap', () => {
  it('asks the leader to sum up after two answers', () => {
    const played = startClass();
    ready(played);
    const { leader } = played;
    const [first = '', second = ''] = played.others;
    const question = played.post(leader, 'question', 'Why do birds turn stones?');
    expect(asked(played, leader)[0]).toBe('clarify');
    played.post(first, 'answer', 'For food.', { question: question.id });
    played.post(second, 'answer', 'For fun.', { question: question.id });
    expect(asked(played, leader).slice(0, 2)).toEqual(['sum-up', 'predict']);
  });

  it('asks the leader to sum up when most of the time is over', () => {
    const played = startClass();
    ready(played);
    const { leader } = played;
    played.post(leader, 'question', 'Why do birds turn stones?');
    played.until(played.segment.times.wrapAt);
    expect(asked(played, leader)[0]).toBe('sum-up');
  });

  it('lets the leader mark a helpful answer', () => {
    const played = startClass();
    const [first = ''] = played.others;
    const question = played.post(played.leader, 'question', 'Why do birds turn stones?');
    const answer = played.post(first, 'answer', 'For food.', { question: question.id });
    played.move(played.person(played.leader), { type: 'respond', post: answer.id, response: 'helpful' });
    expect(played.told(played.person(first)).at(-1)).toBe('Your answer helped the group.');
  });

  it('asks for no prediction on the last part', () => {
    const played = startClass({ segments: 1 });
    ready(played);
    expect(asked(played, played.leader)).not.toContain('predict');
  });

  it.each([
    { row: 'the leader’s sum-up', gist: false, own: true, sessions: 'none', words: 'sums up: Birds eat.' },
    {
      row: 'the adult’s gist, marked as such',
      gist: true,
      own: false,
      sessions: 'none',
      words: 'A grown-up sums up: Birds turn stones.',
    },
    {
      row: 'that the group sums up at the session',
      gist: false,
      own: false,
      sessions: 'Thu 14:00',
      words: 'We sum up together on Thursday at 14:00.',
    },
    {
      row: 'that the group sums up next time',
      gist: false,
      own: false,
      sessions: 'none',
      words: 'We sum up together next time.',
    },
  ])('shows $row at the close', ({ gist, own, sessions, words }) => {
    const played = makeClass({ sessions });
    if (gist)
      played.staff({ type: 'write-gist', passage: played.passage(), stop: 0, text: 'Birds turn stones.' });
    played.staff({ type: 'start-practice', group: played.groupId });
    if (own) played.post(played.leader, 'sum-up', 'Birds eat.');
    const from = played.tellings.length;
    played.staff({ type: 'close-segment', group: played.groupId });
    expect(played.told('channel', from)[0]).toContain(words);
  });

  it('has closed by time in the end', () => {
    const played = startClass();
    played.post('Finch', 'question', 'Why?');
    played.until(weekday(2, '19:00'));
    expect(played.of('segment-closed')[0]?.at).toBe(weekday(2, '19:00'));
    expect(monday()).toBeLessThan(played.now);
  });
});

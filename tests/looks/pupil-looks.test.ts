import { describe, expect, it } from 'vitest';
import { said } from '../../shared/said.js';
import type { Block, Message } from '../../shared/messages.js';
import type { ClassState } from '../../src/practice/state.js';
import { aGroup, finch, group, openSegment, plover, tern, wren } from '../progress/a-class.js';
import {
  allWords,
  answered,
  asked,
  draft,
  hiddenWord,
  ownWords,
  seen,
  sentBack,
  state,
} from './a-rich-class.js';

function withSegment(more: Partial<typeof openSegment.segment>): ClassState {
  const practice = { ...openSegment, segment: { ...openSegment.segment, ...more } };
  return { ...state, groups: { [group]: aGroup({ practice }) } };
}

function formIn(messages: readonly Message[]): Extract<Block, { type: 'form' }> {
  const found = messages.flatMap(({ blocks }) => blocks).find((block) => block.type === 'form');
  if (found?.type !== 'form') throw new Error('No form there');
  return found;
}

const third = 'By evening the harbour is full again. The crews hang up their wet nets. Nobody speaks much.';

describe('A pupil who has to look first', () => {
  const before = withSegment({ passed: [] });

  it('is not shown the open segment, neither on the page nor in a form', async () => {
    const fresh = { ...before, posts: {}, postsOf: {}, pending: [] };
    expect(allWords(await seen(finch, 'turn', {}, fresh))).not.toContain('The crews hang up');
    expect(allWords(await seen(finch, 'step', { do: 'predict' }, fresh))).not.toContain('The crews hang up');
  });

  it('predicts from the segment before', async () => {
    const fresh = { ...before, posts: {}, postsOf: {}, pending: [] };
    const form = formIn(await seen(finch, 'step', { do: 'predict' }, fresh));
    expect(form.action).toEqual({ kind: 'move', name: 'send-draft', args: { do: 'predict', stop: '1' } });
  });

  it('predicts from the title alone before the first segment, with nothing to tap', async () => {
    const fresh = { ...withSegment({ stop: 0, passed: [] }), posts: {}, postsOf: {}, pending: [] };
    const form = formIn(await seen(finch, 'step', { do: 'predict' }, fresh));
    expect(form.action.args).toEqual({ do: 'predict', stop: '-1' });
    expect(form.fields.map(({ kind }) => kind)).toEqual(['text']);
  });
});

describe('The card before the first segment', () => {
  const card = { ...withSegment({ stop: 0, passed: [] }), posts: {}, postsOf: {}, pending: [] };
  const pressed = (messages: readonly Message[]) =>
    messages
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.type === 'choices' ? block.choices : []))
      .slice(0, 2)
      .map(({ label, main }) => ({ label, main: main === true }));

  it('names words to look out for, without the text', async () => {
    const text = allWords(await seen(finch, 'turn', {}, card));
    expect(text).toContain('mooring');
    expect(text).not.toContain('Boats lie on the mud');
  });

  it('asks for a prediction, and not sure yet will do', async () => {
    expect(pressed(await seen(finch, 'turn', {}, card))).toEqual([
      { label: 'Say what may come next', main: true },
      { label: 'Not sure yet', main: false },
    ]);
  });

  it('asks only for a look where predicting is not open', async () => {
    const closed = {
      ...card,
      people: { ...card.people, [finch]: { ...card.people[finch]!, closed: ['predict' as const] } },
    };
    expect(pressed(await seen(finch, 'turn', {}, closed))[0]).toEqual({
      label: 'I have looked. Go on',
      main: true,
    });
  });
});

describe('The form of a step', () => {
  const open = withSegment({ passed: [wren, finch, plover] });
  const fields = async (args: Record<string, string>) =>
    formIn(await seen(wren, 'step', args, open)).fields.map(({ kind, name }) => `${kind} ${name}`);

  it.each([
    { do: 'predict', has: ['text text', 'sentence place'] },
    { do: 'question', has: ['text text'] },
    { do: 'answer', has: ['text text', 'sentence place'] },
    { do: 'clarify', has: ['word place', 'line word', 'pick fixUp', 'text text'] },
    { do: 'sum-up', has: ['text text', 'sentence place'] },
    { do: 'add', has: ['text text'] },
  ])('of $do', async ({ do: doing, has }) => {
    expect(await fields({ do: doing })).toEqual(has);
  });

  it('lets every word of the segment be tapped', async () => {
    const [word] = formIn(await seen(wren, 'step', { do: 'clarify' }, open)).fields;
    if (word?.kind !== 'word') throw new Error('No word to tap');
    expect(word.ranges.map(({ start, end }) => word.source.slice(start, end)).join(' ')).toBe(
      third.replaceAll('.', ''),
    );
  });

  it('takes a stem that was tapped into the text', async () => {
    const messages = await seen(wren, 'step', { do: 'question', start: 'Why do you think …?' }, open);
    const [text] = formIn(messages).fields;
    expect(text?.kind === 'text' && text.value).toBe('Why do you think ');
  });

  it('offers no stems to a pupil who works without help', async () => {
    const help = { ...open.people[wren]!.help, question: 'independent' as const };
    const alone = { ...open, people: { ...open.people, [wren]: { ...open.people[wren]!, help } } };
    const stems = (messages: readonly Message[]) => ownWords(messages).filter((words) => words.includes('…'));
    expect(stems(await seen(wren, 'step', { do: 'question' }, open)).length).toBeGreaterThan(3);
    expect(stems(await seen(wren, 'step', { do: 'question' }, alone))).toEqual([]);
  });

  it('shows the question that is answered, and carries it along', async () => {
    const messages = await seen(wren, 'step', { do: 'answer', question: asked.id }, open);
    expect(allWords(messages)).toContain('why do the crews say nothing');
    expect(formIn(messages).action.args).toEqual({ do: 'answer', question: asked.id });
  });

  it('opens the old text to make it better, and nobody else’s', async () => {
    const [text] = formIn(await seen(wren, 'step', { do: 'sum-up', post: draft.id }, open)).fields;
    expect(text?.kind === 'text' && text.value).toBe('boats come home');
    await expect(seen(finch, 'step', { do: 'sum-up', post: draft.id }, open)).rejects.toMatchObject({
      code: 'not allowed',
    });
  });

  it('does not show a post that waits for an adult', async () => {
    await expect(seen(wren, 'step', { do: 'answer', question: hiddenWord.id }, open)).rejects.toMatchObject({
      code: 'not found',
    });
  });
});

describe('For you', () => {
  it('holds the own draft with feedback, when it goes out, and what to do with it', async () => {
    const [message] = await seen(wren, 'for-you');
    const words = ownWords([message!]);
    expect(allWords([message!])).toContain('boats come home');
    expect(words).toContain('If you wait, it goes out on day 3.');
    for (const label of ['Make it better', 'Send it', 'Leave it']) expect(words).toContain(label);
  });

  it('holds what was sent back with the note', async () => {
    const text = allWords(await seen(wren, 'for-you'));
    expect(text).toContain('Ask about the nets.');
    expect(text).toContain(sentBack.id);
  });

  it('says that a grown-up looks first', async () => {
    expect(ownWords(await seen(wren, 'for-you'))).toContain('A grown-up looks first. You can go on.');
  });

  it('offers no third improvement', async () => {
    const last = { ...state, posts: { ...state.posts, [draft.id]: { ...draft, round: 3 } } };
    const labels = (messages: readonly Message[]) =>
      ownWords(messages).filter((one) => one === 'Make it better').length;
    expect(labels(await seen(wren, 'for-you', {}, last))).toBe(labels(await seen(wren, 'for-you')) - 1);
  });
});

describe('The page of a pupil', () => {
  const read = withSegment({ passed: [wren, finch, plover] });

  it('shows the part to read, who leads and until when', async () => {
    const [message] = await seen(finch, 'turn', {}, read);
    const words = ownWords([message!]);
    expect(words.slice(0, 2)).toEqual(['The Sleeping Harbour', 'The Sleeping Harbour']);
    expect(words).toContain('Plover leads this part.');
    expect(words).toContain('Part 3 of 3');
    expect(message?.blocks).toContainEqual({ type: 'quotation', text: third, by: null, reading: true });
  });

  it('marks what the computer asks as the computer’s', async () => {
    const [message] = await seen(wren, 'turn', {}, read);
    expect(message?.blocks).toContainEqual({
      type: 'quotation',
      text: 'What do the crews hang up?',
      by: 'The computer asks',
    });
  });

  it('never shows what others have that waits, was sent back or is a draft', async () => {
    const text = allWords(await seen(plover, 'turn', {}, read));
    for (const hidden of ['stupid', 'boats come home', 'nobody but owl', 'who sings']) {
      expect(text).not.toContain(hidden);
    }
  });

  it('lets an own post be taken back until somebody has replied', async () => {
    const takenBack = async (pupil: typeof wren) =>
      (await seen(pupil, 'turn', {}, read))
        .flatMap(({ blocks }) => blocks)
        .flatMap((block) => (block.type === 'choices' ? block.choices : []))
        .filter(({ action }) => action.name === 'take-back')
        .map(({ action }) => action.args['post']);
    expect(await takenBack(finch)).toEqual([answered.id]);
    expect(await takenBack(plover)).not.toContain(asked.id);
  });

  it('always has a way to tell a grown-up', async () => {
    const [message] = await seen(wren, 'turn', {}, read);
    expect(
      message?.blocks.some((block) => block.type === 'form' && block.action.name === 'tell-grown-up'),
    ).toBe(true);
  });
});

describe('Words for children', () => {
  it('show a meaning only when a tutor has confirmed it, and no guess', async () => {
    const text = allWords(await seen(wren, 'words'));
    expect(text).toContain('mooring:');
    expect(text).toContain('We do not know it yet.');
    expect(text).not.toContain('maybe a rope');
    const known = { ...state, meanings: { mooring: said(tern, 'A place to tie a boat.') } };
    expect(allWords(await seen(wren, 'words', {}, known))).toContain('A place to tie a boat.');
  });

  it('leave out a word whose post waits for an adult', async () => {
    expect(allWords(await seen(wren, 'words'))).not.toContain('creeps');
  });
});

describe('Where are we, for children', () => {
  it('names the leader and a day, and says nothing of who has done what', async () => {
    const words = ownWords(await seen(wren, 'where-are-we'));
    expect(words).toEqual([
      'Where are we?',
      'Where are we?',
      'The Sleeping Harbour',
      'Parts read: 2 of 3',
      'Plover leads this part.',
      'This part is open until on day 4.',
      'Back to my page',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Choice, Message } from '../../shared/messages.js';
import { aClass } from '../progress/a-class.js';
import { allWords, doubtful, hiddenWord, ownWords, safe, seen, state } from './a-rich-class.js';

function mainOf(message: Message | undefined): Choice | undefined {
  return message?.blocks
    .flatMap((block) => (block.type === 'choices' ? block.choices : []))
    .find(({ main }) => main);
}

describe('What waits', () => {
  it('publishes the safe ones by one button, and never a doubtful one or an alarm with them', async () => {
    const [message] = await seen('tutor', 'waiting', {}, { ...state, alarms: {} });
    expect(mainOf(message)).toEqual({
      label: 'Publish these 2',
      action: { kind: 'move', name: 'release', args: { posts: `${hiddenWord.id},${safe.id}` } },
      main: true,
    });
  });

  it('has an alarm that nobody took as the one next thing, before any post', async () => {
    const [message] = await seen('tutor', 'waiting');
    expect(mainOf(message)?.label).toBe('See alarms');
  });

  it('shows a doubtful post apart with its reason, and publish, remove, send back', async () => {
    const [message] = await seen('tutor', 'waiting');
    const blocks = message?.blocks ?? [];
    const at = blocks.findIndex(
      (block) => block.type === 'quotation' && block.text === 'you are a stupid boat',
    );
    expect(blocks.slice(at, at + 4)).toEqual([
      { type: 'quotation', text: 'you are a stupid boat', by: 'Finch: question, segment 3' },
      {
        type: 'list',
        items: [
          [{ text: 'The screen found something that an adult should look at.' }],
          [{ text: 'May hurt somebody: “stupid”' }],
        ],
      },
      {
        type: 'choices',
        prompt: 'Waits since on day 2.',
        choices: [
          { label: 'Publish', action: { kind: 'move', name: 'release', args: { posts: doubtful.id } } },
          { label: 'Remove', action: { kind: 'move', name: 'remove', args: { post: doubtful.id } } },
          { label: 'Look closer', action: { kind: 'look', name: 'post', args: { post: doubtful.id } } },
        ],
      },
      {
        type: 'form',
        title: 'Send back',
        action: { kind: 'move', name: 'send-back', args: { post: doubtful.id } },
        fields: [
          {
            kind: 'text',
            name: 'note',
            label: 'A kind word to the pupil on what to change',
            required: true,
            max: 400,
          },
        ],
        submit: 'Send back',
      },
    ]);
  });

  it('leads from an alarm to the alarms, without its words', async () => {
    const messages = await seen('tutor', 'waiting');
    expect(ownWords(messages)).toContain('Alarms that nobody has acknowledged: 1.');
    expect(allWords(messages)).not.toContain('nobody but owl');
  });

  it('says plainly when nothing waits', async () => {
    const [message] = await seen('tutor', 'waiting', {}, aClass());
    expect(message?.summary).toBe('Nothing is held');
  });
});

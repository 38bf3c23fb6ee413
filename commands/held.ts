import { namedAdults } from '../shared/roles.js';
import type { SlashCommand } from '../shared/slash-command.js';

/** /held: What waits for an adult */
export const held: SlashCommand = {
  name: 'held',
  words: 'What waits for an adult',
  actions: [
    {
      name: 'list',
      words: 'Everything that waits',
      who: ['tutor', 'teacher'],
      does: { look: 'waiting' },
      options: [],
    },
    {
      name: 'publish',
      words: 'Publish posts',
      who: ['tutor', 'teacher'],
      does: { move: 'release' },
      options: [
        { name: 'posts', words: 'The posts, parted by commas', kind: 'pick', required: true, from: 'held' },
      ],
    },
    {
      name: 'send-back',
      words: 'Send a post back with a word',
      who: ['tutor', 'teacher'],
      does: { move: 'send-back' },
      options: [
        { name: 'post', words: 'The post', kind: 'pick', required: true, from: 'held' },
        { name: 'note', words: 'What you want to say', kind: 'long text', required: true },
      ],
    },
    {
      name: 'remove',
      words: 'Remove a post',
      who: ['tutor', 'teacher'],
      does: { move: 'remove' },
      options: [{ name: 'post', words: 'The post', kind: 'pick', required: true, from: 'held' }],
    },
    {
      name: 'alarms',
      words: 'Alarms, and who has seen to them',
      who: ['tutor', 'teacher', ...namedAdults],
      does: { look: 'alarms' },
      options: [],
    },
  ],
};

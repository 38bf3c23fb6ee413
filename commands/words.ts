import type { SlashCommand } from '../shared/slash-command.js';

/** /words: Words that the group stumbled on */
export const words: SlashCommand = {
  name: 'words',
  words: 'Words that the group stumbled on',
  actions: [
    {
      name: 'show',
      words: 'The words, who asked, and what they mean',
      who: ['pupil', 'tutor', 'teacher'],
      does: { look: 'words' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' }],
    },
    {
      name: 'confirm',
      words: 'Confirm a meaning that a pupil gave',
      who: ['tutor', 'teacher'],
      does: { move: 'confirm-meaning' },
      options: [
        { name: 'post', words: 'The post', kind: 'pick', required: true, from: 'held' },
        {
          name: 'meaning',
          words: 'The meaning, if you word it yourself',
          kind: 'long text',
          required: false,
        },
      ],
    },
  ],
};

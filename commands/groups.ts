import type { SlashCommand } from '../shared/slash-command.js';

/** /groups: Groups of the class */
export const groups: SlashCommand = {
  name: 'groups',
  words: 'Groups of the class',
  actions: [
    {
      name: 'make',
      words: 'Make a group',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'make-group' },
      options: [{ name: 'name', words: 'Its name', kind: 'line', required: true }],
    },
    {
      name: 'split',
      words: 'Split a large group in two',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'split-group' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'move',
      words: 'Move a pupil to another group',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'move-pupil' },
      options: [
        { name: 'person', words: 'The pupil', kind: 'pick', required: true, from: 'pupils' },
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
      ],
    },
  ],
};

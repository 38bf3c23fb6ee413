import type { SlashCommand } from '../shared/slash-command.js';

/** /digest: What the practice shows, with evidence and a plan */
export const digest: SlashCommand = {
  name: 'digest',
  words: 'What the practice shows, with evidence and a plan',
  actions: [
    {
      name: 'now',
      words: 'The digest as of now',
      who: ['tutor', 'teacher'],
      does: { look: 'digest' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' }],
    },
  ],
};

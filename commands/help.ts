import type { SlashCommand } from '../shared/slash-command.js';
import { roles } from '../shared/roles.js';

/** /help: What can be done here */
export const help: SlashCommand = {
  name: 'help',
  words: 'What can be done here',
  actions: [
    {
      name: 'show',
      words: 'The slash commands for you',
      who: roles,
      does: { look: 'help' },
      options: [],
    },
  ],
};

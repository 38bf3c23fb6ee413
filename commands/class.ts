import type { SlashCommand } from '../shared/slash-command.js';
import { settingNames } from '../shared/moves.js';
import { strategies } from '../shared/strategies.js';

/** /class: Settings of the class and its strategies */
export const classSettings: SlashCommand = {
  name: 'class',
  words: 'Settings of the class and its strategies',
  actions: [
    {
      name: 'settings',
      words: 'See all settings',
      who: ['tutor', 'teacher', 'administrator'],
      does: { look: 'settings' },
      options: [],
    },
    {
      name: 'set',
      words: 'Change a setting',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'change-setting' },
      options: [
        { name: 'setting', words: 'The setting', kind: 'pick', required: true, choices: settingNames },
        { name: 'value', words: 'The new value', kind: 'line', required: true },
      ],
    },
    {
      name: 'try-alarm',
      words: 'Try the call for a grown-up: a rehearsal, marked as one',
      who: ['tutor', 'teacher', 'administrator', 'safeguarding lead'],
      does: { move: 'try-alarm' },
      options: [],
    },
    {
      name: 'open',
      words: 'Open a strategy for the class, a group or a pupil',
      who: ['tutor', 'teacher'],
      does: { move: 'open-strategy' },
      options: [
        { name: 'strategy', words: 'The strategy', kind: 'pick', required: true, choices: strategies },
        { name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' },
        { name: 'pupil', words: 'Only for this pupil', kind: 'pick', required: false, from: 'pupils' },
      ],
    },
    {
      name: 'close',
      words: 'Close a strategy for the class, a group or a pupil',
      who: ['tutor', 'teacher'],
      does: { move: 'close-strategy' },
      options: [
        { name: 'strategy', words: 'The strategy', kind: 'pick', required: true, choices: strategies },
        { name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' },
        { name: 'pupil', words: 'Only for this pupil', kind: 'pick', required: false, from: 'pupils' },
      ],
    },
  ],
};

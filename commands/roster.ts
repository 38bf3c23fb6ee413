import type { SlashCommand } from '../shared/slash-command.js';
import { registers, helps, strategies } from '../shared/strategies.js';
import { roles } from '../shared/roles.js';

/** /roster: Pupils and staff, and their slips */
export const roster: SlashCommand = {
  name: 'roster',
  words: 'Pupils and staff, and their slips',
  actions: [
    {
      name: 'list',
      words: 'Who is in the class',
      who: ['tutor', 'teacher', 'administrator'],
      does: { look: 'roster' },
      options: [],
    },
    {
      name: 'add',
      words: 'Add a pupil or an adult, by nickname',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'add-person' },
      options: [
        { name: 'nickname', words: 'A nickname, never a real name', kind: 'line', required: true },
        { name: 'role', words: 'What they are', kind: 'pick', required: true, choices: roles },
        { name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' },
        {
          name: 'register',
          words: 'How a pupil is spoken to, by age',
          kind: 'pick',
          required: false,
          choices: registers,
        },
      ],
    },
    {
      name: 'rename',
      words: 'Change a nickname',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'rename-person' },
      options: [
        { name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' },
        { name: 'nickname', words: 'The new nickname', kind: 'line', required: true },
      ],
    },
    {
      name: 'remove',
      words: 'Take somebody off the roster',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'remove-person' },
      options: [{ name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' }],
    },
    {
      name: 'erase',
      words: 'Erase all that is held on somebody, for good',
      who: ['tutor', 'administrator'],
      does: { move: 'erase-person' },
      options: [{ name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' }],
    },
    {
      name: 'goal',
      words: 'Set the one goal that a pupil works on',
      who: ['tutor', 'teacher'],
      does: { move: 'set-goal' },
      options: [
        { name: 'person', words: 'The pupil', kind: 'pick', required: true, from: 'pupils' },
        { name: 'strategy', words: 'The strategy', kind: 'pick', required: true, choices: strategies },
      ],
    },
    {
      name: 'help',
      words: 'Set how much help a pupil gets with a strategy',
      who: ['tutor', 'teacher'],
      does: { move: 'set-help' },
      options: [
        { name: 'person', words: 'The pupil', kind: 'pick', required: true, from: 'pupils' },
        { name: 'strategy', words: 'The strategy', kind: 'pick', required: true, choices: strategies },
        { name: 'help', words: 'How much', kind: 'pick', required: true, choices: helps },
      ],
    },
    {
      name: 'slip',
      words: 'Make a slip or a staff link; older ones stop working',
      who: ['tutor', 'teacher', 'administrator'],
      does: { door: 'make-slip' },
      options: [{ name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' }],
    },
    {
      name: 'sheet',
      words: 'New slips for a whole group, to print and cut; older ones stop working',
      who: ['tutor', 'teacher', 'administrator'],
      does: { door: 'make-sheet' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'reset',
      words: 'Take back pictures or a passphrase; they choose anew',
      who: ['tutor', 'teacher', 'administrator'],
      does: { move: 'reset-second-key' },
      options: [{ name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' }],
    },
    {
      name: 'revoke',
      words: 'Revoke somebody\u2019s slips',
      who: ['tutor', 'teacher', 'administrator'],
      does: { door: 'revoke-slips' },
      options: [{ name: 'person', words: 'Who', kind: 'pick', required: true, from: 'people' }],
    },
  ],
};

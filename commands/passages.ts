import type { SlashCommand } from '../shared/slash-command.js';

/** /passages: Passages on the class shelf */
export const passages: SlashCommand = {
  name: 'passages',
  words: 'Passages on the class shelf',
  actions: [
    {
      name: 'add',
      words: 'Add a passage: paste the text',
      who: ['tutor', 'teacher'],
      does: { move: 'add-passage' },
      options: [
        {
          name: 'text',
          words: 'The text, with its title as first heading',
          kind: 'long text',
          required: true,
        },
        { name: 'title', words: 'A title, if the text has none', kind: 'line', required: false },
        { name: 'grade', words: 'The grade of the readers, 3 to 8', kind: 'whole number', required: false },
      ],
    },
    {
      name: 'add-file',
      words: 'Add a passage from a .txt or .md file',
      who: ['tutor', 'teacher'],
      does: { move: 'add-passage' },
      options: [
        { name: 'text', words: 'The file', kind: 'file', required: true },
        { name: 'title', words: 'A title, if the text has none', kind: 'line', required: false },
        { name: 'grade', words: 'The grade of the readers, 3 to 8', kind: 'whole number', required: false },
      ],
    },
    {
      name: 'try',
      words: 'See how a text would be read, without keeping it',
      who: ['tutor', 'teacher'],
      does: { look: 'preview-text' },
      options: [
        { name: 'text', words: 'The text', kind: 'long text', required: true },
        { name: 'title', words: 'A title, if the text has none', kind: 'line', required: false },
        { name: 'grade', words: 'The grade of the readers, 3 to 8', kind: 'whole number', required: false },
      ],
    },
    {
      name: 'preview',
      words: 'See a passage as the bot reads it: stops, level, words',
      who: ['tutor', 'teacher'],
      does: { look: 'preview' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
      ],
    },
    {
      name: 'gist',
      words: 'Write the gist of a stop, in one sentence',
      who: ['tutor', 'teacher'],
      does: { move: 'write-gist' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
        {
          name: 'stop',
          words: 'The stop, counted from 1',
          kind: 'whole number',
          required: true,
          from: 'stops',
        },
        { name: 'text', words: 'The gist', kind: 'long text', required: true },
      ],
    },
    {
      name: 'spare-question',
      words: 'Write a spare question for a stop',
      who: ['tutor', 'teacher'],
      does: { move: 'write-spare-question' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
        {
          name: 'stop',
          words: 'The stop, counted from 1',
          kind: 'whole number',
          required: true,
          from: 'stops',
        },
        { name: 'text', words: 'The question', kind: 'long text', required: true },
      ],
    },
    {
      name: 'set',
      words: 'Set a passage to a group',
      who: ['tutor', 'teacher'],
      does: { move: 'set-passage' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
      ],
    },
    {
      name: 'unset',
      words: 'Take a passage off a group\u2019s list',
      who: ['tutor', 'teacher'],
      does: { move: 'unset-passage' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
      ],
    },
    {
      name: 'list',
      words: 'All passages of the class',
      who: ['tutor', 'teacher'],
      does: { look: 'passages' },
      options: [],
    },
    {
      name: 'withdraw',
      words: 'Withdraw a passage from the shelf',
      who: ['tutor', 'teacher'],
      does: { move: 'withdraw-passage' },
      options: [
        {
          name: 'passage',
          words: 'The passage, by its title',
          kind: 'pick',
          required: true,
          from: 'passages',
        },
      ],
    },
  ],
};

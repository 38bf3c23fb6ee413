import type { SlashCommand } from '../shared/slash-command.js';

/** /practice: The practice of a group */
export const practice: SlashCommand = {
  name: 'practice',
  words: 'The practice of a group',
  actions: [
    {
      name: 'start',
      words: 'Start the practice with the passages that are set',
      who: ['tutor', 'teacher'],
      does: { move: 'start-practice' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'pause',
      words: 'Pause the practice',
      who: ['tutor', 'teacher'],
      does: { move: 'pause-practice' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'resume',
      words: 'Go on after a pause',
      who: ['tutor', 'teacher'],
      does: { move: 'resume-practice' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'close',
      words: 'Close the part that is open',
      who: ['tutor', 'teacher'],
      does: { move: 'close-segment' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'undo-close',
      words: 'Open the last part again, within a day',
      who: ['tutor', 'teacher'],
      does: { move: 'undo-close' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'extend',
      words: 'Give the open part more school days',
      who: ['tutor', 'teacher'],
      does: { move: 'extend-segment' },
      options: [
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
        { name: 'days', words: 'School days, 1 to 5', kind: 'whole number', required: true },
      ],
    },
    {
      name: 'read-live',
      words: 'Mark what was read together, up to a stop',
      who: ['tutor', 'teacher'],
      does: { move: 'read-live' },
      options: [
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
        {
          name: 'to',
          words: 'The last stop read, counted from 1; the open one if left out',
          kind: 'whole number',
          required: false,
          from: 'stops',
        },
      ],
    },
    {
      name: 'end',
      words: 'End the practice of this passage',
      who: ['tutor', 'teacher'],
      does: { move: 'end-practice' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'where',
      words: 'Where are we?',
      who: ['pupil', 'tutor', 'teacher'],
      does: { look: 'where-are-we' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' }],
    },
    {
      name: 'leader',
      words: 'Name who leads',
      who: ['tutor', 'teacher'],
      does: { move: 'name-leader' },
      options: [
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
        { name: 'person', words: 'The pupil', kind: 'pick', required: true, from: 'pupils' },
      ],
    },
    {
      name: 'skip-leader',
      words: 'Let the next in the lot lead',
      who: ['tutor', 'teacher'],
      does: { move: 'skip-leader' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' }],
    },
    {
      name: 'pair-leader',
      words: 'Let a second pupil lead along',
      who: ['tutor', 'teacher'],
      does: { move: 'pair-leader' },
      options: [
        { name: 'group', words: 'The group', kind: 'pick', required: true, from: 'groups' },
        { name: 'person', words: 'The pupil', kind: 'pick', required: true, from: 'pupils' },
      ],
    },
    {
      name: 'table',
      words: 'The page for the table, in a live session',
      who: ['tutor', 'teacher'],
      does: { look: 'at-the-table' },
      options: [{ name: 'group', words: 'The group', kind: 'pick', required: false, from: 'groups' }],
    },
    {
      name: 'morning-list',
      words: 'Who does what today, to print',
      who: ['tutor', 'teacher'],
      does: { look: 'morning-list' },
      options: [],
    },
  ],
};

import type { FeedItem, Profile } from '../../shared/channel.js';
import type { Message } from '../../shared/messages.js';
import { message, own, part, prose, stepFields, groupId } from './fake-class.js';

/** What the fake house remembers and its looks show. */
export interface FakeState {
  readonly drafts: Map<string, { readonly text: string; readonly do: string }>;
  readonly feed: FeedItem[];
}

type FakeLook = (
  who: Profile,
  fields: Readonly<Record<string, string | undefined>>,
  state: FakeState,
) => readonly Message[];

const turn: FakeLook = (who, _fields, { drafts }) => {
  const draft = drafts.get(who.person);
  return [
    message(own(who), 'The limpet’s home, part 2', [
      { type: 'heading', text: 'The limpet’s home, part 2' },
      prose('Finch leads this part. It is open until Thursday at 4.'),
      { type: 'quotation', text: part, by: null, reading: true },
      {
        type: 'choices',
        prompt: 'Now it is your turn.',
        choices: [
          {
            label: 'Ask a question',
            action: { kind: 'look', name: 'step', args: { do: 'question' } },
            ...(draft === undefined ? { main: true as const } : {}),
          },
          { label: 'A word is hard', action: { kind: 'look', name: 'step', args: { do: 'clarify' } } },
          { label: 'Help me', action: { kind: 'move', name: 'ask-help', args: { do: 'question' } } },
        ],
      },
      ...(draft === undefined ? [] : feedback(who, draft).blocks),
      {
        type: 'choices',
        prompt: 'Elsewhere',
        choices: [
          { label: 'Our words', action: { kind: 'look', name: 'words', args: {} } },
          { label: 'Where are we?', action: { kind: 'look', name: 'where-are-we', args: {} } },
        ],
      },
      {
        type: 'form',
        title: 'Tell a grown-up',
        action: { kind: 'move', name: 'tell-grown-up', args: {} },
        fields: [{ kind: 'text', name: 'text', label: 'What is it?', required: false, max: 5000 }],
        submit: 'Tell a grown-up',
      },
    ]),
  ];
};

const step: FakeLook = (who, fields) => {
  const doing = fields['do'] ?? 'question';
  return [
    message(own(who), 'Your part', [
      { type: 'quotation', text: part, by: null, reading: true },
      {
        type: 'form',
        title: 'Say it in your own words',
        action: { kind: 'move', name: 'send-draft', args: { do: doing, stop: '1' } },
        fields: (stepFields[doing] ?? stepFields['question'] ?? []).map((field) =>
          field.kind === 'text' && fields['start'] !== undefined
            ? { ...field, value: fields['start'] }
            : field,
        ),
        submit: 'Show me what you think',
        main: true,
      },
      {
        type: 'choices',
        prompt: 'A start that may help:',
        choices: ['Why does', 'How can'].map((start) => ({
          label: `${start} …`,
          action: { kind: 'look' as const, name: 'step', args: { do: doing, start: `${start} ` } },
        })),
      },
    ]),
  ];
};

const forYou: FakeLook = (who, _fields, { drafts }) => {
  const draft = drafts.get(who.person);
  return draft === undefined ? [] : [feedback(who, draft)];
};

/** What a pupil is told about a draft. */
export function feedback(who: Profile, draft: { readonly text: string; readonly do: string }): Message {
  const post = `${who.person}-post`;
  return message(own(who), 'About your question', [
    { type: 'heading', text: 'About your question' },
    { type: 'quotation', text: draft.text, by: 'You' },
    prose('You asked why. That makes us think. Next, try for the big idea.'),
    {
      type: 'choices',
      prompt: null,
      choices: [
        { label: 'Post it', action: { kind: 'move', name: 'post-draft', args: { post } }, main: true },
        { label: 'Make it better', action: { kind: 'look', name: 'step', args: { do: draft.do, post } } },
      ],
    },
  ]);
}

const waiting: FakeLook = (who) => [
  message(own(who), 'Two posts wait', [
    { type: 'heading', text: 'Held: 2' },
    { type: 'quotation', text: 'why does the limpit go back to the same spot', by: 'Wren, a question' },
    prose('Why it waits: everything waits in this class.'),
    {
      type: 'choices',
      prompt: null,
      choices: [
        {
          label: 'Publish',
          action: { kind: 'move', name: 'release', args: { posts: 'wren-post' } },
          main: true,
        },
        { label: 'Remove', action: { kind: 'move', name: 'remove', args: { post: 'wren-post' } } },
      ],
    },
    {
      type: 'form',
      title: 'Send it back with a word',
      action: { kind: 'move', name: 'send-back', args: { post: 'wren-post' } },
      fields: [{ kind: 'text', name: 'note', label: 'What you want to say', required: true, max: 5000 }],
      submit: 'Send back',
    },
  ]),
];

const digest: FakeLook = (who) => [
  message(own(who), 'Digest of the group', [
    { type: 'heading', text: 'Seen so far' },
    { type: 'measure', label: 'Wren, questions', value: 3, of: 5, words: 'met 3 of 5; not enough yet' },
    {
      type: 'picture',
      picture: {
        kind: 'bars',
        alternative: 'Tries met by strategy, the whole group',
        data: [
          { label: 'question', value: 7, of: 10 },
          { label: 'clarify', value: 2, of: 6 },
          { label: 'sum-up', value: 4, of: 5 },
        ],
      },
    },
    {
      type: 'list',
      items: [
        [{ text: 'Finch', strong: true }, { text: ' has not answered yet.' }],
        [{ text: 'Ask Wren for the clue.' }],
      ],
    },
  ]),
];

const roster: FakeLook = (who) => [
  message(own(who), 'Who is in the class', [
    {
      type: 'list',
      items: [[{ text: 'Wren, pupil' }], [{ text: 'Finch, pupil' }], [{ text: 'Plover, tutor' }]],
    },
    {
      type: 'form',
      title: 'Add somebody',
      action: { kind: 'move', name: 'add-person', args: {} },
      fields: [
        { kind: 'line', name: 'nickname', label: 'A nickname, never a real name', required: true, max: 200 },
        {
          kind: 'pick',
          name: 'role',
          label: 'What they are',
          required: true,
          options: ['pupil', 'tutor', 'teacher'].map((value) => ({ value, label: value })),
        },
      ],
      submit: 'Add',
    },
  ]),
];

const passages: FakeLook = (who) => [
  message(own(who), 'Passages', [
    { type: 'list', items: [[{ text: 'The limpet’s home, 4 parts' }]] },
    {
      type: 'form',
      title: 'See how a text would be read',
      action: { kind: 'look', name: 'preview-text', args: {} },
      fields: [{ kind: 'text', name: 'text', label: 'The text', required: true, max: 262_144 }],
      submit: 'Preview',
    },
    {
      type: 'form',
      title: 'Add a passage from a file',
      action: { kind: 'move', name: 'add-passage', args: {} },
      fields: [{ kind: 'file', name: 'text', label: 'The file', required: true }],
      submit: 'Add',
    },
  ]),
];

const few =
  (heading: string, ...lines: string[]): FakeLook =>
  (who) => [
    message(own(who), heading, [{ type: 'heading', text: heading }, ...lines.map((line) => prose(line))]),
  ];

/** Each look of the fake house. */
export const fakeLooks: Readonly<Record<string, FakeLook>> = {
  turn,
  step,
  'for-you': forYou,
  waiting,
  digest,
  roster,
  passages,
  words: few('Words of this passage', 'clamp: to hold very tight', 'moist: a little wet'),
  'where-are-we': few('Part 2 of 4', 'Finch leads. Open until Thursday at 4.'),
  settings: few('Settings of the class', 'moderation: hold everything'),
  alarms: few('Alarms', 'No alarm is open.'),
  'alarm-words': few('Words of an alarm', 'sealed'),
  'morning-list': few('Today', 'Wren leads, Finch answers.'),
  'at-the-table': (who) => [
    message(own(who), 'At the table', [
      { type: 'quotation', text: part, by: null, reading: true },
      {
        type: 'choices',
        prompt: 'Who led?',
        choices: ['wren', 'finch'].map((one) => ({
          label: one,
          action: { kind: 'move' as const, name: 'note-led', args: { person: one } },
        })),
      },
    ]),
  ],
  'preview-text': (who, fields) => [
    message(own(who), 'Preview', [
      { type: 'heading', text: 'Preview' },
      { type: 'quotation', text: fields['text'] ?? '', by: null, reading: true },
    ]),
  ],
  preview: few('Preview', 'Four parts.'),
  post: few('A post', 'By Wren.'),
  help: few('Help', '/practice where'),
};

export const group = groupId;

import { asId, type GroupId, type PersonId } from '../../shared/ids.js';
import type { Action, Audience, Block, Choice, Message } from '../../shared/messages.js';
import { part, sentences, words } from '../support/fake-class.js';

export const audiences: readonly Audience[] = [
  { to: 'channel', group: asId<GroupId>('g1') },
  { to: 'person', person: asId<PersonId>('p1') },
  { to: 'staff', group: asId<GroupId>('g1') },
  { to: 'staff', group: null },
];

export function messageOf(blocks: readonly Block[], audience: Audience = audiences[0] as Audience): Message {
  return { audience, summary: 'What is new', blocks };
}

export function proseOf(text: string): Block {
  return { type: 'prose', prose: [{ text }] };
}

export function choicesOf(prompt: string | null, choices: readonly Choice[]): Block {
  return { type: 'choices', prompt, choices };
}

/** A form with every kind of field, five in all. */
export const everyField: Extract<Block, { type: 'form' }> = {
  type: 'form',
  title: 'A hard word',
  action: { kind: 'move', name: 'send-draft', args: { do: 'clarify' } },
  submit: 'Show me',
  main: true,
  fields: [
    { kind: 'word', name: 'word', label: 'Tap the word', source: part, ranges: words(part), required: true },
    {
      kind: 'sentence',
      name: 'place',
      label: 'Tap the sentence',
      source: part,
      ranges: sentences(part),
      required: false,
    },
    {
      kind: 'pick',
      name: 'fixUp',
      label: 'What did you try?',
      required: false,
      options: ['read it again', 'read on', 'ask'].map((value) => ({ value, label: value })),
    },
    {
      kind: 'line',
      name: 'title',
      label: 'A name for it',
      hint: 'A few words.',
      value: 'limpet',
      required: false,
      max: 200,
    },
    {
      kind: 'text',
      name: 'text',
      label: 'What may it mean?',
      hint: 'Read around it.',
      required: true,
      max: 5000,
    },
  ],
};

/** One block of each type. */
export const everyBlock: readonly Block[] = [
  { type: 'heading', text: 'The tide clock' },
  { type: 'prose', prose: [{ text: 'Wren leads ' }, { text: 'this part', strong: true }, { text: '.' }] },
  { type: 'quotation', text: 'Why do limpets go home?\nThey are slow.', by: 'Wren' },
  { type: 'quotation', text: part, by: null, reading: true },
  { type: 'list', items: [[{ text: 'scar' }], [{ text: 'clamps', strong: true }, { text: ' down' }]] },
  { type: 'measure', label: 'Questions', value: 3, of: 5, words: 'met 3 of 5' },
  {
    type: 'picture',
    picture: {
      kind: 'bars',
      alternative: 'Questions by kind, as bars',
      data: [
        { label: 'think', value: 2, of: 4 },
        { label: 'search', value: 1 },
      ],
    },
  },
  {
    type: 'picture',
    picture: { kind: 'code', alternative: 'The link as a square code', data: 'http://127.0.0.1/in/K7QM' },
  },
  choicesOf('What next?', [
    { label: 'Ask a question', action: { kind: 'look', name: 'step', args: { do: 'question' } }, main: true },
    { label: 'Quiet pass', action: { kind: 'move', name: 'quiet-pass', args: {} } },
  ]),
  everyField,
];

/** Texts of a block that have to reach whoever reads, in order; a form shows its title at least. */
export function textsOf(block: Block): readonly string[] {
  switch (block.type) {
    case 'heading':
      return [block.text];
    case 'prose':
      return [block.prose.map(({ text }) => text).join('')];
    case 'quotation':
      return block.by === null ? [block.text] : [block.text, block.by];
    case 'list':
      return block.items.map((item) => item.map(({ text }) => text).join(''));
    case 'measure':
      return [block.label, block.words];
    case 'picture': {
      const { alternative, data } = block.picture;
      return [alternative, ...(typeof data === 'string' ? [] : data.map(({ label }) => label))];
    }
    case 'choices':
      return [...(block.prompt === null ? [] : [block.prompt]), ...block.choices.map(({ label }) => label)];
    case 'form':
      return [block.title];
    default:
      return block satisfies never;
  }
}

const longStem =
  'What makes you think that the limpet came back before the tide went out, and how could you tell? …';

/** Actions of real moves and looks, short and long. */
export const everyAction: readonly Action[] = [
  { kind: 'look', name: 'turn', args: {} },
  { kind: 'look', name: 'step', args: { do: 'answer', question: 'a12' } },
  { kind: 'look', name: 'step', args: { do: 'question', start: 'Why do you think …?' } },
  { kind: 'look', name: 'step', args: { do: 'question', start: longStem } },
  { kind: 'look', name: 'digest', args: { group: 'g1' } },
  { kind: 'move', name: 'quiet-pass', args: {} },
  { kind: 'move', name: 'post-draft', args: { post: 'a12' } },
  { kind: 'move', name: 'respond', args: { post: 'a12', response: 'that is what I meant' } },
  { kind: 'move', name: 'review-word', args: { word: 'l’été, “shingle”: 🪨 = & ~ | ; %', known: 'no' } },
  {
    kind: 'move',
    name: 'release',
    args: { posts: Array.from({ length: 40 }, (_, n) => `a${n + 100}`).join(',') },
  },
  { kind: 'move', name: 'name-leader', args: { group: 'g1', person: 'p12' } },
];

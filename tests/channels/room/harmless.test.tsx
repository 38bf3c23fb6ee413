/** Whatever anybody writes is shown as words: through every block, field, label, nickname and form. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Block, Message } from '../../../shared/messages.js';
import { openContext } from '../../../src/channels/room/render/context.js';
import { MessageView } from '../../../src/channels/room/render/message.js';
import { plain } from '../../../src/channels/room/render/plain.js';
import { piecesOf } from '../../../src/channels/room/render/tap.js';
import { written } from '../../../src/channels/room/render/written.js';
import { message, own, slips, talkTo } from '../../support/fake-class.js';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker } from '../../support/walker.js';

const nasty = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</textarea><script>alert(1)</script>',
  '</title><svg onload=alert(1)>',
  '&lt;script&gt;',
  'javascript:alert(1)',
  '\u202Egnp.tpircs\u202C',
  'in\u200Bvi\u200Csi\u200Dble\uFEFF',
  'half \uD83D of an emoji',
  '@everyone <!channel> <@U1>',
  '{{7*7}} ${7*7} <%= 7 %>',
];

function everyBlock(text: string): readonly Block[] {
  return [
    { type: 'heading', text },
    { type: 'prose', prose: [{ text }, { text, strong: true }, { text, lang: text }] },
    { type: 'quotation', text, by: text },
    { type: 'quotation', text, by: text, reading: true },
    { type: 'list', items: [[{ text }]] },
    { type: 'measure', label: text, value: 1, of: 2, words: text },
    {
      type: 'picture',
      picture: { kind: 'bars', alternative: text, data: [{ label: text, value: 1, of: 2 }] },
    },
    { type: 'picture', picture: { kind: 'code', alternative: text, data: 'x' } },
    {
      type: 'choices',
      prompt: text,
      choices: [
        { label: text, action: { kind: 'move', name: text, args: { post: text } }, main: true },
        { label: text, action: { kind: 'look', name: text, args: { post: text } } },
        { label: text, action: { kind: 'look', name: 'step', args: { do: text, post: text } } },
      ],
    },
    {
      type: 'form',
      title: text,
      action: { kind: 'move', name: text, args: { do: text } },
      submit: text,
      fields: [
        { kind: 'line', name: 'a', label: text, hint: text, value: text, required: true, max: 200 },
        { kind: 'text', name: 'b', label: text, hint: text, value: text, required: true, max: 200 },
        {
          kind: 'pick',
          name: 'c',
          label: text,
          options: [{ value: text, label: text }],
          required: true,
          value: text,
        },
        {
          kind: 'pick',
          name: 'd',
          label: text,
          options: Array.from({ length: 9 }, () => ({ value: text, label: text })),
          required: false,
        },
        {
          kind: 'sentence',
          name: 'e',
          label: text,
          source: text,
          ranges: [{ start: 0, end: 4 }],
          required: false,
        },
        { kind: 'file', name: 'f', label: text, required: false },
      ],
    },
  ];
}

function render(it: Message): string {
  const context = openContext('t', { token: 'token', back: '/', kept: null, scribe: true, headings: 2 });
  return written(<MessageView message={it} context={context} seq={1} at={0} />);
}

/** Names of elements and attributes that stand in a page. */
function markOf(html: string): string[] {
  return [...html.matchAll(/<\/?([a-zA-Z][^\s/>]*)((?:"[^"]*"|[^>"])*)>/gu)].flatMap(
    ([, name = '', rest = '']) => [
      name,
      ...[...rest.matchAll(/([^\s="]+)(?:="[^"]*")?/gu)].map(([, attribute = '']) => `${name} ${attribute}`),
    ],
  );
}

/** What is seen: values that only travel along (arguments, options) are left out. */
function unmarked(html: string): string {
  return html.replace(/<(?:input|option)\b[^>]*>/gu, '');
}

describe('A text in a message', () => {
  const harmless = new Set(markOf(render(message(talkTo, 'calm words', everyBlock('calm words')))));

  test.each(nasty)('%j adds no element and no attribute', (text) => {
    const html = render(message(talkTo, text, everyBlock(text)));
    for (const mark of markOf(html)) expect(harmless).toContain(mark);
    expect(unmarked(html)).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/u);
    expect(unmarked(html).isWellFormed()).toBe(true);
  });

  test('leads only to addresses of the room', () => {
    for (const text of nasty) {
      const html = render(message(talkTo, text, everyBlock(text)));
      for (const [, href = ''] of html.matchAll(/(?:href|action)="([^"]*)"/gu))
        expect(href).toMatch(/^\/[a-z]/u);
    }
  });

  test('keeps joiners inside an emoji and what other scripts need', () => {
    expect(plain('👩‍🚀 نص עברית')).toBe('👩‍🚀 نص עברית');
  });
});

describe('A text to tap in', () => {
  test('is cut where the ranges say, all of it, once', () => {
    const source = 'One. Two! Three?';
    const ranges = [
      { start: 5, end: 9 },
      { start: 0, end: 4 },
      { start: 3, end: 7 },
      { start: 10, end: 99 },
    ];
    const pieces = piecesOf(source, ranges);
    expect(pieces.map(({ text }) => text).join('')).toBe(source);
    expect(pieces.filter(({ value }) => value !== null)).toEqual([
      { text: 'One.', value: '0-4' },
      { text: 'Two!', value: '5-9' },
    ]);
  });
});

describe('A page of the room', () => {
  let room: OpenRoom;
  beforeEach(async () => {
    room = await openRoom();
  });
  afterEach(() => room.stop());

  test.each(nasty)(
    'shows %j as words: in the talk, in a form kept after a refusal, in what is left to copy',
    async (text) => {
      const walker = openWalker(room.url);
      await walker.signIn('WREN-2345-67');
      room.house.post(message(talkTo, text, [{ type: 'quotation', text, by: text }]));
      const step = await walker.get('/step/question');
      const form = formTo(step.text, '/move/send-draft');
      const pages = [
        await walker.get('/talk'),
        await walker.send(form, { text: `refuse me ${text}` }),
        await walker.send(
          { ...form, fields: { ...form.fields, _back: '/words' } },
          { text: `refuse me ${text}`, _update: '' },
        ),
        await walker.send(form, { text, _update: '' }),
        await walker.get(`/step/question?start=${encodeURIComponent(text.toWellFormed())}`),
      ];
      for (const page of pages) {
        expect(markOf(page.text).filter((mark) => /^(?:img|svg onload|\S+ on\w+)$/iu.test(mark))).toEqual([]);
        expect(page.text.match(/<script/giu)).toHaveLength(1);
        expect(unmarked(page.text)).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/u);
      }
    },
  );

  test('shows a nickname and a class name as words', async () => {
    const wren = slips['WREN-2345-67'];
    room.house.profile = async () => ({ ...wren!, nickname: nasty[0]!, className: nasty[1]! });
    const walker = openWalker(room.url);
    const page = await walker.signIn('WREN-2345-67');
    expect(page.text).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(page.text).not.toContain('<script>alert');
    expect(page.text).not.toContain('<img');
  });

  test('keeps a code that opened nothing as words', async () => {
    const walker = openWalker(room.url);
    const page = await walker.signIn(nasty[1]!);
    expect(page.text).toContain('value="&quot;&gt;&lt;img');
  });

  test('shows a reply’s private words to nobody else', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('FNCH-2345-67');
    room.house.post(
      message(own({ person: slips['WREN-2345-67']!.person }), 'for Wren', [
        { type: 'heading', text: 'for Wren' },
      ]),
    );
    for (const path of ['/', '/talk', '/for-you'])
      expect((await walker.get(path)).text).not.toContain('for Wren');
  });
});

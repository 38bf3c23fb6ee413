import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { Action } from '../../../shared/messages.js';
import { pack, packPress, unpack, unpackPress, type Press } from '../../../src/channels/slack/press-code.js';
import { parted, plain } from '../../../src/channels/slack/plain.js';
import { manifestOf, scopes } from '../../../src/channels/slack/manifest.js';
import { registeredName } from '../../../src/channels/slack/own-commands.js';
import { formView } from '../../../src/channels/slack/render/view.js';
import { say, slackWords, type SlackWord } from '../../../src/channels/slack/words.js';
import { slashCommands } from '../../../commands/all.js';
import { liveIn, messageBreaches, viewBreaches } from '../../support/slack-limits.js';

const text = (words: string) => ({ type: 'plain_text', text: words, emoji: false });

describe('The checker of limits catches', () => {
  it.each([
    ['a header that is too long', { type: 'header', text: text('x'.repeat(151)) }],
    ['an empty text', { type: 'header', text: text('') }],
    [
      'a button’s value that is too long',
      {
        type: 'actions',
        elements: [{ type: 'button', action_id: 'a', text: text('x'), value: 'x'.repeat(2001) }],
      },
    ],
    [
      'a label that is too long',
      { type: 'actions', elements: [{ type: 'button', action_id: 'a', text: text('x'.repeat(76)) }] },
    ],
    [
      'two actions of one id',
      { type: 'actions', elements: [1, 2].map(() => ({ type: 'button', action_id: 'a', text: text('x') })) },
    ],
    ['a field of no block', { type: 'divider', colour: 'red' }],
    ['a block that is none', { type: 'poem' }],
    ['a block id that is too long', { type: 'divider', block_id: 'x'.repeat(256) }],
  ])('%s', (_, block) => {
    expect(messageBreaches({ text: 'x', blocks: [block] })).not.toEqual([]);
  });
  it('too many blocks, too much text, inputs without a button', () => {
    const dividers = Array.from({ length: 51 }, () => ({ type: 'divider' }));
    expect(messageBreaches({ text: 'x', blocks: dividers })).not.toEqual([]);
    const long = { type: 'section', text: text('x'.repeat(2800)) };
    expect(messageBreaches({ text: 'x', blocks: [long, long, long, long, long] })).not.toEqual([]);
    const input = { type: 'input', label: text('x'), element: { type: 'plain_text_input', action_id: 'in' } };
    expect(viewBreaches({ type: 'modal', title: text('x'), blocks: [input] })).toEqual([
      'inputs without a button to send them',
    ]);
  });
  it('what Slack would parse', () => {
    expect(liveIn({ text: 'hello <!channel>' })).not.toEqual([]);
    expect(
      liveIn({ text: 'x', blocks: [{ type: 'section', text: { type: 'mrkdwn', text: '*x*' } }] }),
    ).not.toEqual([]);
    expect(
      liveIn({ text: 'x', blocks: [{ type: 'header', text: { type: 'plain_text', text: ':tada:' } }] }),
    ).not.toEqual([]);
    expect(liveIn({ text: 'hello &lt;!channel&gt;', blocks: [] })).toEqual([]);
  });
});

describe('What a button carries', () => {
  const action: Action = {
    kind: 'move',
    name: 'respond',
    args: { post: 'a12', response: 'look again here' },
  };
  const presses: readonly Press[] = [
    { press: 'act', action },
    { press: 'page', look: { name: 'digest', args: { group: 'g1' } }, page: 3 },
    { press: 'fill', look: { name: 'turn', args: {} }, form: 2 },
    { press: 'bind', audience: { to: 'staff', group: null }, name: 'Staff', sure: true },
    { press: 'fill here', form: { type: 'form', title: 'T', action, fields: [], submit: 'Send' } },
  ];
  it.each(presses.map((press) => [press.press, press] as const))('%s comes back as it was', (_, press) => {
    expect(unpackPress(packPress(press, 2000) ?? '')).toEqual(press);
  });
  it('is squeezed where it is long, and refused where even that is too long', () => {
    const posts = Array.from({ length: 600 }, (_, n) => `a${n}`).join(',');
    const long = pack(posts, 2000);
    expect(long?.length).toBeLessThanOrEqual(2000);
    expect(unpack(long ?? '')).toBe(posts);
    const noise = Array.from({ length: 100 }, (_, n) =>
      createHash('sha256').update(String(n)).digest('base64'),
    ).join('');
    expect(pack(noise, 200)).toBeNull();
  });
  it('that would swell without end is not opened', () => {
    const bomb = pack('a'.repeat(2_000_000), 10_000);
    expect(bomb).not.toBeNull();
    expect(unpack(bomb ?? '')).toBeNull();
  });
});

describe('A form', () => {
  it.each([3, 11, 100, 101, 450])(
    'with a text of %i words to tap stays within the limits, each word once',
    (many) => {
      const words = Array.from({ length: many }, (_, n) => `word${n % 60}`);
      const source = words.join(' ');
      const ranges = words.map((word, at) => {
        const start = words.slice(0, at).join(' ').length + (at === 0 ? 0 : 1);
        return { start, end: start + word.length };
      });
      const view = formView({
        type: 'form',
        title: 'A hard word',
        action: { kind: 'move', name: 'send-draft', args: { do: 'clarify' } },
        fields: [{ kind: 'word', name: 'place', label: 'Tap the word', source, ranges, required: true }],
        submit: 'Show me',
      });
      const { length } = JSON.stringify(view).match(/"value":"\d+-\d+"/gu) ?? [];
      expect(length).toBe(many);
      expect(viewBreaches(view as never)).toEqual([]);
    },
  );
});

describe('A text', () => {
  it('is parted between lines, sentences or words, and nothing of it is lost', () => {
    const long = `${'A tide comes in. '.repeat(50)}\n${'x'.repeat(300)}${'😀'.repeat(200)}`;
    const parts = parted(long, 100);
    expect(parts.join('')).toBe(long);
    expect(Math.max(...parts.map(({ length }) => length))).toBeLessThanOrEqual(100);
    expect(parts.every((part) => part.isWellFormed())).toBe(true);
  });
  it('keeps what scripts need: joiners, marks, right-to-left letters', () => {
    for (const fine of ['क्‍ष', '👩‍👧', 'Việt Nam', 'שלום', 'e\u0301']) expect(plain(fine)).toBe(fine);
  });
});

it('Words for pupils name no level and blame nobody, and every slot of a sentence is filled', () => {
  for (const [key, { words, for: whom }] of Object.entries(slackWords)) {
    if (whom === 'pupil') expect(words, key).not.toMatch(/copied|wrong|level|literal|inferential|segment/iu);
    const slots: Record<string, string> = {};
    for (const [, name = ''] of words.matchAll(/\{(\w+)\}/gu)) slots[name] = 'x';
    expect(say(key as SlackWord, slots), key).not.toMatch(/[{}]/u);
  }
});

describe('The manifest', () => {
  it('has every slash command under a name that Slack leaves free, and every permission with its reason', () => {
    const manifest = manifestOf(slashCommands, {
      base: 'https://school.example/',
      socket: false,
      many: false,
    }) as {
      features: { slash_commands: { command: string; url: string }[] };
      oauth_config: { scopes: { bot: string[] } };
    };
    const names = manifest.features.slash_commands.map(({ command }) => command);
    expect(names).toEqual(
      expect.arrayContaining(['/passages', '/turnstone-join', '/turnstone-help', '/here', '/turn']),
    );
    expect(names).toHaveLength(slashCommands.length + 3);
    expect(new Set(manifest.features.slash_commands.map(({ url }) => url))).toEqual(
      new Set(['https://school.example/slack/events']),
    );
    expect(manifest.oauth_config.scopes.bot).toEqual(scopes.map(({ name }) => name));
    expect(scopes.every(({ why, without }) => why.length > 10 && without.length > 10)).toBe(true);
    expect(registeredName('held')).toBe('held');
  });
  it('names no address where a socket is used', () => {
    const socket = { base: null, socket: true, many: false };
    expect(JSON.stringify(manifestOf(slashCommands, socket))).not.toContain('url');
  });
  it('names where browsers come back to and hears of workspaces that leave, where many install it', () => {
    const manifest = manifestOf(slashCommands, {
      base: 'https://school.example',
      socket: true,
      many: true,
    });
    expect(manifest).toMatchObject({
      oauth_config: { redirect_urls: ['https://school.example/slack/oauth_redirect'] },
      settings: { event_subscriptions: { bot_events: ['app_uninstalled', 'tokens_revoked'] } },
    });
    expect(JSON.stringify(manifest)).not.toContain('/slack/events');
  });
});

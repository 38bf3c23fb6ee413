import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Channel, Delivery, House } from '../../shared/channel.js';
import type { Action, Block, Choice, Message } from '../../shared/messages.js';
import { openFakeHouse, type FakeHouse } from '../support/fake-house.js';
import {
  audiences,
  choicesOf,
  everyAction,
  everyBlock,
  everyField,
  messageOf,
  proseOf,
  textsOf,
} from './channel-messages.js';
import { hostileTexts } from './hostile-texts.js';

/** A choice or a form as it stands in a payload, its id read back. */
export interface Pressable {
  readonly label: string;
  readonly does: 'act' | 'open';
  /** The choice's action, or the action of the form that it opens. */
  readonly action: Action;
  readonly main: boolean;
}

/** A channel's pure renderer with what the contract needs to look at its payloads. */
export interface RendererUnderContract {
  /** A message that answered a look (`origin`), or one that was told (null), as payloads in order. */
  render(message: Message, origin: Action | null): readonly unknown[];
  /** A form as it opens. */
  open(form: Extract<Block, { type: 'form' }>): unknown;
  /** Every word that a reader meets in a payload or an opened form, labels included, the platform's escapes undone. */
  seen(payload: unknown): string;
  /** What can be pressed, in order; ids are read back, with the help of the message where they stand for something long. */
  pressables(payload: unknown, message: Message): readonly Pressable[];
  /** What the platform would act upon or draw in its own way because of a text: mentions, links, fences, weight. */
  live(payload: unknown): readonly string[];
  /** Published limits that are broken, in words. */
  breaches(payload: unknown): readonly string[];
  /** Whether a payload may be as long as it likes, so that nothing is ever split. */
  readonly unlimited?: true;
}

/** A channel with its stand-in, open. */
export interface OpenChannel {
  readonly channel: Channel;
  readonly tenant: string;
  readonly room: string;
  /** Texts of the messages that stand in the room, oldest first, as seen. */
  standing(): readonly string[];
  /** What the bot itself wrote, and what somebody else wrote, comes in as the platform's updates do. */
  echo(): Promise<void>;
  stop(): Promise<void>;
}

const wordsOf = (text: string): readonly string[] => text.match(/[\p{L}\p{N}]+/gu) ?? [];

/** Whether all words of `part` stand in `whole` in order, others between them or not. */
function stands(part: string, whole: string): boolean {
  const all = wordsOf(whole);
  let at = 0;
  return wordsOf(part).every((word) => {
    at = all.indexOf(word, at) + 1;
    return at > 0;
  });
}

const turn: Action = { kind: 'look', name: 'turn', args: {} };

/** What every renderer promises, whatever the platform. */
export function rendererContract(name: string, renderer: RendererUnderContract): void {
  const rendered = (message: Message, origin: Action | null = turn) => {
    const payloads = renderer.render(message, origin);
    for (const payload of payloads) expect(renderer.breaches(payload)).toEqual([]);
    return payloads;
  };
  const seen = (payloads: readonly unknown[]): string => payloads.map((one) => renderer.seen(one)).join('\n');
  const pressed = (payloads: readonly unknown[], message: Message) =>
    payloads.flatMap((one) => renderer.pressables(one, message));

  describe(`${name} renders every block`, () => {
    it.each(everyBlock.map((block, at) => [`${at} ${block.type}`, block] as const))(
      'block %s',
      (_, block) => {
        const all = seen(rendered(messageOf([block])));
        for (const text of textsOf(block)) expect(stands(text, all), text).toBe(true);
      },
    );

    it.each(audiences.map((audience) => [JSON.stringify(audience), audience] as const))(
      'for the audience %s',
      (_, audience) => {
        const blocks = everyBlock.filter(({ type }) => type !== 'choices' && type !== 'form');
        const all = seen(rendered(messageOf(blocks, audience)));
        expect(stands(blocks.flatMap(textsOf).join(' '), all)).toBe(true);
      },
    );

    it('shows a message without blocks by its summary', () => {
      expect(stands('What is new', seen(rendered(messageOf([]))))).toBe(true);
    });

    it('puts the one next thing first among its choices, and lets it stand out alone', () => {
      const message = messageOf([
        proseOf('What now?'),
        choicesOf(null, [
          { label: 'Quiet pass', action: { kind: 'move', name: 'quiet-pass', args: {} } },
          { label: 'My words', action: { kind: 'look', name: 'words', args: {} } },
          { label: 'My page', action: turn, main: true },
        ]),
      ]);
      const all = pressed(rendered(message), message);
      expect(all.map(({ label }) => label)).toEqual(['My page', 'Quiet pass', 'My words']);
      expect(all.map(({ main }) => main)).toEqual([true, false, false]);
    });
  });

  describe(`${name} keeps within every limit and cuts nothing silently`, () => {
    const sentence = (n: number): string =>
      `In part ${n} the limpet number ${n} went home before the sea came back.`;
    const long = (from: number, many: number): string =>
      Array.from({ length: many }, (_, n) => sentence(from + n)).join(' ');

    it('splits between blocks where a message is too long', () => {
      const blocks = Array.from({ length: 70 }, (_, n) => proseOf(long(n * 10, 5)));
      const payloads = rendered(messageOf(blocks));
      expect(payloads.length > 1).toBe(renderer.unlimited !== true);
      expect(wordsOf(seen(payloads)).filter((word) => /^\d+$/.test(word))).toEqual(
        wordsOf(blocks.flatMap(textsOf).join(' ')).filter((word) => /^\d+$/.test(word)),
      );
      for (const block of blocks) {
        const text = textsOf(block).join(' ');
        expect(payloads.filter((one) => stands(text, renderer.seen(one)))).toHaveLength(1);
      }
    });

    it.each([
      ['prose', (text: string): Block => proseOf(text)],
      ['quotation', (text: string): Block => ({ type: 'quotation', text, by: 'Wren' })],
      ['reading', (text: string): Block => ({ type: 'quotation', text, by: null, reading: true })],
      ['list', (text: string): Block => ({ type: 'list', items: [[{ text }]] })],
      ['heading', (text: string): Block => ({ type: 'heading', text })],
    ])('splits one long %s at the ends of sentences', (_, block) => {
      const text = long(0, 300);
      const payloads = rendered(messageOf([block(text)]));
      expect(payloads.length > 1).toBe(renderer.unlimited !== true);
      const all = seen(payloads);
      for (let n = 0; n < 300; n += 1) {
        expect(payloads.some((one) => renderer.seen(one).replace(/\s+/gu, ' ').includes(sentence(n)))).toBe(
          true,
        );
      }
      expect(stands(text, all)).toBe(true);
    });

    it('splits one endless sentence between words, and one endless word somewhere', () => {
      const words = Array.from({ length: 3000 }, (_, n) => `limpet${n}`).join(' ');
      expect(stands(words, seen(rendered(messageOf([proseOf(words)]))))).toBe(true);
      const endless = 'abcdefghij'.repeat(1500);
      const all = seen(rendered(messageOf([proseOf(endless)]))).replace(/[^a-j]/gu, '');
      expect(all).toContain(endless);
    });

    it('splits what is full of marks that need escaping', () => {
      const text = Array.from({ length: 900 }, (_, n) => `*_~${n}~_* <&>`).join(' ');
      expect(stands(text, seen(rendered(messageOf([proseOf(text)]))))).toBe(true);
    });

    it('carries more choices than fit, each once', () => {
      const choices = Array.from({ length: 130 }, (_, n): Choice => ({
        label: `Choice ${n}`,
        action: { kind: 'move', name: 'post-draft', args: { post: `a${n}` } },
      }));
      const message = messageOf([choicesOf('Which?', choices)]);
      expect(pressed(rendered(message), message).map(({ action }) => action)).toEqual(
        choices.map(({ action }) => action),
      );
    });

    it('shows a label whole that is too long for a button', () => {
      const label = long(0, 5);
      const message = messageOf([choicesOf(null, [{ label, action: turn }])]);
      const payloads = rendered(message);
      expect(stands(label, seen(payloads))).toBe(true);
      expect(pressed(payloads, message).map(({ action }) => action)).toEqual([turn]);
    });

    it('keeps a long list, many measures and a long table whole', () => {
      const items = Array.from({ length: 200 }, (_, n) => [{ text: sentence(n) }]);
      const data = Array.from({ length: 80 }, (_, n) => ({ label: `limpet ${n}`, value: n, of: 80 }));
      const blocks: readonly Block[] = [
        { type: 'list', items },
        ...data.map(({ label, value, of }): Block => ({
          type: 'measure',
          label,
          value,
          of,
          words: `${value} of ${of}`,
        })),
        { type: 'picture', picture: { kind: 'bars', alternative: 'All limpets', data } },
      ];
      expect(stands(blocks.flatMap(textsOf).join(' '), seen(rendered(messageOf(blocks))))).toBe(true);
    });
  });

  describe(`${name} makes hostile texts inert`, () => {
    const slots: readonly (readonly [string, (text: string) => Block])[] = [
      ['prose', proseOf],
      ['strong prose', (text) => ({ type: 'prose', prose: [{ text, strong: true }] })],
      ['heading', (text) => ({ type: 'heading', text })],
      ['quotation', (text) => ({ type: 'quotation', text, by: null })],
      ['reading', (text) => ({ type: 'quotation', text, by: null, reading: true })],
      ['who said it', (text) => ({ type: 'quotation', text: 'Yes.', by: text })],
      ['list', (text) => ({ type: 'list', items: [[{ text }], [{ text }]] })],
      ['measure', (text) => ({ type: 'measure', label: text, value: 1, of: 2, words: text })],
      [
        'picture',
        (text) => ({
          type: 'picture',
          picture: { kind: 'bars', alternative: text, data: [{ label: text, value: 1 }] },
        }),
      ],
      ['prompt and label', (text) => choicesOf(text, [{ label: text, action: turn }])],
    ];
    describe.each(hostileTexts.map((row) => [...row] as const))('%s', (_, text, words) => {
      it.each(slots)('in %s', (_slot, block) => {
        const payloads = rendered(messageOf([block(text)]));
        expect(payloads.flatMap((one) => renderer.live(one))).toEqual([]);
        const all = seen(payloads);
        expect(stands(words, all), all).toBe(true);
        expect(all).not.toMatch(/[\u0000-\u0008\u202a-\u202e\u2066-\u2069\u200b\u2060\ufeff]/u);
        expect(all).not.toMatch(/\p{M}{5}/u);
        expect(all.isWellFormed()).toBe(true);
      });

      it('in a form', () => {
        const opened = renderer.open({
          ...everyField,
          title: text,
          fields: [
            { kind: 'line', name: 'title', label: text, hint: text, required: true, max: 200 },
            {
              kind: 'sentence',
              name: 'place',
              label: text,
              source: text,
              ranges: [{ start: 0, end: text.length }],
              required: true,
            },
          ],
        });
        expect(renderer.breaches(opened)).toEqual([]);
        expect(renderer.live(opened)).toEqual([]);
      });
    });
  });

  describe(`${name} brings actions back as they were`, () => {
    it.each(everyAction.map((action) => [JSON.stringify(action).slice(0, 90), action] as const))(
      '%s',
      (_, action) => {
        const message = messageOf([choicesOf(null, [{ label: 'Press', action }])]);
        expect(pressed(rendered(message), message)).toEqual([
          { label: 'Press', does: 'act', action, main: false },
        ]);
      },
    );

    it('opens a form by what can be pressed', () => {
      const message = messageOf([everyField]);
      const all = pressed(rendered(message), message);
      expect(all.map(({ does, action, main }) => ({ does, action, main }))).toEqual([
        { does: 'open', action: everyField.action, main: true },
      ]);
    });

    it('opens a form with all labels, hints and what stands in it already', () => {
      const opened = renderer.open(everyField);
      expect(renderer.breaches(opened)).toEqual([]);
      const all = renderer.seen(opened);
      for (const field of everyField.fields) expect(stands(field.label, all), field.label).toBe(true);
      expect(stands('A few words', all)).toBe(true);
      expect(JSON.stringify(opened)).toContain('limpet');
    });
  });
}

/** What every channel promises over its stand-in. */
export function channelContract(name: string, open: (house: House) => Promise<OpenChannel>): void {
  describe(`${name} delivers`, () => {
    let house: FakeHouse;
    let there: OpenChannel;
    beforeEach(async () => {
      house = openFakeHouse();
      there = await open(house);
    });
    afterEach(() => there.stop());

    const say = (text: string, more: Partial<Delivery> = {}): Delivery => ({
      tenant: there.tenant,
      room: there.room,
      telling: { do: 'say', key: 'k1', message: messageOf([proseOf(text)]) },
      before: null,
      nonce: 'n'.padEnd(25, '0'),
      ...more,
    });
    const deliver = async (delivery: Delivery): Promise<string | null> => {
      const outcome = await there.channel.deliver?.(delivery);
      if (!outcome || !('sent' in outcome)) throw new Error(`not sent: ${JSON.stringify(outcome)}`);
      return outcome.sent;
    };
    const standing = (): string => there.standing().join('\n');

    it('says a message once, also where it is sent twice', async () => {
      const first = await deliver(say('The tide is out.'));
      expect(first).not.toBeNull();
      expect(await deliver(say('The tide is out.'))).toBe(first);
      expect(there.standing()).toHaveLength(1);
      expect(standing()).toContain('The tide is out.');
    });

    it('says a long message in order and whole', async () => {
      const blocks = Array.from({ length: 60 }, (_, n) => proseOf(`Line ${n} ${'of the tide. '.repeat(20)}`));
      await deliver(say('', { telling: { do: 'say', key: 'k1', message: messageOf(blocks) } }));
      const numbers = [...standing().matchAll(/Line (\d+)/gu)].map((found) => Number(found[1]));
      expect(numbers).toEqual(Array.from({ length: 60 }, (_, n) => n));
    });

    it('replaces, withdraws, and withdraws again', async () => {
      const before = await deliver(say('The tide is out.'));
      const replaced = await deliver(
        say('', {
          telling: { do: 'replace', key: 'k1', message: messageOf([proseOf('The sea is back.')]) },
          before,
        }),
      );
      expect(there.standing()).toHaveLength(1);
      expect(standing()).toContain('The sea is back.');
      const withdraw: Delivery = say('', {
        telling: { do: 'withdraw', key: 'k1', audience: { ...messageOf([]).audience } },
        before: replaced,
      });
      await deliver(withdraw);
      expect(there.standing()).toEqual([]);
      await deliver(withdraw);
    });

    it('says anew what was to be replaced and is not there', async () => {
      const telling = {
        do: 'replace',
        key: 'k1',
        message: messageOf([proseOf('The sea is back.')]),
      } as const;
      await deliver(say('', { telling }));
      expect(standing()).toContain('The sea is back.');
    });

    it('tells whether a message stands', async () => {
      const delivery = say('The tide is out.');
      const id = await deliver(delivery);
      await deliver(say('Another.', { nonce: 'm'.padEnd(25, '0') }));
      expect(await there.channel.stands?.(delivery)).toEqual({ id });
      expect(await there.channel.stands?.(say('Never said.', { nonce: 'x'.padEnd(25, '0') }))).toBeNull();
    });

    it('stops a message for a room that is not there, with words for staff', async () => {
      const outcome = await there.channel.deliver?.(say('Hello', { room: '404' }));
      expect(outcome).toMatchObject({ stuck: expect.stringMatching(/^Cannot /u) as string });
    });

    it('takes no notice of what is written in the room, by itself or by others', async () => {
      await deliver(say('The tide is out.'));
      await there.echo();
      expect(house.updates).toEqual([]);
      expect(house.commands).toEqual([]);
      expect(there.standing().length).toBeLessThanOrEqual(3);
    });
  });
}

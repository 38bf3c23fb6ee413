import type { KnownBlock } from '@slack/types';
import type { Action, Message } from '../../../shared/messages.js';
import { formsOf } from '../../../src/channels/slack/render/blocks.js';
import { payloadsOf, type Payload } from '../../../src/channels/slack/render/payload.js';
import { formView } from '../../../src/channels/slack/render/view.js';
import { unpackPress } from '../../../src/channels/slack/press-code.js';
import { rendererContract, type Pressable } from '../../contracts/channel-contract.js';
import { liveIn, messageBreaches, viewBreaches, wordsSeen } from '../../support/slack-limits.js';

type Json = Readonly<Record<string, unknown>>;

function pressed(
  label: string,
  value: string | undefined,
  main: boolean,
  message: Message,
): readonly Pressable[] {
  const press = unpackPress(value);
  const open = (action: Action | undefined): readonly Pressable[] =>
    action ? [{ label, does: 'open', action, main }] : [];
  switch (press?.press) {
    case 'act':
      return [{ label, does: 'act', action: press.action, main }];
    case 'fill':
      return open(formsOf([message])[press.form]?.action);
    case 'fill here':
      return open(press.form.action);
    case 'page':
    case 'bind':
    case undefined:
      return [];
    default:
      return press satisfies never;
  }
}

function pressables({ blocks }: Payload, message: Message): readonly Pressable[] {
  return blocks.flatMap((block: KnownBlock) =>
    block.type === 'actions'
      ? block.elements.flatMap((one) =>
          one.type === 'button' ? pressed(one.text.text, one.value, one.style === 'primary', message) : [],
        )
      : [],
  );
}

rendererContract('Slack', {
  render: (message, origin) =>
    payloadsOf([message], origin === null ? null : { name: origin.name, args: origin.args }),
  open: (form) => formView(form),
  seen: wordsSeen,
  pressables: (payload, message) => pressables(payload as Payload, message),
  live: (payload) => liveIn(payload as Json),
  breaches: (payload) =>
    (payload as Json)['type'] === 'modal' ? viewBreaches(payload as Json) : messageBreaches(payload as Json),
});

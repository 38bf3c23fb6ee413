import type { Action, Message } from '../../shared/messages.js';
import { hashOf, readPressed } from '../../src/channels/discord/custom-id.js';
import { modalOf } from '../../src/channels/discord/render/modal.js';
import { payloadsOf } from '../../src/channels/discord/render/payloads.js';
import type { Pressable, RendererUnderContract } from '../contracts/channel-contract.js';
import { messageFaults, modalFaults, partsOf, type AnyPayload } from './discord-limits.js';

/** Markdown as a reader sees it: escapes undone, the channel's own marks gone. */
export function seenMarkdown(text: string): string {
  return text
    .replace(/^(?:> |### |- )/gmu, '')
    .replace(/(?<!\\)\*\*/gu, '')
    .replace(/\\([^0-9A-Za-z\s])/gu, '$1');
}

/** Every text of a payload in order: content, laid-out text, labels, descriptions, options. */
export function seenText(payload: AnyPayload): string {
  const lines = [
    payload.title ?? '',
    seenMarkdown(payload.content ?? ''),
    ...partsOf(payload).flatMap(({ content, label, description, placeholder, options }) => [
      seenMarkdown(content ?? ''),
      label ?? '',
      description ?? '',
      placeholder ?? '',
      ...(options ?? []).flatMap((one) => [one.label ?? '', one.description ?? '']),
    ]),
  ];
  return lines.filter((line) => line !== '').join('\n');
}

/** What of markdown is alive: everything that stands unescaped and isn't a mark of the channel's own. */
function liveMarkdown(text: string): readonly string[] {
  const bare = text.replace(/\\[^0-9A-Za-z\s]/gu, 'x').replaceAll('**', '');
  const alive = [
    /@(?:everyone|here)/u,
    /<[@#!&:at/]/u,
    /`/u,
    /\]\(/u,
    /https?:\/\//u,
    /\|\|/u,
    /~~/u,
    /__/u,
    /[*_]/u,
  ];
  const atStart = [/^(?:> |- )?#{1,2} /mu, /^(?:> |- )?-# /mu, /^(?:> >|>(?! ))/mu, /^\s*\d+\. /mu];
  return [...alive, ...atStart].flatMap((pattern) => pattern.exec(bare)?.[0] ?? []);
}

function actionsIn(message: Message): readonly Action[] {
  return message.blocks.flatMap((block) => {
    if (block.type === 'form') return [block.action];
    return block.type === 'choices' ? block.choices.map(({ action }) => action) : [];
  });
}

/** What can be pressed in a payload, in order. */
export function pressablesOf(payload: AnyPayload, message: Message): readonly Pressable[] {
  return partsOf(payload)
    .filter(({ type }) => type === 2)
    .map(({ custom_id = '', label = '', style }) => {
      const pressed = readPressed(custom_id);
      const main = style === 1;
      if (pressed?.does === 'act') return { label, does: 'act', action: pressed.action, main };
      if (pressed?.does !== 'open' && pressed?.does !== 'long')
        throw new Error(`a strange button ${custom_id}`);
      const action = actionsIn(message).find((one) => hashOf(one) === pressed.hash);
      if (!action) throw new Error(`no action for ${custom_id}`);
      return { label, does: pressed.does === 'open' ? 'open' : 'act', action, main };
    });
}

/** The Discord renderer as the contract wants it. */
export const discordRenderer: RendererUnderContract = {
  render: (message, origin) => payloadsOf(message, { origin }),
  open: (form) => modalOf({ form, origin: null, opening: 'o1', page: 0, kept: {} }),
  seen: (payload) => seenText(payload as AnyPayload),
  pressables: (payload, message) => pressablesOf(payload as AnyPayload, message),
  live: (payload) => {
    const { content, components, allowed_mentions } = payload as AnyPayload;
    const texts = [
      content ?? '',
      ...partsOf({ components: components ?? [] }).map((part) => part.content ?? ''),
    ];
    return [...texts.flatMap(liveMarkdown), ...(allowed_mentions?.parse ?? [])];
  },
  breaches: (payload) =>
    'title' in (payload as AnyPayload)
      ? modalFaults(payload as AnyPayload)
      : messageFaults(payload as AnyPayload),
};

import type { Action, Block, Message } from '../../../shared/messages.js';
import { lookAtPath } from '../../../src/channels/room/paths.js';
import { openContext } from '../../../src/channels/room/render/context.js';
import { FormView } from '../../../src/channels/room/render/form.js';
import { MessageView } from '../../../src/channels/room/render/message.js';
import { written } from '../../../src/channels/room/render/written.js';
import { rendererContract, type Pressable } from '../../contracts/channel-contract.js';

const context = () => openContext('r', { token: 't', back: '/', kept: null, scribe: false, headings: 2 });

function unescaped(html: string): string {
  return html
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}

/** Attributes of a start tag. */
function attributesOf(tag: string): ReadonlyMap<string, string> {
  return new Map(
    [...tag.matchAll(/\s([\w-]+)(?:="([^"]*)")?/gu)].map((found) => [
      found[1] ?? '',
      unescaped(found[2] ?? ''),
    ]),
  );
}

const tagsOf = (html: string): readonly string[] => html.match(/<[a-z][^>]*>/giu) ?? [];
const textOf = (html: string): string => unescaped(html.replace(/<[^>]*>/gu, ' '));

/** Words as they are met in order, those that are only read aloud among them. */
function seen(html: string): string {
  return html
    .split(/(<[^>]*>)/u)
    .map((piece) =>
      piece.startsWith('<') ? (attributesOf(piece).get('aria-label') ?? ' ') : unescaped(piece),
    )
    .join(' ');
}

function lookOf(href: string): Action | null {
  const url = new URL(href, 'http://room.invalid');
  if (url.pathname === '/') return { kind: 'look', name: 'turn', args: {} };
  const found = lookAtPath(url);
  return found === null ? null : { kind: 'look', name: found.look, args: found.fields };
}

/** A form's action with what its hidden fields carry. */
function actionOf(form: string): Action {
  const [, kind = '', name = ''] = (attributesOf(tagsOf(form)[0] ?? '').get('action') ?? '').split('/');
  const args = Object.fromEntries(
    tagsOf(form).flatMap((tag) => {
      const attributes = attributesOf(tag);
      const field = attributes.get('name') ?? '';
      const hidden = attributes.get('type') === 'hidden' && !field.startsWith('_');
      return hidden ? [[field, attributes.get('value') ?? ''] as const] : [];
    }),
  );
  return { kind: kind === 'look' ? 'look' : 'move', name: decodeURIComponent(name), args };
}

function pressables(html: string): readonly Pressable[] {
  return [...html.matchAll(/<a [^>]*>[\s\S]*?<\/a>|<form [\s\S]*?<\/form>/gu)].flatMap(([found]) => {
    if (found.startsWith('<a ')) {
      const attributes = attributesOf(tagsOf(found)[0] ?? '');
      const action = lookOf(attributes.get('href') ?? '');
      const main = attributes.get('class') === 'button main';
      return action === null ? [] : [{ label: textOf(found).trim(), does: 'act', action, main } as const];
    }
    const button = /<button [^>]*>[\s\S]*?<\/button>/gu.exec(found)?.[0] ?? '';
    return [
      {
        label: textOf(button).trim(),
        does: attributesOf(tagsOf(found)[0] ?? '').get('class') === 'choice' ? 'act' : 'open',
        action: actionOf(found),
        main: attributesOf(button).get('class') === 'button main',
      } as const,
    ];
  });
}

/** Tags and attributes through which a text would act: none of ours runs anything or leads elsewhere. */
function live(html: string): readonly string[] {
  return tagsOf(html).filter((tag) => {
    const attributes = attributesOf(tag);
    const leads = [attributes.get('href'), attributes.get('src'), attributes.get('action')];
    return (
      /^<(?:script|iframe|object|embed|img|link|style|meta|base)\b/iu.test(tag) ||
      [...attributes.keys()].some((name) => name.startsWith('on')) ||
      leads.some((to) => to !== undefined && !/^\/(?!\/)/u.test(to))
    );
  });
}

/** What a page may not hold: an id twice, a field that nothing names, a picture without words. */
function breaches(html: string): readonly string[] {
  const tags = tagsOf(html);
  const ids = tags.flatMap((tag) => attributesOf(tag).get('id') ?? []);
  const named = new Set(tags.flatMap((tag) => attributesOf(tag).get('for') ?? []));
  const inLabels = new Set((html.match(/<label\b[\s\S]*?<\/label>/gu) ?? []).flatMap(tagsOf));
  return tags.flatMap((tag) => {
    const attributes = attributesOf(tag);
    const id = attributes.get('id');
    const twice = id !== undefined && ids.indexOf(id) !== ids.lastIndexOf(id);
    const field = /^<(?:textarea|select|input)\b/u.test(tag) && attributes.get('type') !== 'hidden';
    const nameless = field && !named.has(id ?? '') && !inLabels.has(tag) && !attributes.has('aria-label');
    const mute = /^<svg\b/u.test(tag) && !attributes.has('aria-label') && !attributes.has('aria-hidden');
    return [
      ...(twice ? [`the id ${id} stands twice`] : []),
      ...(nameless ? [`nothing names ${tag}`] : []),
      ...(mute ? [`no words for ${tag}`] : []),
    ];
  });
}

rendererContract('The room', {
  render: (message: Message) => [written(<MessageView message={message} context={context()} />)],
  open: (form: Extract<Block, { type: 'form' }>) => written(<FormView block={form} context={context()} />),
  seen: (payload) => seen(String(payload)),
  pressables: (payload) => pressables(String(payload)),
  live: (payload) => live(String(payload)),
  breaches: (payload) => breaches(String(payload)),
  unlimited: true,
});

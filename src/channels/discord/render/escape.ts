import type { Prose } from '../../../../shared/messages.js';
import { plain } from './plain.js';

/**
 * Rules by which a text is made inert in Discord's markdown, in order. Everything that opens a mention, a masked link, an
 * emoji, a fence, weight or a hidden part is escaped wherever it stands; what counts only at the beginning of a line is
 * escaped there.
 */
const rules: readonly (readonly [pattern: RegExp, put: string])[] = [
  [/[\\*_~`|[\]<>@]/gu, '\\$&'],
  [/^([^\S\n]*)([#+-])/gmu, '$1\\$2'],
  [/^([^\S\n]*\d+)\./gmu, '$1\\.'],
  [/:(?=\/\/)/gu, '\\:'],
];

/** A text as it may stand in a message. */
export function escape(text: string): string {
  return rules.reduce((so, [pattern, put]) => so.replace(pattern, put), plain(text));
}

function strong(text: string): string {
  const [, before = '', middle = '', after = ''] = /^(\s*)([^]*?)(\s*)$/u.exec(escape(text)) ?? [];
  return middle === '' ? before + after : `${before}**${middle}**${after}`;
}

/** Spans of prose as markdown. */
export function spans(prose: Prose): string {
  return prose.map((span) => (span.strong ? strong(span.text) : escape(span.text))).join('');
}

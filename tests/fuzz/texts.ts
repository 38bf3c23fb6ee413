import { hostileTexts } from '../contracts/hostile-texts.js';
import type { Chance } from './chance.js';

/** Names that every object has: a table that is asked for one by a bare index answers with what nobody put there. */
export const bareNames = [
  ...['constructor', '__proto__', 'prototype', 'toString', 'valueOf', 'hasOwnProperty', 'isPrototypeOf'],
  ...['__defineGetter__', 'tostring', 'undefined', 'null', 'nan', 'length', 'name'],
] as const;

const words =
  'why does the tide turn early when limpets hold on to their own stone because water came back before night and she thought it was big'.split(
    ' ',
  );
const odd = [
  ...['', ' ', '\n', '\u0000', '\ud800', '\udc00\ud800', '\ufeff', '\u202e', '\u200b', '🦆', 'é', 'e\u0301'],
  ...["'; drop table said; --", '"', '\\', '\\u0000', '${x}', '{{x}}', '<script>alert(1)</script>', '&lt;'],
  ...['%00', '%', '%ff', '../../etc/passwd', '0', '-0', '1e999', '-1', '99999999999999999999', 'NaN', '٣'],
  ...[
    '{"kind":"said","by":"p1","n":0}',
    '{"gone":"erased"}',
    '[object Object]',
    'true',
    '/help',
    '@everyone',
  ],
];

/** Ordinary words, so that judges and screens have something to do. */
export function sentence(chance: Chance): string {
  const text = Array.from({ length: 1 + chance.int(14) }, () => chance.pick(words)).join(' ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${chance.pick(['.', '?', '!', '', '...'])}`;
}

/** Letters from anywhere in Unicode, lone surrogates too. */
function letters(chance: Chance): string {
  return Array.from({ length: 1 + chance.int(40) }, () =>
    String.fromCharCode(chance.oneIn(3) ? chance.int(0x1_0000) : chance.int(0x80)),
  ).join('');
}

/** A text that somebody might send, by chance anything. */
export function anyText(chance: Chance): string {
  switch (chance.int(9)) {
    case 0:
      return chance.pick(odd);
    case 1:
      return chance.pick(hostileTexts)[1];
    case 2:
      return letters(chance);
    case 3:
      return chance.pick(bareNames);
    case 4:
      return `${sentence(chance)} ${chance.pick(odd)} ${sentence(chance)}`;
    case 5:
      return chance
        .pick(['a', 'ab ', '?', '\n', '🦆', '. ', 'the '])
        .repeat(1 + chance.int(chance.oneIn(40) ? 6000 : 200));
    default:
      return Array.from({ length: 1 + chance.int(3) }, () => sentence(chance)).join(' ');
  }
}

/** A text with some of it cut out, doubled or replaced. */
export function mangled(chance: Chance, text: string): string {
  const from = chance.int(text.length + 1);
  const to = from + chance.int(12);
  switch (chance.int(4)) {
    case 0:
      return text.slice(0, from) + text.slice(to);
    case 1:
      return text.slice(0, to) + text.slice(from);
    case 2:
      return text.slice(0, from) + letters(chance) + text.slice(to);
    default:
      return text.slice(0, from);
  }
}

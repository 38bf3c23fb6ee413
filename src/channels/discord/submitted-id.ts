import type { Action } from '../../../shared/messages.js';
import { hashOf, readAction, writeAction } from './custom-id.js';
import { limits } from './limits.js';

/** What a modal carries back when it is sent: which opening it was, which part of its form, and how to find the form. */
export type Submitted =
  | {
      readonly form: 'of a look';
      readonly opening: string;
      readonly page: number;
      readonly hash: string;
      readonly origin: Action | null;
    }
  /** The rest of a slash command that needs a long text; what was given already is remembered by the opening. */
  | {
      readonly form: 'of a command';
      readonly opening: string;
      readonly name: string;
      readonly action: string;
    }
  | { readonly form: 'code' };

/** The id of a modal for a part of a form, within the limit. */
export function writeSubmitted(of: {
  readonly opening: string;
  readonly page: number;
  readonly action: Action;
  readonly origin: Action | null;
}): string {
  const start = `s|${of.opening}|${of.page}|${hashOf(of.action)}`;
  const whole = of.origin === null ? start : `${start}|${writeAction(of.origin)}`;
  return whole.length <= limits.customId ? whole : start;
}

/** The id of a modal that asks for the long texts of a slash command. */
export function writeCommandModal(opening: string, name: string, action: string): string {
  return `c|${opening}|${name}|${action}`;
}

/** The id of the modal in which a slip's code is typed. */
export const codeModal = 'j';

/** Reads a modal's id; null for what is none of ours. */
export function readSubmitted(id: string): Submitted | null {
  const [head = '', first = '', second = '', third = '', ...rest] = id.split('|');
  switch (head) {
    case 's':
      return {
        form: 'of a look',
        opening: first,
        page: Number(second) || 0,
        hash: third,
        origin: readAction(rest),
      };
    case 'c':
      return { form: 'of a command', opening: first, name: second, action: third };
    case codeModal:
      return { form: 'code' };
    default:
      return null;
  }
}

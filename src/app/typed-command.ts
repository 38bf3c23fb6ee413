import { slashCommands } from '../../commands/all.js';
import type { TypedCommand } from '../../shared/channel.js';
import { Fault } from '../../shared/fault.js';
import type { FieldOption } from '../../shared/messages.js';
import type { CommandAction, SuggestionSource } from '../../shared/slash-command.js';
import { wordsOf } from '../../shared/said.js';
import type { ClassState } from '../practice/state.js';

/** Finds what a typed command means; throws `Fault` that lists what there is. */
export function findAction(command: TypedCommand): CommandAction {
  const found = slashCommands.find(({ name }) => name === command.name);
  if (!found) {
    const names = slashCommands.map(({ name }) => `/${name}`).join(', ');
    throw new Fault(
      'usage',
      `Cannot do /${command.name}, expected one of ${names}`,
      'Type /help to see what each does.',
    );
  }
  const action = found.actions.find(({ name }) => name === command.action);
  if (!action) {
    const names = found.actions.map(({ name }) => name).join(', ');
    throw new Fault(
      'usage',
      `Cannot do /${command.name} ${command.action}, expected one of ${names}`,
      `For instance: ${usage(found.name, found.actions[0])}`,
    );
  }
  return action;
}

/** How an action is typed, options that may be left out in brackets. */
export function usage(command: string, action: CommandAction | undefined): string {
  if (!action) return `/${command}`;
  const options = action.options.map(({ name, required }) => (required ? `${name}:…` : `[${name}:…]`));
  return [`/${command}`, action.name, ...options].join(' ');
}

/**
 * Reads "/name action option:value option:value". A value runs to the next "option:" that the action knows, or stands in
 * double quotes; so a pasted text needs no quotes when it comes last.
 */
export function parseCommand(line: string): TypedCommand {
  const head = /^\s*\/?([a-z-]+)(?:\s+([a-z-]+))?\s*/.exec(line);
  if (!head)
    throw new Fault('usage', 'Cannot read that, expected a slash command', 'Type /help to see them all.');
  const name = head[1] ?? '';
  const only = slashCommands.find((one) => one.name === name)?.actions;
  const action = head[2] ?? (only?.length === 1 ? (only[0]?.name ?? '') : '');
  const known = findAction({ name, action, options: {} }).options.map((option) => option.name);
  const rest = line.slice(head[0].length);
  const marks =
    known.length === 0 ? [] : [...rest.matchAll(new RegExp(`(?:^|\\s)(${known.join('|')}):\\s*`, 'gu'))];
  const options: Record<string, string> = {};
  let quotedUntil = 0;
  marks.forEach((mark, at) => {
    if (mark.index < quotedUntil) return;
    const start = mark.index + mark[0].length;
    const quoted = /^"((?:[^"\\]|\\.)*)"/su.exec(rest.slice(start));
    quotedUntil = quoted ? start + quoted[0].length : start;
    const end = marks.slice(at + 1).find(({ index }) => index >= quotedUntil)?.index ?? rest.length;
    options[mark[1] ?? ''] = quoted
      ? (quoted[1] ?? '').replace(/\\(.)/gsu, '$1')
      : rest.slice(start, end).trim();
  });
  if (rest.trim() !== '' && marks.length === 0) {
    throw new Fault(
      'usage',
      `Cannot read the part after /${name} ${action}, expected option:value`,
      `Write ${usage(name, findAction({ name, action, options }))}.`,
    );
  }
  return { name, action, options };
}

/** What an option of a source can be, as value and label. */
export function suggestionsFor(state: ClassState, source: SuggestionSource): readonly FieldOption[] {
  const people = Object.values(state.people).filter(({ removed }) => !removed);
  const nickname = (one: (typeof people)[number]): string => wordsOf(one.nickname) ?? 'somebody';
  switch (source) {
    case 'passages':
      return Object.values(state.shelf)
        .filter(({ withdrawn }) => !withdrawn)
        .map(({ id, reading }) => ({ value: id, label: reading.title }));
    case 'groups':
      return Object.values(state.groups).map(({ id, name }) => ({ value: id, label: name }));
    case 'people':
      return people.map((one) => ({ value: one.id, label: nickname(one) }));
    case 'pupils':
      return people
        .filter(({ role }) => role === 'pupil')
        .map((one) => ({ value: one.id, label: nickname(one) }));
    case 'stops':
      return Array.from({ length: 25 }, (_, at) => ({ value: String(at), label: String(at + 1) }));
    case 'held':
      return Object.values(state.posts)
        .filter(({ stage }) => stage.stage === 'held')
        .map((post) => {
          const author = post.person === null ? undefined : state.people[post.person];
          return {
            value: post.id,
            label: `${author ? nickname(author) : 'somebody'}: ${post.do} (${post.id})`,
          };
        });
  }
}

function resolveOne(state: ClassState, name: string, source: SuggestionSource, typed: string): string {
  const all = suggestionsFor(state, source);
  const wanted = typed.trim().toLowerCase();
  if (source === 'held') return typed.trim();
  if (source !== 'stops' && all.some(({ value }) => value === wanted)) return wanted;
  const exact = all.filter(({ label }) => label.toLowerCase() === wanted);
  const near = exact.length > 0 ? exact : all.filter(({ label }) => label.toLowerCase().startsWith(wanted));
  if (near.length === 1 && near[0]) return near[0].value;
  const labels = all.map(({ label }) => label).slice(0, 12);
  throw new Fault(
    'not found',
    `Cannot find ${name} “${typed.trim()}”, expected one of ${labels.join(', ') || 'none so far'}`,
    near.length > 1 ? 'More than one begins like that; write more of it.' : 'Write it as it stands there.',
  );
}

/** The flat fields of the move or look that a command makes, labels resolved to ids. */
export function fieldsOf(
  state: ClassState,
  action: CommandAction,
  options: TypedCommand['options'],
): Readonly<Record<string, string | undefined>> {
  const fixed = 'door' in action.does ? undefined : action.does.fixed;
  const fields: Record<string, string | undefined> = { ...fixed };
  for (const option of action.options) {
    const typed = options[option.name];
    if (typed === undefined || typed.trim() === '') {
      if (option.required) {
        throw new Fault(
          'usage',
          `Cannot do ${action.name}, expected ${option.name} (${option.words.toLowerCase()}), got nothing`,
          `Add ${option.name}:… and send it again.`,
        );
      }
      continue;
    }
    fields[option.name] = option.from ? resolveOne(state, option.name, option.from, typed) : typed;
  }
  return fields;
}

import { slashCommands } from '../../commands/all.js';
import { keeping } from '../../shared/keeping.js';
import { invitation, permissions } from '../channels/discord/permissions.js';
import { scopes } from '../channels/slack/manifest.js';
import { settings } from './config.js';
import type { Verb } from './io.js';
import { usage } from './typed-command.js';

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}

/** The parts of the README that the code writes itself, by the name of their mark. */
export function readmeTables(verbs: readonly Verb[]): Readonly<Record<string, string>> {
  return {
    commands: table(
      ['typed', 'what it does', 'who'],
      slashCommands.flatMap((command) =>
        command.actions.map((action) => [
          `\`${usage(command.name, action)}\``,
          action.words,
          action.who.join(', '),
        ]),
      ),
    ),
    settings: table(
      ['name', 'what it is', 'if unset'],
      settings.map(({ name, words, default: fallback }) => [name, words, fallback ?? '']),
    ),
    keeping: table(
      ['what', 'why', 'how long', 'who sees it'],
      keeping.map(({ what, why, howLong, who }) => [what, why, howLong, who]),
    ),
    'discord permissions': [
      table(
        ['permission', 'why', 'without it'],
        permissions.map(({ name, why, without }) => [name, why, without]),
      ),
      `    ${invitation('YOUR_APPLICATION_ID')}`,
    ].join('\n\n'),
    'slack permissions': table(
      ['scope', 'why', 'without it'],
      scopes.map(({ name, why, without }) => [name, why, without]),
    ),
    verbs: verbs.map((verb) => `    npm run -s turnstone -- ${verb.usage}\n        ${verb.words}`).join('\n'),
  };
}

/** Puts the tables between their marks; text outside the marks stays as it is. */
export function writeTables(readme: string, tables: Readonly<Record<string, string>>): string {
  let text = readme;
  for (const [name, body] of Object.entries(tables)) {
    const between = new RegExp(`(<!-- ${name}: [^>]*-->\\n)[\\s\\S]*?(<!-- /${name} -->)`, 'u');
    text = text.replace(between, (_, open: string, close: string) => `${open}\n${body}\n\n${close}`);
  }
  return text;
}

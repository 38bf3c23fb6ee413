import type { Block, Message } from '../../shared/messages.js';
import type { SlashCommand } from '../../shared/slash-command.js';
import { answer, say, staff, type Asked } from './asked.js';
import { heading, list, prose } from './blocks.js';

function lineOf(command: SlashCommand, action: SlashCommand['actions'][number]): string {
  const options = action.options.map(({ name, required }) => (required ? `${name}:…` : `[${name}:…]`));
  return `${[`/${command.name}`, action.name, ...options].join(' ')} – ${action.words}`;
}

/** The slash commands that a role may use, as they are typed; options that may be left out stand in brackets. */
export function help(asked: Asked): readonly Message[] {
  const { role } = asked.by;
  const title = role === 'pupil' ? say(asked, 'help title') : staff('help title');
  const blocks = asked.port.commands.flatMap((command): readonly Block[] => {
    const actions = command.actions.filter(({ who }) => who.includes(role));
    if (actions.length === 0) return [];
    return [
      heading(`/${command.name}`),
      prose(command.words),
      ...list(actions.map((one) => lineOf(command, one))),
    ];
  });
  return [answer(asked, title, [heading(title), ...blocks])];
}

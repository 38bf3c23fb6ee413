import type { House, Who } from '../../../../shared/channel.js';
import { lookShapes } from '../../../../shared/looks.js';
import type { Field, FieldOption } from '../../../../shared/messages.js';
import { moveShapes } from '../../../../shared/moves.js';
import type { Shape } from '../../../../shared/shape.js';
import type { CommandAction, CommandOption } from '../../../../shared/slash-command.js';

/** As many suggestions as the house gives at most; then there may be more, and the option is typed instead. */
const mostSuggestions = 25;

function shapeOf({ does }: CommandAction): Shape {
  if ('move' in does) return moveShapes[does.move];
  return 'look' in does ? lookShapes[does.look] : {};
}

/** How many characters a long text may have, by the shape of the field that it fills. */
function longest(action: CommandAction, name: string): number {
  const shape = shapeOf(action);
  return (shape[name] ?? shape[`${name}?`]) === 'page' ? 262_144 : 5000;
}

async function suggestionsFor(
  house: House,
  who: Who,
  option: CommandOption,
): Promise<readonly FieldOption[]> {
  if (option.choices) return option.choices.map((choice) => ({ value: choice, label: choice }));
  return option.from === undefined ? [] : house.suggest(who, option.from, '');
}

/** The labelled field for an option of a slash command. */
export async function fieldOf(
  house: House,
  who: Who,
  action: CommandAction,
  option: CommandOption,
): Promise<Field> {
  const base = { name: option.name, label: option.words, required: option.required };
  switch (option.kind) {
    case 'line':
      return { ...base, kind: 'line', max: 200 };
    case 'whole number':
      return { ...base, kind: 'line', max: 6 };
    case 'long text':
      return { ...base, kind: 'text', max: longest(action, option.name) };
    case 'file':
      return { ...base, kind: 'file' };
    case 'pick': {
      const options = await suggestionsFor(house, who, option);
      if (options.length >= mostSuggestions || options.length === 0)
        return { ...base, kind: 'line', max: 200 };
      return option.name === 'posts'
        ? { ...base, kind: 'pick', options, many: true }
        : { ...base, kind: 'pick', options };
    }
    default:
      return option.kind satisfies never;
  }
}

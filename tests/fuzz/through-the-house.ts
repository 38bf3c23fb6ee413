import { slashCommands } from '../../commands/all.js';
import type { Reply } from '../../shared/channel.js';
import { lookShapes, type LookName } from '../../shared/looks.js';
import { moveShapes, type MoveName } from '../../shared/moves.js';
import { parseCommand } from '../../src/app/typed-command.js';
import type { Chance } from './chance.js';
import { must, mustBeClear, type Entrance, type Input } from './entrance.js';
import { fieldsFor } from './fields.js';
import { anyText, bareNames, mangled } from './texts.js';
import { openWorld, type Insider, type World } from './world.js';

/** Inputs after which a fresh world is opened, so that a class stays as large as classes are. */
const worldLasts = 1500;

function mustAnswer(world: World, reply: Reply): void {
  world.check(JSON.stringify(reply));
  if (reply.done) return;
  must(reply.messages.length > 0, 'a refusal that says nothing');
  for (const { summary } of reply.messages) must(summary.trim() !== '', 'a refusal without words');
}

const moveNames = Object.keys(moveShapes) as MoveName[];
const lookNames = Object.keys(lookShapes) as LookName[];

function aMove(chance: Chance, world: World, by: Insider, ids: readonly string[]): Input {
  const move = chance.oneIn(60) ? chance.pick(bareNames) : chance.pick(moveNames);
  const shape = Object.hasOwn(moveShapes, move) ? moveShapes[move as MoveName] : {};
  const fields = fieldsFor(chance, shape, ids);
  const id = chance.oneIn(10) ? 'the same update' : `update-${chance.int(2 ** 30)}`;
  const given = chance.oneIn(20) ? 'scribed' : 'typed';
  return {
    shown: { by: by.name, move, fields },
    run: async () =>
      mustAnswer(world, await world.played.house.move({ id, who: by.who, move, fields, given })),
  };
}

function aLook(chance: Chance, world: World, by: Insider, ids: readonly string[]): Input {
  const name = chance.oneIn(60) ? chance.pick(bareNames) : chance.pick(lookNames);
  const shape = Object.hasOwn(lookShapes, name) ? lookShapes[name as LookName] : {};
  const fields = fieldsFor(chance, shape, ids);
  return {
    shown: { by: by.name, look: name, fields },
    run: async () => mustAnswer(world, await world.played.house.look(by.who, name, fields)),
  };
}

function aLine(chance: Chance, ids: readonly string[]): string {
  const command = chance.pick(slashCommands);
  const action = chance.pick(command.actions);
  const options = action.options.map((option) => {
    if (!option.required && chance.oneIn(2)) return '';
    const value = option.choices
      ? chance.pick(option.choices)
      : option.from
        ? chance.pick([...ids, 'Wren', 'Finch'])
        : anyText(chance);
    return ` ${option.name}:${chance.oneIn(5) ? `"${value}"` : value}`;
  });
  const line = `/${command.name} ${action.name}${options.join('')}`;
  return chance.oneIn(4) ? mangled(chance, line) : chance.oneIn(20) ? anyText(chance) : line;
}

function aCommand(chance: Chance, world: World, by: Insider, ids: readonly string[]): Input {
  const line = aLine(chance, ids);
  const id = `command-${chance.int(2 ** 30)}`;
  return {
    shown: { by: by.name, line },
    run: async () => mustAnswer(world, await world.played.house.command(by.who, id, parseCommand(line))),
  };
}

function somethingElse(chance: Chance, world: World, by: Insider): Input {
  const { house, clock } = world.played;
  const typed = anyText(chance);
  const which = chance.int(4);
  const sources = ['passages', 'groups', 'people', 'pupils', 'stops', 'held'] as const;
  return {
    shown: { by: by.name, which, typed },
    run: async () => {
      if (which === 0) world.check(JSON.stringify(await house.suggest(by.who, chance.pick(sources), typed)));
      if (which === 1) world.check(JSON.stringify(await house.feed(by.who, chance.int(50) - 5)));
      if (which === 2) await house.signIn(typed, 'somewhere', chance.oneIn(2) ? typed : undefined);
      if (which === 3) {
        clock.pass(chance.int(6 * 3600_000));
        await house.passTime(by.who.classId);
      }
    },
  };
}

/** Inputs of a world, each by somebody of its first class, and a fresh world now and then. */
export function inWorlds(
  make: (chance: Chance, world: World, by: Insider, ids: readonly string[]) => Input,
): Entrance['open'] {
  return async (chance) => {
    let world = await openWorld();
    let made = 0;
    return {
      async next() {
        if (made > 0 && made % worldLasts === 0) {
          await world.close();
          world = await openWorld();
        }
        made += 1;
        const input = make(chance, world, chance.pick(world.people), await world.ids());
        return {
          shown: input.shown,
          run: async () => {
            try {
              await input.run();
            } catch (why) {
              mustBeClear(why);
            }
          },
        };
      },
      close: () => world.close(),
    };
  };
}

/** Moves, looks, typed commands and whatever else a channel may ask of the house. */
export const throughTheHouse: readonly Entrance[] = [
  { name: 'moves', share: 18, open: inWorlds(aMove) },
  { name: 'looks', share: 8, open: inWorlds(aLook) },
  { name: 'slash commands', share: 14, open: inWorlds(aCommand) },
  {
    name: 'suggestions, feeds, doors, time',
    share: 4,
    open: inWorlds((chance, world, by) => somethingElse(chance, world, by)),
  },
];

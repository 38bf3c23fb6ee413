import { describe, expect, it } from 'vitest';
import { slashCommands } from '../../commands/all.js';
import { lookShapes, mayLook, type LookName } from '../../shared/looks.js';
import { mayMove, moveShapes, type MoveName } from '../../shared/moves.js';
import { parseCommand } from '../../src/app/typed-command.js';

describe('A typed slash command', () => {
  it.each([
    ['/practice start group:Wrens', { name: 'practice', action: 'start', options: { group: 'Wrens' } }],
    [
      '/passages gist passage:The Bell stop:2 text:It rings: loudly',
      {
        name: 'passages',
        action: 'gist',
        options: { passage: 'The Bell', stop: '2', text: 'It rings: loudly' },
      },
    ],
    [
      '/passages gist passage:"A text: of stops" stop:1 text:"say \\"hm\\""',
      {
        name: 'passages',
        action: 'gist',
        options: { passage: 'A text: of stops', stop: '1', text: 'say "hm"' },
      },
    ],
    ['/help', { name: 'help', action: 'show', options: {} }],
    ['  digest now', { name: 'digest', action: 'now', options: {} }],
  ])('%s', (line, command) => {
    expect(parseCommand(line)).toEqual(command);
  });

  it('keeps the lines of a pasted text', () => {
    const { options } = parseCommand('/passages add title:Bells text:# Bells\n\nThey ring.\nLoudly.');
    expect(options).toEqual({ title: 'Bells', text: '# Bells\n\nThey ring.\nLoudly.' });
  });

  it.each([
    ['/practise start', /expected one of \/passages/],
    ['/practice begin', /expected one of start/],
    ['/practice start Wrens', /expected option:value/],
    ['', /expected a slash command/],
  ])('%s is refused with what there is', (line, words) => {
    expect(() => parseCommand(line)).toThrow(words);
  });
});

describe('Every slash command', () => {
  const actions = slashCommands.flatMap((command) =>
    command.actions.map((action) => ({ command: command.name, action })),
  );

  it.each(actions.map(({ command, action }) => [`/${command} ${action.name}`, action] as const))(
    '%s fills the fields of its move or look',
    (_, action) => {
      if ('door' in action.does) {
        const of = action.does.door === 'make-sheet' ? 'group' : 'person';
        expect(action.options.map(({ name }) => name)).toEqual([of]);
        return;
      }
      const { does } = action;
      const shape: object = 'move' in does ? moveShapes[does.move] : lookShapes[does.look];
      const names = Object.keys(shape);
      const given = [...action.options.map(({ name }) => name), ...Object.keys(does.fixed ?? {})];
      expect(names.map((name) => name.replace('?', ''))).toEqual(expect.arrayContaining(given));
      expect(action.options.filter(({ required }) => required).map(({ name }) => name)).toEqual(
        expect.arrayContaining(names.filter((name) => !name.endsWith('?') && !(name in (does.fixed ?? {})))),
      );
    },
  );

  it.each(actions.map(({ command, action }) => [`/${command} ${action.name}`, action] as const))(
    '%s is open to nobody who may not do it otherwise',
    (_, action) => {
      if ('door' in action.does) {
        expect(action.who).not.toContain('pupil');
        return;
      }
      const allowed =
        'move' in action.does
          ? mayMove[action.does.move satisfies MoveName]
          : mayLook[action.does.look satisfies LookName];
      expect(allowed).toEqual(expect.arrayContaining([...action.who]));
    },
  );

  it('keeps the limits that chat platforms set: names of 32, words of 100, 25 actions and options (Discord, Slack: published limits)', () => {
    for (const command of slashCommands) {
      expect(command.name).toMatch(/^[a-z-]{1,32}$/);
      expect(command.words.length).toBeLessThanOrEqual(100);
      expect(command.actions.length).toBeLessThanOrEqual(25);
      for (const action of command.actions) {
        expect(action.name).toMatch(/^[a-z-]{1,32}$/);
        expect(action.words.length).toBeLessThanOrEqual(100);
        expect(action.options.length).toBeLessThanOrEqual(25);
        for (const option of action.options) {
          expect(option.name).toMatch(/^[a-z-]{1,32}$/);
          expect(option.words.length).toBeLessThanOrEqual(100);
        }
      }
    }
  });
});

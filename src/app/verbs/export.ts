import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { classNamed, personNamed } from '../founding.js';
import type { Verb } from '../io.js';
import { configFor, openSchool } from '../school.js';

/** Prints all that is held on one person, as JSON. */
export const verb: Verb = {
  name: 'export',
  usage: 'export --nickname NICKNAME [--class NAME] [--data DIR]',
  words: 'prints all that is held on one person, as JSON',
  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        nickname: { type: 'string' },
        class: { type: 'string' },
        data: { type: 'string' },
        json: { type: 'boolean' },
      },
    });
    if (values.nickname === undefined)
      throw new Fault('usage', 'Cannot export, expected --nickname', `Use: ${verb.usage}`);
    const school = await openSchool(configFor(io, values.data), () => '');
    try {
      const state = await classNamed(school.house, await school.store.classes(), values.class);
      const person = personNamed(state, values.nickname);
      if (person === null)
        throw new Fault(
          'not found',
          `Cannot export, expected a nickname of “${state.name}”`,
          'Look at the roster.',
        );
      await io.out(`${JSON.stringify(await school.store.exportPerson(state.id, person), null, 2)}\n`);
      return 0;
    } finally {
      await school.store.close();
    }
  },
};

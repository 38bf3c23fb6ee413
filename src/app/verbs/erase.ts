import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { classNamed, mustMove, personNamed } from '../founding.js';
import type { Verb } from '../io.js';
import { configFor, openSchool } from '../school.js';

/** Erases all that is held on one person, for good. */
export const verb: Verb = {
  name: 'erase',
  usage: 'erase --nickname NICKNAME --yes [--class NAME] [--data DIR]',
  words: 'erases all that is held on one person, for good; copies made earlier with backup still hold it',
  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        nickname: { type: 'string' },
        class: { type: 'string' },
        data: { type: 'string' },
        yes: { type: 'boolean' },
      },
    });
    if (values.nickname === undefined || values.yes !== true) {
      throw new Fault(
        'usage',
        'Cannot erase, expected --nickname and --yes, since it can’t be undone',
        `Use: ${verb.usage}`,
      );
    }
    const school = await openSchool(configFor(io, values.data), () => '');
    try {
      const state = await classNamed(school.house, await school.store.classes(), values.class);
      const person = personNamed(state, values.nickname);
      if (person === null)
        throw new Fault(
          'not found',
          `Cannot erase, expected a nickname of “${state.name}”`,
          'Look at the roster.',
        );
      const by = Object.values(state.people).find(
        ({ role, removed, id }) =>
          !removed && (role === 'administrator' || role === 'tutor') && id !== person,
      );
      if (!by)
        throw new Fault(
          'not allowed',
          'Cannot erase, expected a tutor or administrator in the class, got none',
          'Add one first.',
        );
      await mustMove(school.house, state.id, by.id, [{ type: 'erase-person', person }]);
      await io.out(
        'Erased. Copies made earlier with backup still hold it: remove them, or erase there too.\n',
      );
      return 0;
    } finally {
      await school.store.close();
    }
  },
};

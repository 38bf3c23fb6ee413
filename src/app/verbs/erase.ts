import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { mustMove, personOfClass, whoErases } from '../founding.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Erases all that is held on one person, for good. */
export const verb: Verb = {
  name: 'erase',
  usage: 'erase --nickname NICKNAME --yes [--class NAME] [--data DIR]',
  words: 'erases all that is held on one person, for good; copies made earlier with backup still hold it',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        nickname: { type: 'string' },
        class: { type: 'string' },
        data: { type: 'string' },
        yes: { type: 'boolean' },
      },
    });
    const { nickname } = values;
    if (nickname === undefined || values.yes !== true) {
      throw new Fault(
        'usage',
        'Cannot erase, expected --nickname and --yes, since it can’t be undone',
        `Use: ${verb.usage}`,
      );
    }
    return inSchool(io, values.data, async (school) => {
      const named = { class: values.class, nickname };
      const { state, person } = await personOfClass(school, named, 'erase');
      const by = whoErases(state, person);
      if (by === null)
        throw new Fault(
          'not allowed',
          'Cannot erase, expected a tutor or administrator in the class, got none',
          'Add one first.',
        );
      await mustMove(school.house, state.id, by, [{ type: 'erase-person', person }]);
      await io.out(
        'Erased. Copies made earlier with backup still hold it: remove them, or restore them with the file “erased” of this data folder beside them and back up anew.\n',
      );
      return 0;
    });
  },
};

import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { personOfClass } from '../founding.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Prints all that is held on one person, as JSON. */
export const verb: Verb = {
  name: 'export',
  usage: 'export --nickname NICKNAME [--class NAME] [--data DIR]',
  words: 'prints all that is held on one person, as JSON',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        nickname: { type: 'string' },
        class: { type: 'string' },
        data: { type: 'string' },
        json: { type: 'boolean' },
      },
    });
    const { nickname } = values;
    if (nickname === undefined)
      throw new Fault('usage', 'Cannot export, expected --nickname', `Use: ${verb.usage}`);
    return inSchool(io, values.data, async (school) => {
      const named = { class: values.class, nickname };
      const { state, person } = await personOfClass(school, named, 'export');
      await io.out(`${JSON.stringify(await school.store.exportPerson(state.id, person), null, 2)}\n`);
      return 0;
    });
  },
};

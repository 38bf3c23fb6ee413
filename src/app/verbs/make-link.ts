import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { whenWords } from '../calendar.js';
import { personOfClass } from '../founding.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Makes a fresh link for somebody who lost theirs. */
export const verb: Verb = {
  name: 'make-link',
  usage: 'make-link --nickname NICKNAME [--class NAME] [--data DIR]',
  words:
    'makes a fresh link or slip for somebody; older ones, and their passphrase or pictures, stop working',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: { nickname: { type: 'string' }, class: { type: 'string' }, data: { type: 'string' } },
    });
    const { nickname } = values;
    if (nickname === undefined)
      throw new Fault('usage', 'Cannot make a link, expected --nickname', `Use: ${verb.usage}`);
    return inSchool(io, values.data, async (school) => {
      const named = { class: values.class, nickname };
      const { state, person } = await personOfClass(school, named, 'make a link');
      const { house } = school;
      const { link, until } = await house.makeSlip({ classId: state.id, person }, person);
      await house.keys.forget(state.id, person);
      await io.out(`${link}\n`);
      io.err(
        `Good until ${whenWords(until, house.now(), state.settings.zone)}. Older links, and pictures or a passphrase of this person, no longer count.\n`,
      );
      return 0;
    });
  },
};

import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { classNamed, personNamed } from '../founding.js';
import type { Verb } from '../io.js';
import { configFor, openSchool } from '../school.js';

/** Makes a fresh link for somebody who lost theirs. */
export const verb: Verb = {
  name: 'make-link',
  usage: 'make-link --nickname NICKNAME [--class NAME] [--data DIR]',
  words: 'makes a fresh link or slip for somebody; older ones stop working',
  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: { nickname: { type: 'string' }, class: { type: 'string' }, data: { type: 'string' } },
    });
    if (values.nickname === undefined)
      throw new Fault('usage', 'Cannot make a link, expected --nickname', `Use: ${verb.usage}`);
    const config = configFor(io, values.data);
    const base = config.url?.replace(/\/$/, '') ?? `http://${config.host}:${config.port}`;
    const school = await openSchool(config, () => base);
    try {
      const state = await classNamed(school.house, await school.store.classes(), values.class);
      const person = personNamed(state, values.nickname);
      if (person === null)
        throw new Fault(
          'not found',
          `Cannot make a link, expected a nickname of “${state.name}”`,
          'Look at the roster.',
        );
      const { link } = await school.house.makeSlip({ classId: state.id, person }, person);
      await io.out(`${link}\n`);
      return 0;
    } finally {
      await school.store.close();
    }
  },
};

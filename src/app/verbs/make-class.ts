import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { foundClass } from '../founding.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Makes a real class and prints its tutor's link. */
export const verb: Verb = {
  name: 'make-class',
  usage: 'make-class --name NAME --zone ZONE --nickname NICKNAME [--data DIR]',
  words: 'makes a class and prints the link of its tutor',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: {
        name: { type: 'string' },
        zone: { type: 'string' },
        nickname: { type: 'string' },
        data: { type: 'string' },
      },
    });
    const { name, zone, nickname } = values;
    if (name === undefined || zone === undefined || nickname === undefined) {
      throw new Fault(
        'usage',
        'Cannot make a class, expected --name, --zone and --nickname',
        `Use: ${verb.usage}`,
      );
    }
    return inSchool(io, values.data, async (school) => {
      const { classId, tutor } = await foundClass(school.house, { name, zone, nickname });
      const { link } = await school.house.makeSlip({ classId, person: tutor }, tutor);
      await io.out(
        `Class “${name}” (${classId}) is made. Its tutor’s link, shown this once, good for two weeks:\n  ${link}\nStart the server, open the link, and add pupils on the roster.\n`,
      );
      return 0;
    });
  },
};

import { parseArgs } from 'node:util';
import { Fault } from '../../../shared/fault.js';
import { fill } from '../../coaching/catalogue.js';
import { staffClassWords } from '../../coaching/staff-class-words.js';
import { missingOf } from '../../practice/readiness.js';
import { whenWords } from '../calendar.js';
import { foundClass } from '../founding.js';
import type { Verb } from '../io.js';
import { inSchool } from '../school.js';

/** Makes a real class and prints its tutor's link. */
export const verb: Verb = {
  name: 'make-class',
  usage: 'make-class --name NAME --zone ZONE --nickname NICKNAME [--data DIR]',
  words: 'makes a class, prints the link of its tutor, and says what must be set before pupils come in',
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
      const { link, until } = await school.house.makeSlip({ classId, person: tutor }, tutor);
      const missing = missingOf(await school.house.classes.load(classId));
      await io.out(
        `Class “${name}” (${classId}) is made. Its tutor’s link, shown this once, good until ${whenWords(until, school.house.now(), zone)}:\n  ${link}\nStart the server, open the link, and add pupils on the roster.\n\n${fill(staffClassWords['not ready title'])}. ${fill(staffClassWords['not ready why'])}\n${missing.map((need) => `  ${fill(staffClassWords[`missing ${need}`])}\n`).join('')}`,
      );
      return 0;
    });
  },
};

import { parseArgs } from 'node:util';
import { digestOf } from '../../progress/digest.js';
import { classNamed } from '../founding.js';
import type { Verb } from '../io.js';
import { plainText } from '../plain-text.js';
import { inSchool } from '../school.js';

/** Prints the digest of a class as of now. */
export const verb: Verb = {
  name: 'digest',
  usage: 'digest [--class NAME] [--data DIR] [--json]',
  words: 'prints the digest of a class as of now',
  run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: { class: { type: 'string' }, data: { type: 'string' }, json: { type: 'boolean' } },
    });
    return inSchool(io, values.data, async (school) => {
      const state = await classNamed(school.house, await school.store.classes(), values.class);
      const rows = await school.store.evidence({ classId: state.id });
      if (values.json) {
        await io.out(`${JSON.stringify(digestOf({ state, group: null, rows, at: Date.now() }))}\n`);
        return 0;
      }
      const staff = Object.values(state.people).find(
        ({ role, removed }) => !removed && (role === 'tutor' || role === 'teacher'),
      );
      if (!staff) {
        io.err(
          'Cannot show the digest, expected a tutor or teacher on the roster, got none. Use --json, or add one.',
        );
        return 1;
      }
      const reply = await school.house.look({ classId: state.id, person: staff.id }, 'digest', {});
      await io.out(`${reply.messages.map(plainText).join('\n\n')}\n`);
      return reply.done ? 0 : 1;
    });
  },
};

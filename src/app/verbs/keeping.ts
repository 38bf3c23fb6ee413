import { parseArgs } from 'node:util';
import { keeping } from '../../../shared/keeping.js';
import type { Verb } from '../io.js';

/** Prints what is kept, why, how long, and who sees it. */
export const verb: Verb = {
  name: 'keeping',
  usage: 'keeping [--json]',
  words: 'prints what is kept, why, how long, and who sees it',
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { json: { type: 'boolean' } } });
    if (values.json) {
      await io.out(`${JSON.stringify(keeping)}\n`);
      return 0;
    }
    const parts = keeping.map(({ what, why, howLong, who, tables }) => {
      const names = Object.keys(tables).join(', ');
      return [
        what,
        `  why       ${why}`,
        `  how long  ${howLong}`,
        `  who       ${who}`,
        ...(names === '' ? [] : [`  tables    ${names}`]),
      ].join('\n');
    });
    await io.out(`${parts.join('\n\n')}\n`);
    return 0;
  },
};

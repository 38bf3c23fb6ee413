import { parseArgs } from 'node:util';
import { slashCommands } from '../../../commands/all.js';
import { manifestOf, scopes } from '../../channels/slack/manifest.js';
import type { Verb } from '../io.js';
import { configFor } from '../school.js';

/** Where requests go as long as the address of the server isn't set. */
const placeholder = 'https://your-server.example';

/** Prints the manifest of the Slack app; the reason of each permission goes to standard error. */
export const verb: Verb = {
  name: 'manifest',
  usage: 'manifest [--socket]',
  words:
    'prints the manifest of the Slack app, for a new app “from a manifest”, with the reason of each permission',
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { socket: { type: 'boolean' } } });
    const config = configFor(io);
    const socket = values.socket ?? (config.slack?.appToken ?? null) !== null;
    const base = socket ? null : (config.url ?? placeholder);
    await io.out(`${JSON.stringify(manifestOf(slashCommands, base), null, 2)}\n`);
    const reasons = scopes.map(
      ({ name, why, least }) => `  ${name.padEnd(18)}${least ? '' : '(may be left out) '}${why}`,
    );
    io.err(`Permissions\n${reasons.join('\n')}\n`);
    if (base === placeholder) {
      io.err(
        `TURNSTONE_URL is not set, so the addresses begin with ${placeholder}: set it and print anew, or use --socket.\n`,
      );
    }
    return 0;
  },
};

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
  usage: 'manifest [--socket] [--many]',
  words:
    'prints the manifest of the Slack app, for a new app “from a manifest”, with the reason of each permission',
  async run(args, io) {
    const { values } = parseArgs({
      args: [...args],
      options: { socket: { type: 'boolean' }, many: { type: 'boolean' } },
    });
    const config = configFor(io);
    const socket = values.socket ?? (config.slack?.appToken ?? null) !== null;
    const many = values.many ?? (config.slack?.oauth ?? null) !== null;
    const base = socket && !many ? null : (config.url ?? placeholder);
    const manifest = manifestOf(slashCommands, { base, socket, many });
    await io.out(`${JSON.stringify(manifest, null, 2)}\n`);
    const reasons = scopes.map(
      ({ name, why, without, least }) =>
        `  ${name.padEnd(18)}${why}; ${least ? 'must be granted' : `may be left out: then ${without}`}`,
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

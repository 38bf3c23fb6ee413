import { createServer } from 'node:net';
import { parseArgs } from 'node:util';
import type { Finding } from '../../../shared/channel.js';
import { Fault } from '../../../shared/fault.js';
import { fill } from '../../coaching/catalogue.js';
import { staffClassWords } from '../../coaching/staff-class-words.js';
import { peopleOfRole } from '../../practice/lookup.js';
import { missingOf, type Need } from '../../practice/readiness.js';
import type { ClassState } from '../../practice/state.js';
import type { Store } from '../../store/store.js';
import { checkChannels } from '../channels.js';
import { loadEnvFile, settings, type Config } from '../config.js';
import type { Io, Verb } from '../io.js';
import { configFor, openSchool } from '../school.js';

const fine = (words: string): Finding => ({ fine: true, words });
const mend = (words: string): Finding => ({ fine: false, words });

/** All settings as they stand, secrets hidden. */
function settingLines(env: Io['env']): string[] {
  return settings.map(({ name, secret, default: fallback }) => {
    const raw = env[name]?.trim();
    const isSet = raw !== undefined && raw !== '';
    const value = isSet
      ? secret
        ? '(set, hidden)'
        : raw
      : fallback === null
        ? '(not set)'
        : `${fallback} (default)`;
    return `  ${name.padEnd(24)}${value}`;
  });
}

function portFinding(config: Config): Promise<Finding> {
  return new Promise((settle) => {
    const probe = createServer();
    probe.once('error', (why: NodeJS.ErrnoException) =>
      settle(
        mend(
          `Port ${config.port} on ${config.host} can’t be used (${why.code ?? 'unknown'}): stop what has it, or set TURNSTONE_PORT.`,
        ),
      ),
    );
    probe.listen(config.port, config.host, () =>
      probe.close(() => settle(fine(`Port ${config.port} on ${config.host} is free.`))),
    );
  });
}

function classFindings(state: ClassState): Finding[] {
  const tutor = peopleOfRole(state, 'tutor').length > 0;
  const missing = missingOf(state);
  const words = (need: Need): string => fill(staffClassWords[`missing ${need}`]);
  return [
    tutor
      ? fine(`${state.name}: has a tutor.`)
      : mend(`${state.name}: has no tutor: add one on the roster, or nobody looks at what is held.`),
    ...missing.map((need) => mend(`${state.name}: pupils can’t come in yet. ${words(need)}`)),
    ...(missing.length === 0
      ? [fine(`${state.name}: has alarm text, number, safeguarding lead and deputy; pupils can come in.`)]
      : []),
  ];
}

/** Messages at which a place of a platform has stopped; each needs a person. */
async function stuckFindings(
  store: Pick<Store, 'stuck'>,
  classes: readonly ClassState[],
): Promise<Finding[]> {
  const found: Finding[] = [];
  for (const { id, name } of classes) {
    for (const { place, why } of await store.stuck(id)) {
      found.push(
        mend(
          `${name}: a message to ${place.channel} is stuck: ${why} Mend that, then use /here there again.`,
        ),
      );
    }
  }
  return found;
}

async function folderFindings(config: Config): Promise<Finding[]> {
  try {
    const school = await openSchool({ ...config, log: 'silent' }, () => '');
    try {
      const classes = await Promise.all(
        (await school.store.classes()).map((id) => school.house.classes.load(id)),
      );
      const count =
        classes.length === 0
          ? 'It holds no class so far; start makes an invented one.'
          : `It holds ${classes.length} class(es).`;
      return [
        fine(`The data folder ${config.data} can be used. ${count}`),
        ...classes.flatMap(classFindings),
        ...(await stuckFindings(school.store, classes)),
        ...(await checkChannels(config, school.store, classes, school.log, school.house.now())),
      ];
    } finally {
      await school.store.close();
    }
  } catch (why) {
    if (why instanceof Fault) return [mend(`${why.message}. ${why.remedy}`)];
    throw why;
  }
}

/** Looks at settings, data folder, port, classes and platforms, and says what a school still has to mend. */
export const verb: Verb = {
  name: 'doctor',
  usage: 'doctor [--data DIR]',
  words: 'looks at settings, data folder, port, classes and platforms, and says what to mend',
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { data: { type: 'string' } } });
    loadEnvFile();
    await io.out(`Settings\n${settingLines(io.env).join('\n')}\n\n`);
    const config = configFor(io, values.data);
    const found = [
      fine(`Node ${process.versions.node}.`),
      config.url?.startsWith('http:') && config.host !== '127.0.0.1'
        ? mend('TURNSTONE_URL begins with http: on a network, use https so that nobody can read along.')
        : fine('Links are built on an address that fits.'),
      ...(await folderFindings(config)),
      await portFinding(config),
    ];
    await io.out(`${found.map((one) => `${one.fine ? 'fine ' : 'mend '} ${one.words}`).join('\n')}\n`);
    return found.every((one) => one.fine) ? 0 : 1;
  },
};

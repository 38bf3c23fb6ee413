import { randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Fault } from '../../shared/fault.js';
import type { Store } from '../store/store.js';
import { openSqliteStore } from '../store/sqlite-store.js';
import { calendar } from './calendar.js';
import { loadEnvFile, readConfig, type Config } from './config.js';
import { openHouse, type OpenHouse } from './house.js';
import type { Io } from './io.js';
import { makeJudges } from './judges.js';
import { openLog, type Log } from './log.js';

/** A data folder opened: one folder is one school. */
export interface School {
  readonly config: Config;
  readonly store: Store;
  readonly house: OpenHouse;
  readonly log: Log;
  readonly key: string;
}

/** The key that signs and seals: from the configuration, else made once in the data folder, readable by its owner only. */
export function readKey(config: Config): string {
  if (config.key !== null) return config.key;
  const path = join(config.data, 'key');
  try {
    return readFileSync(path, 'utf8').trim();
  } catch {
    const key = randomBytes(32).toString('base64url');
    try {
      writeFileSync(path, `${key}\n`, { mode: 0o600, flag: 'wx' });
    } catch (why) {
      throw folderFault(config.data, why);
    }
    return key;
  }
}

function folderFault(folder: string, why: unknown): Fault {
  const code = (why as NodeJS.ErrnoException).code ?? 'unknown';
  return new Fault(
    'disk',
    `Cannot use the data folder ${folder}, expected a folder that can be written, got ${code}`,
    'Give the account that runs Turnstone the right to write there, or set TURNSTONE_DATA to another folder.',
  );
}

/** Reads the configuration as `start` sees it; `--data` of a verb stands over the environment. */
export function configFor(io: Io, data?: string): Config {
  loadEnvFile();
  return readConfig(data === undefined ? io.env : { ...io.env, TURNSTONE_DATA: data });
}

/** Opens the school of a configuration; throws `Fault` where another process has it or the folder can't be used. */
export async function openSchool(config: Config, baseUrl: () => string): Promise<School> {
  try {
    mkdirSync(config.data, { recursive: true, mode: 0o700 });
  } catch (why) {
    throw folderFault(config.data, why);
  }
  const log = openLog(config.log);
  const store = await openSqliteStore(config.data);
  try {
    const key = readKey(config);
    const house = openHouse({
      store,
      judges: makeJudges(),
      calendar,
      clock: { now: () => Date.now() },
      log,
      key,
      baseUrl,
    });
    return { config, store, house, log, key };
  } catch (why) {
    await store.close();
    throw why;
  }
}

/** Opens the school of a verb's `--data` (else of the environment), does one piece of work and closes it, whatever became of the work. */
export async function inSchool<T>(
  io: Io,
  data: string | undefined,
  work: (school: School) => Promise<T>,
): Promise<T> {
  const config = configFor(io, data);
  const base = config.url?.replace(/\/$/, '') ?? `http://${config.host}:${config.port}`;
  const school = await openSchool(config, () => base);
  try {
    return await work(school);
  } finally {
    await school.store.close();
  }
}

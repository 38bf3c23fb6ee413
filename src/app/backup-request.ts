import { readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync, existsSync } from 'node:fs';
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Fault, type FaultCode } from '../../shared/fault.js';
import type { Store } from '../store/store.js';
import type { Log } from './log.js';

/*
 * A server has its data folder for itself, so a backup is asked of it: a request is a file in the folder,
 * "backup-ID.request" with the path to write to; the server renames it to ".taken", makes the copy beside its work and
 * leaves ".answer". Who may write into the folder may read all of it anyway, so that no further key is needed.
 */

/** How often each side looks, in milliseconds; how long a request waits to be taken, and a taken one for its answer. */
const times = { look: 300, taken: 20_000, answer: 15 * 60_000 } as const;

interface Answer {
  readonly fault: { readonly code: FaultCode; readonly message: string; readonly remedy: string } | null;
}

const requestName = /^backup-[0-9a-f-]{36}\.request$/;
/** What a server or an asker that was cut off left behind. */
const leftover = /^backup-[0-9a-f-]{36}\.(?:taken|answer|request\.part|answer\.part)$/;

function write(path: string, value: unknown): void {
  writeFileSync(`${path}.part`, JSON.stringify(value), { mode: 0o600 });
  renameSync(`${path}.part`, path);
}

/** Asks the server that has a data folder for a copy into a new file, by its whole path; throws the server's `Fault`, or one where nobody answers. */
export async function askForBackup(
  folder: string,
  file: string,
  patience: { readonly taken: number; readonly answer: number } = times,
): Promise<void> {
  const path = join(folder, `backup-${randomUUID()}`);
  write(`${path}.request`, { file });
  try {
    for (let waited = 0; !existsSync(`${path}.answer`); waited += times.look) {
      const limit = existsSync(`${path}.request`) ? patience.taken : patience.answer;
      if (waited >= limit) {
        throw new Fault(
          'in use',
          `Cannot back up, expected the process that has ${folder} to answer within ${limit / 1000} seconds, got nothing`,
          'Is it the server of this version? Else stop it first, then try again.',
        );
      }
      await pause(times.look);
    }
    const { fault } = JSON.parse(readFileSync(`${path}.answer`, 'utf8')) as Answer;
    if (fault) throw new Fault(fault.code, fault.message, fault.remedy);
  } finally {
    for (const end of ['request', 'answer']) rmSync(`${path}.${end}`, { force: true });
  }
}

async function answerOf(store: Pick<Store, 'backup'>, taken: string): Promise<Answer> {
  try {
    const asked: unknown = JSON.parse(readFileSync(taken, 'utf8'));
    const file = typeof asked === 'object' && asked !== null && 'file' in asked ? asked.file : null;
    if (typeof file !== 'string') {
      throw new Fault('bad input', 'Cannot back up, expected a file to write to, got none', 'Ask again.');
    }
    await store.backup(file);
    return { fault: null };
  } catch (why) {
    if (why instanceof Fault) return { fault: { code: why.code, message: why.message, remedy: why.remedy } };
    const message = 'Cannot back up, something unexpected happened';
    return { fault: { code: 'disk', message, remedy: 'Look at the server’s log.' } };
  }
}

/** Answers requests for a backup of a folder until stopped, one after the other; one that nobody waits for any more is thrown away. */
export function answerBackups(
  folder: string,
  store: Pick<Store, 'backup'>,
  log: Log,
): { stop(): Promise<void> } {
  let stopped = false;
  let timer: NodeJS.Timeout | null = null;
  let running: Promise<void> = Promise.resolve();

  const one = async (name: string): Promise<void> => {
    const request = join(folder, name);
    const path = request.slice(0, -'.request'.length);
    if (Date.now() - statSync(request).mtimeMs > times.taken) return rmSync(request, { force: true });
    renameSync(request, `${path}.taken`);
    const answer = await answerOf(store, `${path}.taken`);
    write(`${path}.answer`, answer);
    rmSync(`${path}.taken`, { force: true });
    log.info({ code: answer.fault?.code ?? 'done' }, 'a backup was asked for');
  };
  const look = async (): Promise<void> => {
    try {
      for (const name of readdirSync(folder)) if (!stopped && requestName.test(name)) await one(name);
    } catch (why) {
      log.error({ code: (why as NodeJS.ErrnoException).code ?? 'unknown' }, 'a backup could not be answered');
    }
    if (!stopped) timer = setTimeout(go, times.look).unref();
  };
  const go = (): void => {
    running = look();
  };
  for (const name of readdirSync(folder))
    if (leftover.test(name)) rmSync(join(folder, name), { force: true });
  go();
  return {
    async stop() {
      stopped = true;
      if (timer) clearTimeout(timer);
      await running;
    },
  };
}

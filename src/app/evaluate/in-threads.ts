import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { Fault } from '../../../shared/fault.js';
import type { Measured, MeasureData } from './measure.js';
import type { Row } from './row.js';

/** Memory of word knowledge and data is held once a thread, so no more than these. */
const mostThreads = 2;

/**
 * Runs evaluations by name over a few threads, each taking the next that is left; the rows come in the order of the names.
 * `show` is told what share of all is done. Rejects with what a thread throws.
 */
export async function measureInThreads(
  names: readonly string[],
  data: string,
  show: (share: number, name: string) => void,
): Promise<readonly Row[]> {
  const left = [...names];
  const shares = new Map<string, number>(names.map((name) => [name, 0]));
  const rows = new Map<string, readonly Row[]>();
  const threads = Math.min(mostThreads, availableParallelism(), names.length);
  const tell = (name: string, share: number): void => {
    shares.set(name, share);
    show([...shares.values()].reduce((sum, one) => sum + one, 0) / names.length, name);
  };
  const workers: Worker[] = [];
  const run = (): Promise<void> =>
    new Promise((done, fail) => {
      const worker = new Worker(new URL('./measure.js', import.meta.url), {
        workerData: { data } satisfies MeasureData,
      });
      workers.push(worker);
      const next = (): void => {
        const name = left.shift();
        if (name === undefined) done();
        else worker.postMessage(name);
      };
      worker.on('error', fail);
      worker.on('message', (said: Measured) => {
        if ('fault' in said) return fail(new Fault(said.fault.code, said.fault.message, said.fault.remedy));
        if ('share' in said) return tell(said.name, said.share);
        rows.set(said.name, said.rows);
        tell(said.name, 1);
        next();
      });
      next();
    });
  try {
    await Promise.all(Array.from({ length: threads }, run));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return names.flatMap((name) => rows.get(name) ?? []);
}

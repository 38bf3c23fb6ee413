import { Worker } from 'node:worker_threads';
import { chanceFrom } from './chance.js';
import type { Entrance } from './entrance.js';
import { throughFiles } from './through-files.js';
import { throughTheDisk } from './through-the-disk.js';
import { throughTheHouse } from './through-the-house.js';
import { throughTheRoom } from './through-the-room.js';

/** Every way in. */
export const entrances: readonly Entrance[] = [
  ...throughTheHouse,
  ...throughTheRoom,
  ...throughFiles,
  ...throughTheDisk,
];

/** What must not be, with how to see it again: the same entrance, seed and number of inputs. */
export interface Failure {
  readonly entrance: string;
  readonly seed: number;
  readonly input: number;
  readonly what: string;
  readonly shown: unknown;
}

/** How long one input may take, in milliseconds of the processor's time, since a machine may be busy with others; after `hangs` on the wall the whole run is ended from beside. */
const limits = { slow: 10_000, hangs: 60_000, most: 25 } as const;

/** A dog beside the run: an input that never ends stops this thread, so that only another one can say which it was. */
function watchdog(): { readonly now: (what: string) => void; stop(): Promise<number> } {
  const shared = new SharedArrayBuffer(4096);
  const words = new Uint8Array(shared, 8);
  const count = new Int32Array(shared, 0, 1);
  const code = `
    const { workerData } = require('node:worker_threads');
    const count = new Int32Array(workerData.shared, 0, 1);
    const words = new Uint8Array(workerData.shared, 8);
    let before = -1;
    setInterval(() => {
      const now = Atomics.load(count, 0);
      if (now === before) {
        process._rawDebug('hangs: ' + Buffer.from(words).toString('utf8').replace(/\\0.*$/s, ''));
        process.kill(process.pid, 'SIGKILL');
      }
      before = now;
    }, workerData.hangs);
  `;
  const worker = new Worker(code, { eval: true, workerData: { shared, hangs: limits.hangs } });
  worker.unref();
  return {
    now(what) {
      words.fill(0);
      new TextEncoder().encodeInto(what, words);
      Atomics.add(count, 0, 1);
    },
    stop: () => worker.terminate(),
  };
}

function told(why: unknown): string {
  if (!(why instanceof Error)) return String(why);
  const place = why.stack?.split('\n').find((line) => line.includes('/src/') || line.includes('/shared/'));
  return `${why.name}: ${why.message}${place === undefined ? '' : ` (${place.trim()})`}`;
}

/** Gives so many inputs in all, parted by share, and gathers what must not be; `tell` hears of each entrance that is done. */
export async function fuzz(
  total: number,
  seed: number,
  tell: (words: string) => void = () => {},
  only: readonly Entrance[] = entrances,
): Promise<{ readonly inputs: number; readonly failures: readonly Failure[] }> {
  const dog = watchdog();
  const failures: Failure[] = [];
  const shares = only.reduce((sum, { share }) => sum + share, 0);
  let inputs = 0;
  try {
    for (const entrance of only) {
      const began = Date.now();
      const many = Math.max(1, Math.ceil((total * entrance.share) / shares));
      const source = await entrance.open(chanceFrom(seed));
      const before = failures.length;
      for (let nth = 0; nth < many && failures.length - before < limits.most; nth += 1) {
        dog.now(`${entrance.name}, seed ${seed}, input ${nth}`);
        const input = await source.next();
        const from = process.cpuUsage();
        try {
          await input.run();
          const used = process.cpuUsage(from).user / 1000;
          if (used > limits.slow) throw new Error(`took ${used} ms of the processor`);
        } catch (why) {
          failures.push({ entrance: entrance.name, seed, input: nth, what: told(why), shown: input.shown });
        }
        inputs += 1;
      }
      await source.close();
      tell(
        `${entrance.name}: ${many} inputs, ${failures.length - before} failures, ${Date.now() - began} ms`,
      );
    }
  } finally {
    await dog.stop();
  }
  return { inputs, failures };
}

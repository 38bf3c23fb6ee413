import { parentPort, workerData } from 'node:worker_threads';
import { judgeFolds } from './question-folds.js';

/*
 * A thread that judges some of the folds while the first one judges the others. It sends all
 * that was said once it is through.
 */
const { dir, which } = workerData as { readonly dir: string; readonly which: readonly number[] };
parentPort?.postMessage(judgeFolds(dir, which, () => undefined));

import { Worker } from 'node:worker_threads';
import { readQuestions } from '../train/question-data.js';
import { judgeFolds, type JudgedAt } from './question-folds.js';
import { questionRows, type Judged } from './question-rows.js';
import type { Evaluation } from './row.js';

/** Folds of the first thread, and those of a second one beside it. */
const here = [0, 1, 2];
const beside = [3, 4];

/** Questions on stories: each judged by a model that has seen nothing of its story, five folds over train and val. */
export const questions: Evaluation = {
  name: 'question',
  async run(dir, progress) {
    const others = judgeBeside(dir);
    const own = judgeFolds(dir, here, (fold) => progress((fold + 0.8) / here.length));
    const judged: Judged[] = [];
    for (const [i, each] of [...own, ...(await others)]) judged[i] = each;
    progress(1);
    return questionRows(readQuestions(dir), judged);
  },
};

/** The second thread's folds; it fails where the thread does. */
function judgeBeside(dir: string): Promise<readonly JudgedAt[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./question-worker.js', import.meta.url), {
      workerData: { dir, which: beside },
    });
    worker.on('message', resolve);
    worker.on('error', reject);
  });
}

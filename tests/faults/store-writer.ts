/**
 * A process that writes posts into a data folder as fast as it can, until it is killed. Before each commit it says
 * "try N", after it "ack N". Arguments: the folder, and the number of the first post, which may have been tried before.
 */
import { asId, type ClassId } from '../../shared/ids.js';
import { openSqliteStore } from '../../src/store/sqlite-store.js';
import { channel, commitOf, drafted, messageOf, sayOf, tryOf } from '../support/commits.js';

const [folder = '', first = '1'] = process.argv.slice(2);
const oak = asId<ClassId>('oak');
// From here on it may be killed, while it recovers too.
process.stdout.write('opening\n');
const store = await openSqliteStore(folder);
for (let n = Number(first); ; n += 1) {
  process.stdout.write(`try ${n}\n`);
  const expected = (await store.events(oak, Math.max(0, n - 2))).length + Math.max(0, n - 2);
  const done = await store.commit([
    commitOf(oak, expected, {
      events: [drafted('p1', `post-${n}`, `text ${n}`)],
      inbox: { updateId: `u-${n}`, reply: `reply ${n}` },
      tellings: [{ at: n, telling: sayOf(`post-${n}`, messageOf(channel, `text ${n}`)) }],
      evidence: [tryOf('p1', `post-${n}`, n)],
    }),
  ]);
  if ('conflict' in done) throw new Error('expected no conflict');
  process.stdout.write(`ack ${n}\n`);
}

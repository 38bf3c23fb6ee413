import type { Kysely, Transaction } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { concernOf } from './concerns.js';
import { addCommit, noRows, postsOf, type OwnerOf } from './rows-of-commit.js';
import type { Commit, Committed } from './store.js';
import type { PostRow, Tables } from './tables.js';
import { writeTold, type Told } from './tell.js';
import { writeRows } from './write-rows.js';

class TooLate extends Error {
  readonly classId: ClassId;
  constructor(classId: ClassId) {
    super('a later version is there already');
    this.classId = classId;
  }
}

/** A commit that is to be written, with the version that it follows. */
interface Accepted {
  readonly commit: Commit;
  readonly after: number;
}

const pair = (classId: ClassId, id: string): string => `${classId}\u0000${id}`;
const classesOf = (batch: readonly Commit[]): ClassId[] => [...new Set(batch.map(({ classId }) => classId))];

async function readVersions(
  tx: Transaction<Tables>,
  batch: readonly Commit[],
): Promise<Map<ClassId, number>> {
  const rows = await tx
    .selectFrom('class')
    .select(['class_id', 'version'])
    .where('class_id', 'in', classesOf(batch))
    .execute();
  return new Map(rows.map((row) => [row.class_id, row.version]));
}

async function readSeen(tx: Transaction<Tables>, batch: readonly Commit[]): Promise<Set<string>> {
  const updates = batch.flatMap(({ inbox }) => (inbox ? [inbox.updateId] : []));
  if (updates.length === 0) return new Set();
  const rows = await tx
    .selectFrom('inbox')
    .select(['class_id', 'update_id'])
    .where('class_id', 'in', classesOf(batch))
    .where('update_id', 'in', updates)
    .execute();
  return new Set(rows.map((row) => pair(row.class_id, row.update_id)));
}

/** Sorts a batch into what is to be written and what was done before; throws `TooLate` for the first that another writer was ahead of. */
function sortBatch(
  batch: readonly Commit[],
  heads: Map<ClassId, number>,
  seen: Set<string>,
): { readonly accepted: readonly Accepted[] } & Committed {
  const accepted: Accepted[] = [];
  const versions: number[] = [];
  const duplicates: number[] = [];
  for (const [index, commit] of batch.entries()) {
    const { classId, inbox } = commit;
    const after = heads.get(classId) ?? 0;
    if (inbox && seen.has(pair(classId, inbox.updateId))) {
      duplicates.push(index);
      versions.push(after);
      continue;
    }
    if (after !== commit.expectedVersion) throw new TooLate(classId);
    if (inbox) seen.add(pair(classId, inbox.updateId));
    accepted.push({ commit, after });
    heads.set(classId, after + commit.events.length);
    versions.push(after + commit.events.length);
  }
  return { accepted, versions, duplicates };
}

async function readOwners(
  tx: Transaction<Tables>,
  batch: readonly Commit[],
  fresh: readonly PostRow[],
): Promise<OwnerOf> {
  const owners = new Map(fresh.map((row) => [pair(row.class_id, row.post), row.person]));
  const unknown = batch.flatMap(({ classId, events }) =>
    events.flatMap((event) => concernOf(event).posts).filter((post) => !owners.has(pair(classId, post))),
  );
  if (unknown.length > 0) {
    const rows = await tx
      .selectFrom('post')
      .selectAll()
      .where('class_id', 'in', classesOf(batch))
      .where('post', 'in', [...new Set(unknown)])
      .execute();
    for (const row of rows) owners.set(pair(row.class_id, row.post), row.person);
  }
  return (classId, post) => owners.get(pair(classId, post));
}

function toldBy({ commit, after }: Accepted, people: readonly ReadonlySet<PersonId>[]): Told[] {
  const all = new Set(people.flatMap((some) => [...some]));
  return commit.tellings.map(({ telling, at, event }) => ({
    classId: commit.classId,
    version: after + commit.events.length,
    telling,
    at,
    people: (event === undefined ? undefined : people[event]) ?? all,
  }));
}

async function writeHeads(tx: Transaction<Tables>, accepted: readonly Accepted[]): Promise<void> {
  for (const { commit, after } of accepted) {
    const head = { version: after + commit.events.length, due_at: commit.dueAt };
    await tx
      .insertInto('class')
      .values({ class_id: commit.classId, ...head })
      .onConflict((oc) => oc.column('class_id').doUpdateSet(head))
      .execute();
  }
}

async function writeBatch(
  tx: Transaction<Tables>,
  batch: readonly Commit[],
  now: Instant,
): Promise<Committed> {
  const { accepted, versions, duplicates } = sortBatch(
    batch,
    await readVersions(tx, batch),
    await readSeen(tx, batch),
  );
  const commits = accepted.map(({ commit }) => commit);
  if (commits.length === 0) return { versions, duplicates };
  const rows = noRows();
  rows.post.push(...commits.flatMap(postsOf));
  const ownerOf = await readOwners(tx, commits, rows.post);
  const told = accepted.flatMap((one) => toldBy(one, addCommit(rows, one.commit, one.after, ownerOf, now)));
  rows.about.push(...(await writeTold(tx, told)));
  await writeRows(tx, rows);
  await writeHeads(tx, accepted);
  return { versions, duplicates };
}

/** Writes a batch of commits in one transaction or not at all; see the port. */
export async function commitBatch(
  db: Kysely<Tables>,
  batch: readonly Commit[],
  now: Instant,
): Promise<Committed | { readonly conflict: ClassId }> {
  if (batch.length === 0) return { versions: [], duplicates: [] };
  try {
    return await db.transaction().execute((tx) => writeBatch(tx, batch, now));
  } catch (error) {
    if (error instanceof TooLate) return { conflict: error.classId };
    throw error;
  }
}

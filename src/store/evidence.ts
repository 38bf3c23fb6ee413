import type { Kysely } from 'kysely';
import type { EvidenceRow } from '../../shared/evidence.js';
import { mustBeWhole, readStored, sumOfEvidence } from './sums.js';
import type { EvidenceQuery } from './store.js';
import type { Tables } from './tables.js';

/** Tries of a class in the order in which they were given, narrowed by what the query names. */
export async function readEvidence(
  db: Kysely<Tables>,
  { classId, group, person, passage, since }: EvidenceQuery,
): Promise<readonly EvidenceRow[]> {
  let query = db
    .selectFrom('evidence')
    .select(['class_id', 'key', 'person', 'body', 'sum'])
    .where('class_id', '=', classId);
  if (group !== undefined) query = query.where('group_id', '=', group);
  if (person !== undefined) query = query.where('person', '=', person);
  if (passage !== undefined) query = query.where('passage', '=', passage);
  if (since !== undefined) query = query.where('at', '>=', since);
  const rows = await query.orderBy('at').orderBy('key').execute();
  return rows.map((row) => {
    mustBeWhole(row.sum, sumOfEvidence(row), `a level of class ${classId}`);
    return readStored<EvidenceRow>(row.body, `a level of class ${classId}`);
  });
}

import type { Kysely } from 'kysely';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Tables } from './tables.js';

/** What must go with a person: their texts, texts about them, and nicknames that are nobody else's. */
export interface PersonsWords {
  readonly texts: readonly string[];
  readonly nicknames: readonly string[];
}

/** Gathers a person's words before they are erased. */
export async function readPersonsWords(
  db: Kysely<Tables>,
  classId: ClassId,
  person: PersonId,
): Promise<PersonsWords> {
  const said = await db
    .selectFrom('said')
    .select(['what', 'person', 'text'])
    .where('class_id', '=', classId)
    .where('text', 'is not', null)
    .where((eb) => eb.or([eb('person', '=', person), eb('about', '=', person), eb('what', '=', 'nickname')]))
    .execute();
  const sealed = await db
    .selectFrom('sealed')
    .select('text')
    .where('class_id', '=', classId)
    .where('person', '=', person)
    .execute();
  const nicknames = said.filter(({ what }) => what === 'nickname');
  const others = new Set(nicknames.filter((row) => row.person !== person).map(({ text }) => text));
  const own = nicknames.filter((row) => row.person === person && !others.has(row.text));
  return {
    texts: [...said.filter(({ what }) => what === 'words'), ...sealed].flatMap(({ text }) => text ?? []),
    nicknames: [...new Set(own.flatMap(({ text }) => text || []))],
  };
}

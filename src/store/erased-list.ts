import { closeSync, fsyncSync, openSync, readFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';

/** Somebody who was erased: ids only, which say nothing to anybody without the data. */
export interface Erased {
  readonly classId: ClassId;
  readonly person: PersonId;
}

/** The list of a data folder's erased people, beside the database, so that a backup made before is erased again when it is put back. */
export interface ErasedList {
  read(): readonly Erased[];
  add(one: Erased): void;
}

/** A list that is kept nowhere, for a store in memory. */
export const noList: ErasedList = { read: () => [], add: () => undefined };

/** The file of a data folder's list. */
export function erasedFile(folder: string): string {
  return join(folder, 'erased');
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (why) {
    if ((why as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw why;
  }
}

/** The list in a data folder, a line of two ids for each; a line that is anything else is passed over. */
export function erasedList(folder: string): ErasedList {
  const file = erasedFile(folder);
  const read = (): readonly Erased[] =>
    textOf(file)
      .split('\n')
      .flatMap((line) => {
        const [classId, person, ...rest] = line.trim().split('\t');
        return classId && person && rest.length === 0
          ? [{ classId: asId<ClassId>(classId), person: asId<PersonId>(person) }]
          : [];
      });
  return {
    read,
    add(one) {
      if (read().some(({ classId, person }) => classId === one.classId && person === one.person)) return;
      const handle = openSync(file, 'a', 0o600);
      try {
        writeSync(handle, `${one.classId}\t${one.person}\n`);
        fsyncSync(handle);
      } finally {
        closeSync(handle);
      }
    },
  };
}

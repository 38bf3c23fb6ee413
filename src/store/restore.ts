import {
  chmodSync,
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
} from 'node:fs';
import Database from 'better-sqlite3';
import { Fault } from '../../shared/fault.js';
import { diskFault } from './disk-fault.js';
import { databaseFile } from './open-database.js';
import { openSqliteStore } from './sqlite-store.js';

function copyOnto(file: string, target: string): void {
  const part = `${target}.part`;
  try {
    copyFileSync(file, part);
    chmodSync(part, 0o600);
    const handle = openSync(part, 'r+');
    fsyncSync(handle);
    closeSync(handle);
    renameSync(part, target);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
}

/** Whether a file is a database that a migration of ours has made; throws what SQLite says of a damaged one. */
function isOurs(file: string): boolean {
  const raw = new Database(file, { readonly: true, fileMustExist: true });
  try {
    return (
      raw.prepare(`select 1 from sqlite_master where type = 'table' and name = 'migration'`).get() !==
      undefined
    );
  } finally {
    raw.close();
  }
}

/** Puts a copy made by `backup` into a data folder that holds no data yet, and opens it once to see that it is sound; a copy that isn't leaves the folder as it was. */
export async function restoreStore(file: string, folder: string): Promise<void> {
  const target = databaseFile(folder);
  if (!existsSync(file)) {
    throw new Fault('bad input', `Cannot restore, expected the file ${file}, got none`, 'Look at its name.');
  }
  if (existsSync(target)) {
    throw new Fault(
      'bad input',
      `Cannot restore, expected ${folder} to be empty or new, got one that holds data`,
      'Restore into another folder, or move the data away first.',
    );
  }
  try {
    if (!isOurs(file)) {
      throw new Fault(
        'bad input',
        `Cannot restore ${file}, expected a copy made by backup, got something else`,
        'Look for the file that backup wrote.',
      );
    }
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    copyOnto(file, target);
  } catch (error) {
    throw diskFault(error, `restore ${file}`, `it and the data folder ${folder}`);
  }
  try {
    const store = await openSqliteStore(folder);
    await store.close();
  } catch (error) {
    for (const end of ['', '-wal', '-shm']) rmSync(`${target}${end}`, { force: true });
    throw error;
  }
}

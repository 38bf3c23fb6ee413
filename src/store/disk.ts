import type Database from 'better-sqlite3';
import { sql, type Kysely } from 'kysely';
import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync } from 'node:fs';
import { Fault } from '../../shared/fault.js';
import type { Tables } from './tables.js';

/** What each kind of database does in its own way. */
export interface Disk {
  /** Leaves no byte of what was deleted. */
  sweep(): Promise<void>;
  /** A consistent copy into a new file. */
  backup(file: string): Promise<void>;
}

function keepOnDisk(part: string, file: string): void {
  const handle = openSync(part, 'r+');
  fsyncSync(handle);
  closeSync(handle);
  renameSync(part, file);
}

/** Pages of 4 KiB copied before writers have their turn. */
const pagesAtOnce = 64;

/** SQLite's ways: the file is written anew and the log cut to nothing; a copy is made page by page while others write, and holds one whole moment at its end. */
export function sqliteDisk(db: Kysely<Tables>, raw: Database.Database): Disk {
  return {
    async sweep() {
      await sql`vacuum`.execute(db);
      await sql`pragma wal_checkpoint(truncate)`.execute(db);
    },
    async backup(file) {
      if (existsSync(file)) {
        throw new Fault(
          'bad input',
          `Cannot back up into ${file}, expected a file that isn't there yet, got one that is`,
          'Give another name, or move the older backup away.',
        );
      }
      const part = `${file}.part`;
      rmSync(part, { force: true });
      try {
        closeSync(openSync(part, 'wx', 0o600));
        await raw.backup(part, { progress: () => pagesAtOnce });
        keepOnDisk(part, file);
      } catch (error) {
        rmSync(part, { force: true });
        throw error;
      }
    },
  };
}

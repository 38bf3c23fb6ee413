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

/** SQLite's ways: the file is written anew and the log cut to nothing; a copy is one read of one moment, without what was deleted. */
export function sqliteDisk(db: Kysely<Tables>): Disk {
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
        await sql`vacuum into ${part}`.execute(db);
        keepOnDisk(part, file);
      } catch (error) {
        rmSync(part, { force: true });
        throw error;
      }
    },
  };
}

import Database from 'better-sqlite3';
import { SqliteDialect, Kysely } from 'kysely';
import type { SqliteDatabase, SqliteStatement } from 'kysely';
import { closeSync, mkdirSync, openSync } from 'node:fs';
import { join } from 'node:path';
import type { Tables } from './tables.js';

/** How long another process is waited for that is just closing, in milliseconds. */
const patience = 750;

/** Statements kept ready; batches of many sizes make many texts, so that old ones must go. */
const mostStatements = 300;

const nothing: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [][Symbol.iterator](),
};

/** Keeps statements prepared by their text. A failed write may have ended its transaction already; rolling back then does nothing, so that the first error is the one told. */
function preparing(raw: Database.Database): SqliteDatabase {
  const ready = new Map<string, SqliteStatement>();
  return {
    close: () => raw.close(),
    prepare(sql) {
      if (sql === 'rollback' && !raw.inTransaction) return nothing;
      const known = ready.get(sql);
      if (known) return known;
      const made = raw.prepare(sql) as SqliteStatement;
      if (ready.size >= mostStatements) ready.clear();
      ready.set(sql, made);
      return made;
    },
  };
}

/** An open database: as queries, and as the library has it. */
export interface Opened {
  readonly db: Kysely<Tables>;
  readonly raw: Database.Database;
}

function opened(raw: Database.Database): Opened {
  return { raw, db: new Kysely<Tables>({ dialect: new SqliteDialect({ database: preparing(raw) }) }) };
}

/** The database's file in a data folder. */
export function databaseFile(folder: string): string {
  return join(folder, 'turnstone.sqlite');
}

/**
 * Opens or makes the database of a data folder for this process alone, until it is closed; folder and file are the
 * account's own (0700, 0600). Each commit reaches the disk before it counts; what is deleted is overwritten.
 */
export function openFile(folder: string): Opened {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const file = databaseFile(folder);
  closeSync(openSync(file, 'a', 0o600));
  const raw = new Database(file, { timeout: patience });
  try {
    raw.pragma('locking_mode = EXCLUSIVE');
    raw.pragma('journal_mode = WAL');
    raw.pragma('synchronous = FULL');
    raw.pragma('secure_delete = ON');
    raw.pragma('temp_store = MEMORY');
    // Takes the lock now and not at the first write.
    raw.exec('begin exclusive; commit');
    const check = raw.pragma('quick_check(1)', { simple: true });
    if (check !== 'ok') throw new Database.SqliteError('quick_check failed', 'SQLITE_CORRUPT');
  } catch (error) {
    raw.close();
    throw error;
  }
  return opened(raw);
}

/** Opens a database that lives in memory and is gone when closed. */
export function openMemory(): Opened {
  const raw = new Database(':memory:');
  raw.pragma('temp_store = MEMORY');
  return opened(raw);
}

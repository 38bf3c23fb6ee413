import Database from 'better-sqlite3';
import { Fault } from '../../shared/fault.js';

/** What went wrong by the beginning of SQLite's or the system's code, with what to do; the first that fits counts. */
const remedies: readonly { readonly code: string; readonly got: string; readonly remedy: string }[] = [
  {
    code: 'SQLITE_FULL',
    got: 'a full disk',
    remedy: 'Free some room on the disk, then try again; what was kept before is safe.',
  },
  {
    code: 'ENOSPC',
    got: 'a full disk',
    remedy: 'Free some room on the disk, then try again; what was kept before is safe.',
  },
  {
    code: 'SQLITE_CORRUPT',
    got: 'a damaged file',
    remedy: 'Stop, keep a copy of the folder as it is, and restore the newest backup.',
  },
  {
    code: 'SQLITE_NOTADB',
    got: 'a file that is no database',
    remedy: 'Stop, keep a copy of the folder as it is, and restore the newest backup.',
  },
  // Our own statements are fixed, so that one which no longer fits means a schema that has changed by itself.
  ...['SQLITE_ERROR', 'SQLITE_SCHEMA', 'SQLITE_MISMATCH', 'SQLITE_FORMAT'].map((code) => ({
    code,
    got: 'a damaged file',
    remedy: 'Stop, keep a copy of the folder as it is, and restore the newest backup.',
  })),
  ...['SQLITE_READONLY', 'SQLITE_CANTOPEN', 'EACCES', 'EPERM', 'EROFS'].map((code) => ({
    code,
    got: 'one that may not be written',
    remedy:
      'Give the account that runs Turnstone the right to write there, or set TURNSTONE_DATA to another folder.',
  })),
  {
    code: 'ENOENT',
    got: 'one that isn’t there',
    remedy: 'Make the folder first, or give the path of one that is there.',
  },
  ...['ENOTDIR', 'EEXIST'].map((code) => ({
    code,
    got: 'a file in its place',
    remedy: 'Set TURNSTONE_DATA to a folder, or move the file away.',
  })),
  {
    code: 'SQLITE_IOERR',
    got: 'an error of the disk',
    remedy: 'Check the disk and its cable or network share, then start again.',
  },
  {
    code: 'EIO',
    got: 'an error of the disk',
    remedy: 'Check the disk and its cable or network share, then start again.',
  },
];

function codeOf(error: unknown): string {
  if (error instanceof Database.SqliteError) return error.code;
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
}

/** The fault behind an error of the disk or the database, said once for all of the store; any other error is given back as it is. */
export function diskFault(error: unknown, what: string, where: string): unknown {
  const code = codeOf(error);
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) {
    return new Fault(
      'in use',
      `Cannot ${what}, expected ${where} for one process alone, got one that another process has open`,
      'Stop the other Turnstone first, or set TURNSTONE_DATA to another folder.',
    );
  }
  const known = remedies.find((one) => code.startsWith(one.code));
  if (!known) return error;
  return new Fault(
    'disk',
    `Cannot ${what}, expected ${where} to be a sound folder that can be written, got ${known.got} (${code})`,
    known.remedy,
  );
}

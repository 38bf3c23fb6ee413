import { createReadStream } from 'node:fs';
import { access, readFile } from 'node:fs/promises';
import { Fault, type FaultCode } from '../../shared/fault.js';

/** Where a verb writes: results only to `out`, everything else to `err`. */
export interface Io {
  readonly out: (text: string) => Promise<void>;
  readonly err: (text: string) => void;
  readonly input: AsyncIterable<Uint8Array>;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** A verb of the command line. */
export interface Verb {
  readonly name: string;
  readonly usage: string;
  readonly words: string;
  /** Resolves with the exit code: 0 done, 1 some input refused or a target missed. */
  readonly run: (args: readonly string[], io: Io) => Promise<number>;
}

/** Exit codes by fault: 2 wrong usage or unreadable file, 3 port or data folder in use, 1 otherwise. */
export function exitCode(code: FaultCode): number {
  switch (code) {
    case 'usage':
    case 'configuration':
    case 'disk':
      return 2;
    case 'in use':
      return 3;
    case 'bad input':
    case 'bad passage':
    case 'not allowed':
    case 'not found':
    case 'wrong time':
    case 'too long':
    case 'platform':
      return 1;
  }
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

/** Reads a whole text file; `Fault` with code 'disk' where it can't be read, 'bad passage' where it is no UTF-8 text. */
export async function readTextFile(path: string): Promise<string> {
  let bytes: Uint8Array;
  try {
    bytes = await readFile(path);
  } catch (why) {
    const code = (why as NodeJS.ErrnoException).code ?? 'unknown';
    throw new Fault(
      'disk',
      `Cannot read ${path}, expected a file that can be read, got ${code}`,
      'Check the path and its permissions.',
    );
  }
  try {
    return utf8.decode(bytes);
  } catch {
    throw new Fault(
      'bad passage',
      `Cannot read ${path}, expected UTF-8 text, got other bytes`,
      'Save it as plain text (UTF-8) and try again.',
    );
  }
}

/** The bytes of a file, piece by piece; `Fault` with code 'disk' where it can't be read. */
export async function bytesOf(path: string): Promise<AsyncIterable<Uint8Array>> {
  try {
    await access(path);
  } catch {
    throw new Fault(
      'disk',
      `Cannot read ${path}, expected a file that can be read`,
      'Check the path and its permissions.',
    );
  }
  return createReadStream(path);
}

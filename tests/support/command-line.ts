import { spawn } from 'node:child_process';

/** What a run of the built program gave. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built program with arguments; the environment holds nothing but what is given and the path. */
export function turnstone(
  args: readonly string[],
  options: { readonly input?: string | Uint8Array; readonly env?: Readonly<Record<string, string>> } = {},
): Promise<Ran> {
  return new Promise((settle, fail) => {
    const child = spawn(process.execPath, ['dist/src/app/main.js', ...args], {
      env: { PATH: process.env['PATH'] ?? '', TURNSTONE_LOG: 'warn', ...options.env },
    });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', fail);
    child.on('close', (code) => settle({ code, out, err }));
    child.stdin.on('error', () => undefined);
    child.stdin.end(options.input ?? '');
  });
}

/** The lines of JSON Lines as objects. */
export function linesOf<T = Record<string, unknown>>(text: string): T[] {
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as T);
}

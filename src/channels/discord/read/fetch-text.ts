import { Fault } from '../../../../shared/fault.js';
import { say } from '../words.js';
import { discordOwn } from '../options.js';
import type { SentFile } from './interaction.js';

/** The longest file that is read, in bytes; a page is shorter. */
const mostBytes = 262_144;

/** How long a file is waited for, in milliseconds. */
const patience = 5000;

function refused(): Fault {
  return new Fault(
    'bad input',
    'Cannot read this file, expected a text',
    say('not a text', { most: mostBytes / 1024 }),
  );
}

/** Whether a file's address is one that files may be fetched from: Discord's own, or the host that was given in its place. */
export function mayFetch(url: string, api: string | null): boolean {
  const address = URL.canParse(url) ? new URL(url) : null;
  if (address === null) return false;
  if (api !== null) return address.host === new URL(api).host;
  return address.protocol === 'https:' && discordOwn.files.some((host) => address.host === host);
}

/** Fetches a .txt or .md file as text; throws `Fault` for anything else, and for other hosts. */
export async function fetchText(file: SentFile, api: string | null): Promise<string> {
  if (!/\.(?:txt|md)$/iu.test(file.name) || file.size > mostBytes || !mayFetch(file.url, api))
    throw refused();
  try {
    const response = await fetch(file.url, { redirect: 'error', signal: AbortSignal.timeout(patience) });
    if (!response.ok || response.body === null) throw refused();
    const bytes: Uint8Array[] = [];
    let length = 0;
    for await (const chunk of response.body as unknown as AsyncIterable<Uint8Array>) {
      length += chunk.length;
      if (length > mostBytes) throw refused();
      bytes.push(chunk);
    }
    return new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(bytes));
  } catch {
    throw refused();
  }
}

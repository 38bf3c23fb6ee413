import { Fault } from '../../../../shared/fault.js';
import { apiAddress, type SlackOptions } from '../options.js';
import { say } from '../words.js';
import type { SlackFile } from './state.js';

/** The most that is read of a file, in bytes, and how long it may take, in milliseconds. */
const most = 256 * 1024;
const patience = 8000;

/** Whether the bot's token may be shown to an address: Slack's own over TLS, or where the Web API was set to be. */
function isSlacks(address: URL, options: SlackOptions): boolean {
  if (options.api !== null && address.host === new URL(apiAddress(options.api)).host) return true;
  return address.protocol === 'https:' && /(?:^|\.)slack(?:-files)?\.com$/u.test(address.hostname);
}

/** Reads the text of a file that was chosen in a form; throws `Fault` with words for whoever chose it. */
export async function readFile(file: SlackFile, token: string, options: SlackOptions): Promise<string> {
  const fault = new Fault('bad passage', 'Cannot read the file, expected text', say('cannot read file'));
  const address = file.url_private_download ?? file.url_private ?? '';
  if (!URL.canParse(address) || !isSlacks(new URL(address), options)) throw fault;
  if ((file.size ?? 0) > most) throw fault;
  try {
    const response = await fetch(address, {
      headers: { authorization: `Bearer ${token}` },
      redirect: 'error',
      signal: AbortSignal.timeout(patience),
    });
    if (!response.ok || response.headers.get('content-type')?.startsWith('text/html')) throw fault;
    const bytes = await response.arrayBuffer();
    if (bytes.byteLength > most) throw fault;
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw fault;
  }
}

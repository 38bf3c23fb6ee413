import type { Context } from 'hono';
import { Fault } from '../../../../shared/fault.js';
import { say } from '../words.js';

/** What a posted form holds: fields for the move, and the room's own, which begin with "_". */
export interface PostedForm {
  readonly fields: Readonly<Record<string, string>>;
  readonly own: Readonly<Record<string, string>>;
}

const maxFields = 80;

/** An uploaded file as text, judged by its bytes and not by its name: UTF-8 without control characters. Throws `Fault`. */
export function textOfUpload(bytes: Uint8Array): string {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw notText();
  }
  if (/[\u0000-\u0008\u000b\u000e-\u001f\u007f]/u.test(text)) throw notText();
  return text;
}

function notText(): Fault {
  const [message = '', remedy = ''] = say('not text').split(/(?<=\.) /u);
  return new Fault('bad input', message.replace(/\.$/u, ''), remedy);
}

/** Reads a posted form; ticks of one name are joined by commas, and a file goes before what was typed under the same name. Throws `Fault` where it can't be read. */
export async function readForm(c: Context): Promise<PostedForm> {
  let body: Record<string, string | File | (string | File)[]>;
  try {
    body = await c.req.parseBody({ all: true });
  } catch (why) {
    if (why instanceof Error && why.name === 'BodyLimitError') throw why;
    throw new Fault('bad input', 'Cannot read the form, expected its fields', 'Go back and send it again.');
  }
  const fields: Record<string, string> = {};
  const own: Record<string, string> = {};
  for (const [name, value] of Object.entries(body).slice(0, maxFields)) {
    if (!/^_?[a-zA-Z][a-zA-Z-]{0,39}$/.test(name)) continue;
    const parts: string[] = [];
    let upload = '';
    for (const part of Array.isArray(value) ? value : [value]) {
      if (typeof part === 'string') parts.push(part);
      else upload = textOfUpload(new Uint8Array(await part.arrayBuffer()));
    }
    (name.startsWith('_') ? own : fields)[name] =
      upload === '' ? parts.filter((part) => part !== '').join(',') : upload;
  }
  return { fields, own };
}

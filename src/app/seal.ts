import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from 'node:crypto';
import { Fault } from '../../shared/fault.js';

const form = 'v1';

function keyFor(key: string, name: string): Buffer {
  return Buffer.from(hkdfSync('sha256', key, '', `turnstone seal ${name}`, 32));
}

/** Seals a text with the school's key (AES-256-GCM); `name` says what it is for, and nothing else opens it. */
export function seal(key: string, name: string, text: string): string {
  const once = randomBytes(12);
  const cipher = createCipheriv('aes-256-gcm', keyFor(key, name), once);
  cipher.setAAD(Buffer.from(name));
  const body = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
  return `${form}.${Buffer.concat([once, cipher.getAuthTag(), body]).toString('base64url')}`;
}

/** Opens what `seal` made; throws `Fault` where the key is another or the text was changed. */
export function unseal(key: string, name: string, sealed: string): string {
  try {
    const bytes = Buffer.from(sealed.slice(form.length + 1), 'base64url');
    const cipher = createDecipheriv('aes-256-gcm', keyFor(key, name), bytes.subarray(0, 12));
    cipher.setAAD(Buffer.from(name));
    cipher.setAuthTag(bytes.subarray(12, 28));
    return Buffer.concat([cipher.update(bytes.subarray(28)), cipher.final()]).toString('utf8');
  } catch {
    throw new Fault(
      'configuration',
      `Cannot open what is kept for ${name}, expected the key that sealed it`,
      'Put the earlier TURNSTONE_KEY back, or the file "key" of the data folder.',
    );
  }
}

import { createPublicKey, verify, type KeyObject } from 'node:crypto';

/** What stands before a raw ed25519 key in DER (RFC 8410). */
const head = '302a300506032b6570032100';

/** The application's public key from 64 hexadecimal digits. */
export function publicKeyOf(digits: string): KeyObject {
  return createPublicKey({ key: Buffer.from(head + digits, 'hex'), format: 'der', type: 'spki' });
}

/** Whether a request comes from Discord: ed25519 over timestamp and body. */
export function isSigned(
  key: KeyObject,
  body: string,
  signature: string | null,
  timestamp: string | null,
): boolean {
  if (signature === null || timestamp === null || !/^[0-9a-f]{128}$/iu.test(signature)) return false;
  return verify(null, Buffer.from(timestamp + body), key, Buffer.from(signature, 'hex'));
}

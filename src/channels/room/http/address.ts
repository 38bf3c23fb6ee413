import { isIPv6 } from 'node:net';

/**
 * Whose guesses are counted: the peer's address, or behind a trusted proxy the last address that it appended. An IPv6
 * address counts by its /64 network, since one household or one attacker holds a whole one. Never logged.
 */
export function guesserOf(
  peer: string | undefined,
  forwarded: string | undefined,
  trustProxy: boolean,
): string {
  const appended = trustProxy ? forwarded?.split(',').at(-1)?.trim() : undefined;
  const address = appended === undefined || appended === '' ? (peer ?? 'unknown') : appended;
  const plain = address.replace(/^::ffff:(?=\d+\.)/iu, '').slice(0, 64);
  return isIPv6(plain) ? network64(plain) : plain;
}

function network64(address: string): string {
  const [head = '', tail] = (address.split('%')[0] ?? '').toLowerCase().split('::');
  const front = head === '' ? [] : head.split(':');
  const back = tail === undefined || tail === '' ? [] : tail.split(':');
  const zeros =
    tail === undefined ? [] : Array.from({ length: Math.max(0, 8 - front.length - back.length) }, () => '0');
  return `${[...front, ...zeros, ...back].slice(0, 4).join(':')}::/64`;
}

/** Refuses every connection and every name look-up beyond loopback, in each test file, before anything else runs. */
import dns from 'node:dns';
import net from 'node:net';

const loopback = new Set(['127.0.0.1', '::1', 'localhost', '0.0.0.0', '']);

function hostOf(args: readonly unknown[]): string | null {
  const first = Array.isArray(args[0]) ? (args[0] as unknown[])[0] : args[0];
  if (typeof first === 'object' && first !== null) {
    const options = first as { path?: string; host?: string };
    return options.path === undefined ? (options.host ?? '') : null;
  }
  if (typeof first === 'number') return typeof args[1] === 'string' ? args[1] : '';
  return null;
}

// eslint-disable-next-line @typescript-eslint/unbound-method -- applied to the socket again below
const connect = net.Socket.prototype.connect as (...args: unknown[]) => net.Socket;
net.Socket.prototype.connect = function guarded(this: net.Socket, ...args: unknown[]): net.Socket {
  const host = hostOf(args);
  if (host !== null && !loopback.has(host)) {
    throw new Error(`Cannot connect from a test, expected loopback, got ${host}`);
  }
  return connect.apply(this, args);
};

const lookup = dns.lookup as (...args: unknown[]) => void;
dns.lookup = function guarded(...args: unknown[]): void {
  const name = String(args[0]);
  if (!loopback.has(name))
    throw new Error(`Cannot look up a name from a test, expected loopback, got ${name}`);
  lookup(...args);
} as unknown as typeof dns.lookup;

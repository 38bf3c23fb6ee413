import { existsSync } from 'node:fs';
import { z } from 'zod';
import { Fault } from '../../shared/fault.js';
import { halfSet, slackOf, type SlackSettings } from './slack-settings.js';

interface Setting {
  readonly name: string;
  readonly words: string;
  readonly default: string | null;
  readonly secret: boolean;
  readonly shape: z.ZodType<unknown, string>;
  readonly expected: string;
}

const anything = z.string().min(1);
const address = z.url({ protocol: /^https?$/ });
const port = z
  .string()
  .regex(/^\d{1,5}$/)
  .refine((text) => Number(text) <= 65535);

function setting(
  name: string,
  words: string,
  fallback: string | null,
  shape: z.ZodType<unknown, string>,
  expected: string,
  secret = false,
): Setting {
  return { name, words, default: fallback, secret, shape, expected };
}

/** Every setting that the environment or a .env file may hold; the README's table is written from this list. */
export const settings: readonly Setting[] = [
  setting(
    'TURNSTONE_DATA',
    'folder in which everything is kept; one folder is one school',
    './data',
    anything,
    'a folder',
  ),
  setting(
    'TURNSTONE_HOST',
    'address to listen on',
    '127.0.0.1',
    anything,
    'an address, for instance 127.0.0.1',
  ),
  setting(
    'TURNSTONE_PORT',
    'port to listen on; 0 takes a free one',
    '8080',
    port,
    'a number from 0 to 65535',
  ),
  setting(
    'TURNSTONE_URL',
    'address that links are built on; needed to listen beyond loopback',
    null,
    address,
    'an address that begins with http:// or https://',
  ),
  setting(
    'TURNSTONE_TRUST_PROXY',
    'yes where a proxy of the school stands in front and sets X-Forwarded-For',
    'no',
    z.enum(['yes', 'no']),
    'yes or no',
  ),
  setting(
    'TURNSTONE_KEY',
    'signs cookies and seals tokens; made in the data folder if unset',
    null,
    z.string().min(32),
    'at least 32 characters',
    true,
  ),
  setting(
    'TURNSTONE_LOG',
    'how much is logged',
    'info',
    z.enum(['silent', 'error', 'warn', 'info', 'debug']),
    'silent, error, warn, info or debug',
  ),
  setting(
    'DATABASE_URL',
    'a PostgreSQL database instead of the embedded store',
    null,
    anything,
    'an address that begins with postgres://',
    true,
  ),
  setting('DISCORD_TOKEN', 'the bot’s token on Discord', null, anything, 'the token', true),
  setting(
    'DISCORD_APPLICATION_ID',
    'the application’s id on Discord',
    null,
    z.string().regex(/^\d{5,25}$/),
    'digits',
  ),
  setting(
    'DISCORD_PUBLIC_KEY',
    'takes Discord’s interactions over HTTP instead of the gateway',
    null,
    z.string().regex(/^[0-9a-f]{64}$/i),
    '64 hexadecimal digits',
  ),
  setting(
    'DISCORD_API',
    'base address of Discord’s interface',
    null,
    address,
    'an address that begins with http:// or https://',
  ),
  setting(
    'SLACK_BOT_TOKEN',
    'the bot’s token on Slack, for one workspace',
    null,
    anything,
    'the token',
    true,
  ),
  setting('SLACK_SIGNING_SECRET', 'checks that requests come from Slack', null, anything, 'the secret', true),
  setting('SLACK_APP_TOKEN', 'takes Slack’s events over a socket', null, anything, 'the token', true),
  setting(
    'SLACK_CLIENT_ID',
    'for many workspaces: the app’s id, with which each installs it at /slack/install',
    null,
    anything,
    'the id',
  ),
  setting(
    'SLACK_CLIENT_SECRET',
    'for many workspaces: the app’s secret beside its id',
    null,
    anything,
    'the secret',
    true,
  ),
  setting(
    'SLACK_STATE_SECRET',
    'for many workspaces: any long random text; ties an installation to the browser that began it',
    null,
    anything,
    'the secret',
    true,
  ),
  setting(
    'SLACK_API',
    'base address of Slack’s interface',
    null,
    address,
    'an address that begins with http:// or https://',
  ),
];

/** The configuration as checked values; null where unset. */
export interface Config {
  readonly data: string;
  readonly host: string;
  readonly port: number;
  readonly url: string | null;
  readonly trustProxy: boolean;
  readonly key: string | null;
  readonly log: string;
  readonly discord: {
    readonly token: string;
    readonly applicationId: string | null;
    readonly publicKey: string | null;
    readonly api: string | null;
  } | null;
  readonly slack: SlackSettings | null;
}

/** Whether an address can be reached from this machine only. */
export function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || /^127\.\d{1,3}\.\d{1,3}\.\d{1,3}$/.test(host);
}

/** Reads a .env file of the working folder into the environment, where there is one; what is set already stays. */
export function loadEnvFile(): void {
  if (existsSync('.env')) process.loadEnvFile('.env');
}

/** Checks the environment; throws one `Fault` that lists every wrong value with what was expected. */
export function readConfig(env: Readonly<Record<string, string | undefined>>): Config {
  const wrong: string[] = [];
  const values = new Map<string, string>();
  for (const one of settings) {
    const raw = env[one.name]?.trim();
    const value = raw === undefined || raw === '' ? one.default : raw;
    if (value === null) continue;
    if (!one.shape.safeParse(value).success) {
      wrong.push(
        `${one.name}: expected ${one.expected}, got ${one.secret ? 'something else' : JSON.stringify(value)}`,
      );
    } else values.set(one.name, value);
  }
  const get = (name: string): string | null => values.get(name) ?? null;
  const host = get('TURNSTONE_HOST') ?? '127.0.0.1';
  if (!isLoopback(host) && get('TURNSTONE_URL') === null && wrong.length === 0) {
    wrong.push(
      `TURNSTONE_URL: expected the school's address of this server, since TURNSTONE_HOST is ${host}, got nothing`,
    );
  }
  if (get('DATABASE_URL') !== null) {
    wrong.push(
      'DATABASE_URL: expected to be unset, since this version keeps everything in the embedded store',
    );
  }
  wrong.push(...halfSet(get));
  if (wrong.length > 0) {
    throw new Fault(
      'configuration',
      `Cannot start, wrong settings:\n  ${wrong.join('\n  ')}`,
      'Mend them in the environment or in .env; "turnstone doctor" shows them all.',
    );
  }
  const discord = get('DISCORD_TOKEN');
  return {
    data: get('TURNSTONE_DATA') ?? './data',
    host,
    port: Number(get('TURNSTONE_PORT')),
    url: get('TURNSTONE_URL'),
    trustProxy: get('TURNSTONE_TRUST_PROXY') === 'yes',
    key: get('TURNSTONE_KEY'),
    log: get('TURNSTONE_LOG') ?? 'info',
    discord:
      discord === null
        ? null
        : {
            token: discord,
            applicationId: get('DISCORD_APPLICATION_ID'),
            publicKey: get('DISCORD_PUBLIC_KEY'),
            api: get('DISCORD_API'),
          },
    slack: slackOf(get),
  };
}

import { REST } from 'discord.js';
import { discordOwn, type DiscordOptions } from '../options.js';

/** Base address and version as the library wants them. */
export function restAddress({ api }: Pick<DiscordOptions, 'api'>): {
  readonly api: string;
  readonly version: string;
} {
  if (api === null) return { api: discordOwn.api, version: '10' };
  // Both "http://host" and "http://host/api" are taken for the base address, a version at its end is not needed.
  const base = api.replace(/\/+$/u, '').replace(/\/v\d+$/u, '');
  return { api: new URL(base).pathname === '/' ? `${base}/api` : base, version: '10' };
}

/** For messages: nothing is waited out or tried again inside, since the outbox does both and stays in order. */
export function restForMessages(options: DiscordOptions): REST {
  return new REST({
    ...restAddress(options),
    retries: 0,
    timeout: options.patience ?? 10_000,
    rejectOnRateLimit: () => true,
  }).setToken(options.token);
}

/** For answers to interactions and for what is asked at the start; 5xx are tried again at once. */
export function restForAnswers(options: DiscordOptions): REST {
  return new REST({ ...restAddress(options), retries: 2, timeout: options.patience ?? 10_000 }).setToken(
    options.token,
  );
}

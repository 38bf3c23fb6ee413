import type { WebClient } from '@slack/web-api';
import type { Instant } from '../../../../shared/time.js';
import type { SlackOptions } from '../options.js';
import { openClient } from '../web.js';

/** Keeps one text under lock; reading throws where it can't be opened any more. */
export interface Vault {
  read(): Promise<string | null>;
  write(text: string): Promise<void>;
}

/** A workspace that installed the app, and with what. */
export interface Installed {
  readonly tenant: string;
  readonly token: string;
  readonly scopes: readonly string[];
  readonly at: Instant;
}

/** How many workspaces are kept. */
export const mostWorkspaces = 200;

/** The tokens by which the bot speaks: each workspace's own, else the one of the configuration. */
export interface Workspaces {
  installed(): Promise<readonly Installed[]>;
  tokenOf(tenant: string): Promise<string | null>;
  clientOf(tenant: string): Promise<WebClient | null>;
  /** False where there are too many already. */
  keep(installed: Installed): Promise<boolean>;
  /** Lets a workspace's token go, unless the workspace installed the app anew since the instant. */
  forget(tenant: string, since: Instant): Promise<void>;
  /** Whether what was kept can't be opened with the key. */
  locked(): Promise<boolean>;
}

/** Opens the workspaces over what is kept of them; without a vault there is one, by the token of the configuration. */
export function openWorkspaces(options: SlackOptions): Workspaces {
  const { log, botToken } = options;
  const vault = options.oauth?.vault ?? null;
  const clients = new Map<string, WebClient>();
  let loading: Promise<Map<string, Installed>> | null = null;
  let writing: Promise<void> = Promise.resolve();
  let isLocked = false;

  const load = async (): Promise<Map<string, Installed>> => {
    try {
      const text = (await vault?.read()) ?? null;
      const kept = text === null ? [] : (JSON.parse(text) as readonly Installed[]);
      return new Map(kept.map((one) => [one.tenant, one]));
    } catch {
      isLocked = true;
      log.error({}, 'the tokens of Slack workspaces can’t be opened with this key');
      return new Map();
    }
  };
  const all = (): Promise<Map<string, Installed>> => (loading ??= load());
  const write = async (): Promise<void> => {
    const kept = JSON.stringify([...(await all()).values()]);
    const before = writing;
    writing = before.catch(() => undefined).then(() => vault?.write(kept));
    await writing;
  };
  const tokenOf = async (tenant: string): Promise<string | null> =>
    (await all()).get(tenant)?.token ?? botToken;

  return {
    tokenOf,
    installed: async () => [...(await all()).values()],
    async clientOf(tenant) {
      const token = await tokenOf(tenant);
      if (token === null) return null;
      const client = clients.get(token) ?? openClient(token, options);
      clients.set(token, client);
      return client;
    },
    async keep(installed) {
      const there = await all();
      if (there.size >= mostWorkspaces && !there.has(installed.tenant)) return false;
      const before = there.get(installed.tenant);
      if (before) clients.delete(before.token);
      there.set(installed.tenant, installed);
      await write();
      return true;
    },
    async forget(tenant, since) {
      const there = await all();
      const known = there.get(tenant);
      if (!known || known.at > since) return;
      clients.delete(known.token);
      there.delete(tenant);
      await write();
    },
    async locked() {
      await all();
      return isLocked;
    },
  };
}

import { slashCommands } from '../../commands/all.js';
import type { House } from '../../shared/channel.js';
import { discordChannel } from '../../src/channels/discord/discord.js';
import type { DiscordOptions } from '../../src/channels/discord/options.js';
import { until } from './discord-person.js';
import { application, discordToken, openDiscordStandIn, type DiscordStandIn } from './discord-stand-in.js';

/** The channel's lines, as one text, so that a test can search them. */
export interface OpenDiscord {
  readonly channel: ReturnType<typeof discordChannel>;
  readonly standIn: DiscordStandIn;
  readonly logged: () => string;
  readonly stop: () => Promise<void>;
}

export function keepLog(): { readonly log: DiscordOptions['log']; readonly logged: () => string } {
  const lines: string[] = [];
  const write = (about: Readonly<Record<string, unknown>>, words: string): void => {
    lines.push(`${JSON.stringify(about)} ${words}`);
  };
  return { log: { debug: write, info: write, warn: write, error: write }, logged: () => lines.join('\n') };
}

/** Opens the channel with the real client library against the stand-in, over a house. */
export async function openDiscord(
  house: House,
  more: Partial<DiscordOptions> = {},
  standIn?: DiscordStandIn,
): Promise<OpenDiscord> {
  const there = standIn ?? (await openDiscordStandIn());
  const { log, logged } = keepLog();
  const channel = discordChannel({
    token: discordToken,
    applicationId: application,
    publicKey: null,
    api: there.url,
    log,
    slashCommands,
    ...more,
  });
  await channel.start(house);
  if (channel.guests === undefined && there.gateway.counts.opened >= 0) {
    await until(() => there.gateway.connected() && there.commands.size > 0);
  }
  return {
    channel,
    standIn: there,
    logged,
    async stop() {
      await channel.stop();
      if (standIn === undefined) await there.stop();
    },
  };
}

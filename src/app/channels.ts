import { slashCommands } from '../../commands/all.js';
import type { BoundPlace, Channel, Finding } from '../../shared/channel.js';
import { Fault } from '../../shared/fault.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { Clock, Instant } from '../../shared/time.js';
import type { Vault } from '../channels/slack/install/workspaces.js';
import type { OutboxRow, Store } from '../store/store.js';
import type { Config } from './config.js';
import type { OpenHouse } from './house.js';
import type { Log } from './log.js';
import { readKey, type School } from './school.js';
import { seal, unseal } from './seal.js';
import { startSender } from './sender.js';
import { parseCommand } from './typed-command.js';

type Guest = (request: Request) => Promise<Response>;

/** A channel of a platform; requests that come to the room's port for it are its guests, by exact path. */
export type PlatformChannel = Channel & { readonly guests?: Readonly<Record<string, Guest>> };

/** Makes a channel where the configuration has it, else gives null; each is loaded only where it is needed. */
type Maker = (config: Config, tools: Tools) => Promise<PlatformChannel | null>;

/** What making a channel needs of a school; the key is asked for only where something is sealed. */
interface Tools {
  readonly log: Log;
  readonly store: Pick<Store, 'getNote' | 'setNote'>;
  readonly key: () => string;
}

/** Where the tokens of Slack's workspaces lie, sealed. */
const workspacesNote = 'slack workspaces';

function vaultOf({ store, key }: Tools): Vault {
  return {
    async read() {
      const sealed = await store.getNote(workspacesNote);
      return sealed === null ? null : unseal(key(), workspacesNote, sealed);
    },
    write: (text) => store.setNote(workspacesNote, seal(key(), workspacesNote, text)),
  };
}

const makers: readonly Maker[] = [
  async ({ discord }, { log }) => {
    if (discord === null) return null;
    const { discordChannel } = await import('../channels/discord/discord.js');
    return discordChannel({ ...discord, log, slashCommands });
  },
  async ({ slack, url }, tools) => {
    if (slack === null) return null;
    const { log } = tools;
    const { slackChannel } = await import('../channels/slack/slack.js');
    const now = (): number => Date.now();
    const oauth = slack.oauth === null ? null : { ...slack.oauth, base: url, vault: vaultOf(tools) };
    return slackChannel({ ...slack, oauth, log, slashCommands, readCommand: parseCommand, now });
  },
];

async function lookerOf(house: OpenHouse, classId: ClassId): Promise<PersonId | null> {
  const { people } = await house.classes.load(classId);
  const staff = Object.values(people).filter(
    ({ removed, role }) => !removed && ['tutor', 'teacher'].includes(role),
  );
  return staff[0]?.id ?? null;
}

/** A look that is told to a place, as one message: as whoever teaches the class sees it. */
export async function tellLook(
  house: OpenHouse,
  { classId }: Pick<OutboxRow, 'classId'>,
  {
    look,
    audience,
  }: { readonly look: Extract<Telling, { do: 'show' }>['look']; readonly audience: Audience },
): Promise<Message> {
  const { type, ...fields } = look;
  const args = Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, String(value)]));
  const person = await lookerOf(house, classId);
  const reply = person === null ? null : await house.look({ classId, person }, type, args);
  const messages = reply?.done ? reply.messages : [];
  return {
    audience,
    summary: messages[0]?.summary ?? type,
    blocks: messages.flatMap(({ blocks }) => blocks),
  };
}

/** The channels of a configuration beside the room. */
export interface PlatformChannels {
  /** For the room, which passes them on. */
  readonly guests: Readonly<Record<string, Guest>>;
  /** Opens them and begins to send; what a platform does never fails it. */
  start(): Promise<void>;
  stop(): Promise<void>;
}

/** Prepares the channels of a configuration over a school. */
export async function openChannels(config: Config, school: School, clock: Clock): Promise<PlatformChannels> {
  const { store, house, log } = school;
  const tools = { log, store, key: () => school.key };
  const made = await Promise.all(makers.map((make) => make(config, tools)));
  const channels = made.filter((channel) => channel !== null);
  const senders: { stop(): Promise<void> }[] = [];
  return {
    guests: Object.assign({}, ...channels.map(({ guests }) => guests ?? {})) as Readonly<
      Record<string, Guest>
    >,
    async start() {
      for (const channel of channels) {
        await channel.start(house);
        const answer = (row: OutboxRow, telling: Extract<Telling, { do: 'show' }>) =>
          tellLook(house, row, telling);
        senders.push(startSender({ store, house, channel, clock, log, answer }));
      }
    },
    async stop() {
      await Promise.all(senders.map((sender) => sender.stop()));
      await Promise.all(channels.map((channel) => channel.stop()));
    },
  };
}

/** How long all that a platform is asked may take, in milliseconds. */
const checkPatience = 9000;

async function checkOne(
  channel: PlatformChannel,
  places: readonly BoundPlace[],
  now: Instant,
): Promise<readonly Finding[]> {
  if (!channel.check) return [];
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<readonly Finding[]>((settle) => {
    const words = `${channel.name}: did not answer within ${checkPatience / 1000} seconds. Look at the network, and at the platform’s base address if one is set, then run doctor again.`;
    timer = setTimeout(() => settle([{ fine: false, words }]), checkPatience);
  });
  try {
    return await Promise.race([channel.check(places, now), late]);
  } catch (why) {
    const code = why instanceof Error ? why.name : 'unknown';
    return [{ fine: false, words: `${channel.name}: could not be looked at (${code}). Run doctor again.` }];
  } finally {
    clearTimeout(timer);
  }
}

/** Asks each platform of a configuration what it grants in the places of some classes; answers within ten seconds and never throws for what a platform does. */
export async function checkChannels(
  config: Config,
  store: Pick<Store, 'places' | 'getNote' | 'setNote'>,
  classes: readonly { readonly id: ClassId }[],
  log: Log,
  now: Instant,
): Promise<readonly Finding[]> {
  const bound = (await Promise.all(classes.map(({ id }) => store.places(id)))).flat();
  const tools = { log, store, key: () => readKey(config) };
  const found = await Promise.all(
    makers.map(async (make): Promise<readonly Finding[]> => {
      try {
        const channel = await make(config, tools);
        if (channel === null) return [];
        const places = bound
          .filter(({ place }) => place.channel === channel.name)
          .map(({ place, audience }): BoundPlace => ({ tenant: place.tenant, room: place.room, audience }));
        return await checkOne(channel, places, now);
      } catch (why) {
        if (why instanceof Fault) return [{ fine: false, words: `${why.message}. ${why.remedy}` }];
        throw why;
      }
    }),
  );
  return found.flat();
}

import { slashCommands } from '../../commands/all.js';
import type { Channel } from '../../shared/channel.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Audience, Message } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { Clock } from '../../shared/time.js';
import type { OutboxRow } from '../store/store.js';
import type { Config } from './config.js';
import type { OpenHouse } from './house.js';
import type { School } from './school.js';
import { startSender } from './sender.js';
import { parseCommand } from './typed-command.js';

type Guest = (request: Request) => Promise<Response>;

/** A channel of a platform; requests that come to the room's port for it are its guests, by exact path. */
export type PlatformChannel = Channel & { readonly guests?: Readonly<Record<string, Guest>> };

/** Makes a channel where the configuration has it, else gives null; each is loaded only where it is needed. */
type Maker = (config: Config, school: School) => Promise<PlatformChannel | null>;

const makers: readonly Maker[] = [
  async ({ discord }, { log }) => {
    if (discord === null) return null;
    const { discordChannel } = await import('../channels/discord/discord.js');
    return discordChannel({ ...discord, log, slashCommands });
  },
  async ({ slack }, { log }) => {
    if (slack === null) return null;
    const { slackChannel } = await import('../channels/slack/slack.js');
    const now = (): number => Date.now();
    return slackChannel({ ...slack, log, slashCommands, readCommand: parseCommand, now });
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
  const made = await Promise.all(makers.map((make) => make(config, school)));
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

import type { ClassId, GroupId, PersonId } from '../../shared/ids.js';
import { calendar } from '../../src/app/calendar.js';
import { tellLook } from '../../src/app/channels.js';
import { readConfig } from '../../src/app/config.js';
import { makeDemoClass } from '../../src/app/demo-class.js';
import { doorLimits } from '../../src/app/doors.js';
import { personNamed } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { makeJudges } from '../../src/app/judges.js';
import { silentLog } from '../../src/app/log.js';
import { startSender } from '../../src/app/sender.js';
import { memoryStore } from '../../src/store/memory-store.js';
import { openDiscord } from './discord-open.js';
import { seenText } from './discord-payloads.js';
import { discordPerson, type Seen } from './discord-person.js';
import { openDiscordStandIn, server } from './discord-stand-in.js';
import { openSlack } from './open-slack.js';
import { wordsSeen } from './slack-limits.js';
import type { Json } from './slack-user.js';

/** Somebody in front of a platform's own client, whichever it is. */
export interface Somebody {
  /** What stands before them after what they did last. */
  readonly sees: () => string;
  /** Types a slash command with its options by name. */
  command(name: string, action: string, options?: Readonly<Record<string, string>>): Promise<void>;
  /** Picks the first suggestion for an option while typing; what it stands for. */
  suggested(name: string, action: string, option: string, typed: string): Promise<string>;
  /** Opens their own page. */
  page(): Promise<void>;
  press(label: RegExp): Promise<void>;
  /** Fills in the form that is open and sends it. */
  fill(values: Readonly<Record<string, string>>): Promise<void>;
}

export type PlatformName = 'discord' | 'slack';

/** A platform's stand-in with the real library of the channel open over it. */
export interface WholePlatform {
  readonly as: (nickname: string, room: 'talk' | 'staff') => Somebody;
  readonly said: (room: 'talk' | 'staff') => string;
  readonly logged: () => string;
  readonly breaches: () => readonly string[];
}

/** The invented class with the real judges on a platform, the practice not yet begun by its own passages. */
export interface WholeClass extends WholePlatform {
  readonly house: OpenHouse;
  readonly classId: ClassId;
  readonly group: GroupId;
  personOf(nickname: string): Promise<PersonId>;
  pass(milliseconds: number): Promise<void>;
  sent(): Promise<void>;
  stop(): Promise<void>;
}

const rooms = { discord: { talk: '101', staff: '102' }, slack: { talk: 'C1', staff: 'C2' } } as const;
const nicknames = ['Plover', 'Wren', 'Finch', 'Pipit', 'Dunlin'] as const;
/** Tuesday 2026-10-06, 09:00 in London. */
const start = Date.UTC(2026, 9, 6, 8);

type Opened = WholePlatform & {
  readonly tenant: string;
  readonly userOf: (nickname: string) => string;

  readonly channel: Parameters<typeof startSender>[0]['channel'];
  stop(): Promise<void>;
};

async function onDiscord(house: OpenHouse): Promise<Opened> {
  const standIn = await openDiscordStandIn();
  for (const room of Object.values(rooms.discord)) standIn.openRoom(room);
  const open = await openDiscord(house, {}, standIn);
  const userOf = (nickname: string): string => String(11 + nicknames.findIndex((one) => one === nickname));
  return {
    channel: open.channel,
    tenant: server,
    userOf,
    as(nickname, room) {
      const person = discordPerson(standIn, userOf(nickname), rooms.discord[room]);
      let seen: Seen | null = null;
      return {
        sees: () => seen?.text ?? '',
        async command(name, action, options = {}) {
          seen = await person.command(name, action, options);
        },
        async suggested(name, action, option, typed) {
          return (await person.suggest(name, action, option, typed)).choices[0]?.value ?? '';
        },
        async page() {
          seen = await person.press('l|turn');
        },
        async press(label) {
          seen = await person.pressLabel(seen ?? { buttons: [] }, label);
        },
        async fill(values) {
          if (!seen?.modal) seen = await person.press(seen?.buttons.find(({ main }) => main)?.id ?? '');
          if (!seen.modal) throw new Error(`Cannot fill in, expected a form, got ${seen.text}`);
          seen = await person.send(seen.modal, values);
        },
      };
    },
    said: (room) => standIn.room(rooms.discord[room]).map(seenText).join('\n---\n'),
    logged: open.logged,
    breaches: () => standIn.breaches,
    async stop() {
      await open.stop();
      await standIn.stop();
    },
  };
}

async function onSlack(house: OpenHouse, now: () => number): Promise<Opened> {
  const open = await openSlack(house, {}, now);
  const { slack } = open;
  const userOf = (nickname: string): string => `U${nickname.toUpperCase()}`;
  return {
    channel: open.channel,
    tenant: slack.team,
    userOf,
    as(nickname, where) {
      const room = rooms.slack[where];
      const user = slack.user(userOf(nickname));
      return {
        sees: () => user.sees,
        async command(name, action, options = {}) {
          user.close();
          const typed = Object.entries(options).map(([key, value]) => `${key}:${value}`);
          await user.command(`/${[name, action, ...typed].join(' ')}`, room);
          // What doesn't fit on a line opens a form.
          if (user.views.at(-1)?.view['submit'] !== undefined) await user.submit(options);
        },
        // Slack suggests nothing while typing: names are typed.
        suggested: (_name, _action, _option, typed) => Promise.resolve(typed),
        async page() {
          user.close();
          await user.command('/turn', room);
        },
        async press(label) {
          const found = user.buttons.find((one) => label.test(one));
          if (found === undefined)
            throw new Error(`Cannot press ${label.source}, expected one of ${user.buttons.join(', ')}`);
          await user.press(found, undefined, room);
        },
        async fill(values) {
          const top = (): Json | undefined => user.views.at(-1)?.view;
          if (top()?.['submit'] === undefined) await user.press(user.buttons[0] ?? '', undefined, room);
          await user.submit(values);
        },
      };
    },
    said: (room) =>
      slack
        .room(rooms.slack[room])
        .posts.map((post) => wordsSeen(post))
        .join('\n---\n'),
    logged: open.logged,
    breaches: () => slack.breaches,
    stop: () => open.stop(),
  };
}

/** Opens the invented class, as `demo` makes it, on a platform. */
export async function openWholeClass(platform: PlatformName): Promise<WholeClass> {
  let now = start;
  const clock = { now: () => now };
  const store = await memoryStore(clock);
  const key = 'a key for tests only, long enough to sign';
  const judges = makeJudges();
  // The first post after a start waits while the rules are made ready, on a busy machine longer than Discord does.
  judges.screen({ text: 'Why does the tide clock have one hand?' });
  judges.judge({ kind: 'question', segment: 'The clock has one hand.', text: 'Why does it have one hand?' });
  const house = openHouse({
    store,
    judges,
    calendar,
    clock,
    log: silentLog,
    key,
    baseUrl: () => 'http://127.0.0.1',
    seed: () => 7,
  });
  const classId = await makeDemoClass({ config: readConfig({}), store, house, log: silentLog, key });
  const [group] = Object.values((await house.classes.load(classId)).groups);
  if (!group) throw new Error('Cannot open the class, expected a group');
  const personOf = async (nickname: string): Promise<PersonId> => {
    const found = personNamed(await house.classes.load(classId), nickname);
    if (found === null) throw new Error(`no ${nickname}`);
    return found;
  };
  const open = platform === 'discord' ? await onDiscord(house) : await onSlack(house, clock.now);
  const tutor = { classId, person: await personOf('Plover') };
  for (const nickname of nicknames) {
    const code = `code-of-${nickname}-for-the-tests`;
    await house.doors.keepSlip(classId, await personOf(nickname), code, doorLimits.pupilSlip);
    await house.join(platform, open.tenant, open.userOf(nickname), code);
  }
  const { talk, staff } = rooms[platform];
  await house.bindPlace(tutor, platform, open.tenant, talk, { to: 'channel', group: group.id });
  await house.bindPlace(tutor, platform, open.tenant, staff, { to: 'staff', group: null });
  const sender = startSender({
    store,
    house,
    channel: open.channel,
    clock,
    log: silentLog,
    answer: (row, telling) => tellLook(house, row, telling),
  });
  return {
    ...open,
    house,
    classId,
    group: group.id,
    personOf,
    async pass(milliseconds) {
      for (const until = now + milliseconds; now < until;) {
        now = Math.min(until, now + 1_800_000);
        await house.passTime(classId);
      }
    },
    sent: () => sender.idle(),
    async stop() {
      await sender.stop();
      await open.stop();
      await store.close();
    },
  };
}

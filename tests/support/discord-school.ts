import { calendar } from '../../src/app/calendar.js';
import { tellLook } from '../../src/app/channels.js';
import { readyMoves } from './ready-moves.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import { startSender } from '../../src/app/sender.js';
import { asId, type ClassId, type GroupId, type PersonId } from '../../shared/ids.js';
import { strategies } from '../../shared/strategies.js';
import type { DiscordOptions } from '../../src/channels/discord/options.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { openDiscord, type OpenDiscord } from './discord-open.js';
import { discordPerson, type DiscordPerson } from './discord-person.js';
import { openDiscordStandIn, server, type DiscordStandIn } from './discord-stand-in.js';
import { fakeJudges } from './fake-judges.js';

/** Rooms of the invented class on the stand-in. */
export const talkRoom = '101';
export const staffRoom = '102';

/** Platform ids of the invented people. */
export const users = { Plover: '11', Wren: '21', Finch: '22', Pipit: '23' } as const;
export type Name = keyof typeof users;

/** An invented class on Discord with the real house, store, sender and client library. */
export interface DiscordSchool {
  readonly standIn: DiscordStandIn;
  readonly house: OpenHouse;
  readonly store: Store;
  readonly classId: ClassId;
  readonly group: GroupId;
  readonly people: Readonly<Record<Name, PersonId>>;
  readonly open: () => OpenDiscord;
  readonly as: (name: Name, room?: string) => DiscordPerson;
  /** Lets time pass, in milliseconds, with all that is due in it. */
  readonly pass: (milliseconds: number) => Promise<void>;
  /** Waits until nothing waits that can be sent. */
  readonly sent: () => Promise<void>;
  /** Ends the process's part and opens it anew over the same store, as a restart does. */
  readonly restart: () => Promise<void>;
  stop(): Promise<void>;
}

const hour = 3_600_000;
// A Tuesday morning in school hours.
const begin = Date.UTC(2026, 9, 6, 8, 30);

/** Opens the class: people are on the roster; nobody is known on Discord and no place is tied unless `settled`. */
export async function openDiscordSchool(
  settled = true,
  more: Partial<DiscordOptions> & { readonly heartbeat?: number } = {},
): Promise<DiscordSchool> {
  const { heartbeat, ...options } = more;
  const standIn = await openDiscordStandIn(heartbeat === undefined ? {} : { heartbeat });
  standIn.openRoom(talkRoom);
  standIn.openRoom(staffRoom);
  const store = await memoryStore();
  const realBegin = Date.now();
  let skipped = 0;
  const clock = { now: () => begin + skipped + (Date.now() - realBegin) };
  const key = 'a key for tests only, long enough to sign';
  const makeHouse = (): OpenHouse =>
    openHouse({
      store,
      judges: fakeJudges,
      calendar,
      clock,
      log: silentLog,
      key,
      baseUrl: () => 'http://127.0.0.1',
      seed: () => 7,
    });
  let house = makeHouse();
  const { classId, tutor } = await foundClass(house, {
    name: 'Harbour Readers',
    zone: 'UTC',
    nickname: 'Plover',
  });
  const made = await house.classes.load(classId);
  const group = Object.values(made.groups)[0]?.id ?? asId<GroupId>('');
  const state = await mustMove(house, classId, tutor, [
    ...(['Wren', 'Finch', 'Pipit'] as const).map(
      (nickname) => ({ type: 'add-person', nickname, role: 'pupil', group }) as const,
    ),
    ...strategies
      .filter((one) => !made.groups[group]?.open.includes(one))
      .map((strategy) => ({ type: 'open-strategy', strategy }) as const),
    ...readyMoves,
  ]);
  const idOf = (name: Name): PersonId => personNamed(state, name) ?? asId<PersonId>('');
  const people = { Plover: tutor, Wren: idOf('Wren'), Finch: idOf('Finch'), Pipit: idOf('Pipit') };
  if (settled) {
    for (const name of Object.keys(users) as Name[]) {
      await store.bindIdentity({
        channel: 'discord',
        tenant: server,
        user: users[name],
        classId,
        person: people[name],
      });
    }
    const place = (room: string) => ({ channel: 'discord', tenant: server, room }) as const;
    await store.bindPlace(classId, place(talkRoom), { to: 'channel', group });
    await store.bindPlace(classId, place(staffRoom), { to: 'staff', group: null });
  }
  let open = await openDiscord(house, options, standIn);
  const send = () =>
    startSender({
      store,
      house,
      channel: open.channel,
      clock,
      log: silentLog,
      answer: (row, telling) => tellLook(house, row, telling),
    });
  let sender = send();

  const passTo = async (end: number): Promise<void> => {
    for (let due = await store.nextDue(); due !== null && due <= end; due = await store.nextDue()) {
      skipped += Math.max(0, due - clock.now());
      await house.passTime(classId);
    }
    skipped += Math.max(0, end - clock.now());
  };
  return {
    standIn,
    get house() {
      return house;
    },
    store,
    classId,
    group,
    people,
    open: () => open,
    as: (name, room = talkRoom) => discordPerson(standIn, users[name], room),
    pass: (milliseconds) => passTo(clock.now() + milliseconds),
    sent: () => sender.idle(),
    async restart() {
      await sender.stop();
      await open.stop();
      house = makeHouse();
      open = await openDiscord(house, options, standIn);
      sender = send();
    },
    async stop() {
      await sender.stop();
      await open.stop();
      await standIn.stop();
      await store.close();
    },
  };
}

export { hour };

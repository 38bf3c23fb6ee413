import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Message } from '../../shared/messages.js';
import { calendar } from '../../src/app/calendar.js';
import { doorLimits } from '../../src/app/doors.js';
import { readyMoves } from './ready-moves.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import { startSender } from '../../src/app/sender.js';
import type { SlackOptions } from '../../src/channels/slack/options.js';
import { memoryStore } from '../../src/store/memory-store.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from './fake-judges.js';
import { openSlack, type OpenSlack } from './open-slack.js';

/** A class on Slack over a real house: a tutor, pupils, a clock that the test sets, and the sender that brings messages to their channels. */
export interface SlackClass extends OpenSlack {
  readonly store: Store;
  readonly house: OpenHouse;
  readonly classId: ClassId;
  /** The code with which somebody comes in. */
  readonly codeOf: (nickname: string) => string;
  readonly personOf: (nickname: string) => Promise<PersonId>;
  /** Sends all that waits. */
  sent(): Promise<void>;
  /** Lets time go by in steps of half an hour, everything due done on the way. */
  pass(milliseconds: number): Promise<void>;
}

/** Tuesday 2026-10-06, 09:00 in London. */
const start = Date.UTC(2026, 9, 6, 8);

/** Opens a class of a tutor, Plover, and pupils, without anybody joined or any place bound. */
export async function openSlackClass(
  pupils: readonly string[],
  more: Partial<SlackOptions> = {},
): Promise<SlackClass> {
  let now = start;
  const clock = { now: () => now };
  const store = await memoryStore(clock);
  const house = openHouse({
    store,
    judges: fakeJudges,
    calendar,
    clock,
    log: silentLog,
    key: 'a key for tests only, long enough to sign',
    baseUrl: () => 'http://127.0.0.1',
    seed: () => 7,
  });
  const { classId, tutor } = await foundClass(house, {
    name: 'Tuesday readers',
    zone: 'Europe/London',
    nickname: 'Plover',
  });
  const made = await house.classes.load(classId);
  const group = Object.values(made.groups)[0]?.id;
  if (group === undefined) throw new Error('Cannot open a class, expected a group');
  await mustMove(house, classId, tutor, [
    ...pupils.map((nickname) => ({ type: 'add-person', nickname, role: 'pupil', group }) as const),
    ...readyMoves,
    { type: 'change-setting', setting: 'moderation', value: 'hold what is doubtful' },
  ]);
  const codeOf = (nickname: string): string => `code of ${nickname} for the tests`;
  const personOf = async (nickname: string): Promise<PersonId> => {
    const found = personNamed(await house.classes.load(classId), nickname);
    if (found === null) throw new Error(`no ${nickname}`);
    return found;
  };
  for (const nickname of ['Plover', ...pupils])
    await house.doors.keepSlip(classId, await personOf(nickname), codeOf(nickname), doorLimits.pupilSlip);
  const open = await openSlack(house, more, clock.now);
  const answer = async (
    _row: unknown,
    telling: { readonly look: { readonly type: string } },
  ): Promise<Message> => {
    const { type, ...fields } = telling.look;
    const args = Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, String(value)]));
    const { messages } = await house.look({ classId, person: tutor }, type, args);
    const [first] = messages;
    if (!first) throw new Error('Cannot show a look, expected an answer');
    return first;
  };
  const sender = startSender({ store, house, channel: open.channel, clock, log: silentLog, answer });
  return {
    ...open,
    store,
    house,
    classId,
    codeOf,
    personOf,
    sent: () => sender.idle(),
    async pass(milliseconds) {
      for (const until = now + milliseconds; now < until;) {
        now = Math.min(until, now + 1_800_000);
        await house.passTime(classId);
      }
    },
    async stop() {
      await sender.stop();
      await open.stop();
      await store.close();
    },
  };
}

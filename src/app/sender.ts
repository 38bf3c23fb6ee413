import { createHash } from 'node:crypto';
import type { Channel, Delivered, Delivery } from '../../shared/channel.js';
import type { Message } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import type { Clock } from '../../shared/time.js';
import type { OutboxRow, Store } from '../store/store.js';
import type { OpenHouse } from './house.js';
import type { Log } from './log.js';
import { tellOnce } from './tell-once.js';
import { tellStuck } from './tell-stuck.js';

/**
 * The outbox on its way to a platform: one message in flight a place, marked before it is sent.
 *
 * A message whose sending was cut off by a crash is sent again with the same nonce within two minutes, since the platform
 * drops repeats that long. After that the platform is asked once whether it stands there; where its history can't be read
 * the place stops and staff are asked, rather than that something is said twice. A place that stops is told to staff in every
 * place that works, once, and taken back when it is tied again.
 */
export interface SenderDeps {
  readonly store: Store;
  readonly house: OpenHouse;
  readonly channel: Channel;
  readonly clock: Clock;
  readonly log: Log;
  /** Answers a look that is told, for an audience that isn't one person. */
  readonly answer: (row: OutboxRow, telling: Extract<Telling, { do: 'show' }>) => Promise<Message>;
}

/** How long, in milliseconds, a platform is trusted to drop a repeat of the same nonce. */
const nonceHolds = 120_000;

/** 25 characters that stand for a message's key. */
export function nonceOf(key: string): string {
  return createHash('sha256').update(key).digest('base64url').slice(0, 25);
}

/** Starts sending; `idle` resolves when nothing waits that can be sent now. */
export function startSender(deps: SenderDeps): { idle(): Promise<void>; stop(): Promise<void> } {
  const { store, channel, clock, log } = deps;
  const busy = new Map<string, Promise<void>>();
  const notBefore = new Map<string, number>();
  let stopped = false;
  let timer: NodeJS.Timeout | null = null;

  const deliveryOf = async (row: OutboxRow): Promise<Delivery> => {
    const { telling } = row;
    const ready: Delivery['telling'] =
      telling.do === 'show'
        ? { do: 'say', key: telling.key, message: await deps.answer(row, telling) }
        : telling;
    return {
      tenant: row.place.tenant,
      room: row.place.room,
      telling: ready,
      before: row.platformId,
      ...(row.opening === undefined ? {} : { opening: row.opening }),
      ...(row.sendingAt === null ? {} : { again: true as const }),
      nonce: nonceOf(row.key),
    };
  };

  const settle = async (row: OutboxRow, outcome: Delivered, place: string): Promise<void> => {
    if ('sent' in outcome) {
      await store.outboxSent(row.key, outcome.sent);
      if (outcome.tell !== undefined) await tellOnce(store, deps.house, row, outcome.tell);
      return;
    }
    if ('stuck' in outcome) {
      log.warn({ key: row.key, channel: channel.name }, 'a message is stuck; a person must act');
      await store.outboxStuck(row.key, outcome.stuck);
      return deps.house.tellBeside(row.classId, tellStuck(row.place, outcome.stuck));
    }
    notBefore.set(place, outcome.again);
    return store.outboxAgain(row.key);
  };

  const sendOne = async (row: OutboxRow, place: string): Promise<void> => {
    if (!channel.deliver) return;
    const delivery = await deliveryOf(row);
    if (row.sendingAt !== null && clock.now() - row.sendingAt >= nonceHolds) {
      const there = (await channel.stands?.(delivery)) ?? (channel.stands ? null : 'unknown');
      if (there === 'unknown')
        return settle(
          row,
          { stuck: 'Sending was cut off, and history can’t be read to see whether it arrived.' },
          place,
        );
      if (there !== null) return settle(row, { sent: there.id }, place);
    }
    if (row.sendingAt !== null) await store.outboxAgain(row.key);
    if (!(await store.outboxSending(row.key, clock.now()))) return;
    await settle(row, await channel.deliver(delivery), place);
  };

  const round = async (): Promise<void> => {
    if (stopped) return;
    for (const row of await store.outbox(channel.name, 50)) {
      const place = `${row.place.tenant}/${row.place.room}`;
      if (busy.has(place) || (notBefore.get(place) ?? 0) > clock.now()) continue;
      const work = sendOne(row, place)
        .catch((why: unknown) => {
          log.error({ key: row.key, code: why instanceof Error ? why.name : 'unknown' }, 'sending failed');
          notBefore.set(place, clock.now() + 5000);
        })
        .finally(() => {
          busy.delete(place);
          wake(0);
        });
      busy.set(place, work);
    }
    if (busy.size === 0) wake(1000);
  };
  const wake = (after: number): void => {
    if (stopped) return;
    if (timer) clearTimeout(timer);
    timer = setTimeout(() => void round().catch(() => wake(1000)), after);
  };

  const unwatch = deps.house.watch(() => wake(0));
  wake(0);
  return {
    async idle() {
      for (let turns = 0; turns < 200; turns += 1) {
        await round();
        if (busy.size === 0) return;
        await Promise.all(busy.values());
      }
    },
    async stop() {
      stopped = true;
      unwatch();
      if (timer) clearTimeout(timer);
      await Promise.all(busy.values());
    },
  };
}

import type { SSEStreamingApi } from 'hono/streaming';
import type { FeedItem, House, Who } from '../../../shared/channel.js';

/** Open pages that are told when something changed. */
export interface Streams {
  /** Serves one page until it goes away, its session ends or the room stops. */
  serve(stream: SSEStreamingApi, session: string, who: Who): Promise<void>;
  endSession(session: string): void;
  endAll(): void;
  count(): number;
}

export interface StreamLimits {
  /** Milliseconds between keep-alive comments; at each the session is looked at again. */
  readonly keepAlive: number;
  /** Changes within so many milliseconds are told once. */
  readonly gather: number;
  /** Open pages of one session; the oldest is ended when there are more. */
  readonly each: number;
  readonly all: number;
}

/** Ours, for a class on one small server. */
export const streamLimits: StreamLimits = { keepAlive: 25_000, gather: 150, each: 6, all: 2000 };

interface Open {
  readonly session: string;
  readonly end: () => void;
}

/** Opens the board of live pages. What is told is only "something changed" and the newest number of the feed. */
export function openStreams(
  house: House,
  newest: (who: Who) => Promise<readonly FeedItem[]>,
  limits: StreamLimits = streamLimits,
): Streams {
  const open = new Set<Open>();

  const makeRoom = (session: string): void => {
    const same = [...open].filter((one) => one.session === session);
    if (same.length >= limits.each) same[0]?.end();
    if (open.size >= limits.all) [...open][0]?.end();
  };

  return {
    async serve(stream, session, who) {
      makeRoom(session);
      let wake: () => void = () => undefined;
      let changed = false;
      let ended = false;
      const mine: Open = {
        session,
        end: () => {
          ended = true;
          wake();
        },
      };
      open.add(mine);
      const deaf = house.listen(who, () => {
        changed = true;
        wake();
      });
      stream.onAbort(mine.end);
      const rest = (time: number, wakeable: boolean): Promise<void> =>
        new Promise((done) => {
          const timer = setTimeout(done, time);
          wake = () => {
            if (!wakeable && !ended) return;
            clearTimeout(timer);
            done();
          };
        });
      try {
        await stream.write('retry: 2000\n\n');
        const tell = async (): Promise<void> => {
          changed = false;
          const seq = (await newest(who)).at(-1)?.seq ?? 0;
          await stream.writeSSE({ event: 'changed', data: String(seq), id: String(seq) });
        };
        await tell();
        // `ended` is set from outside while this waits.
        while (!(ended as boolean)) {
          if (!changed) await rest(limits.keepAlive, true);
          if (ended as boolean) break;
          if (changed as boolean) {
            await rest(limits.gather, false);
            if (!(ended as boolean)) await tell();
          } else {
            if ((await house.session(session)) === null) break;
            await stream.write(': here\n\n');
          }
        }
      } finally {
        deaf();
        open.delete(mine);
      }
    },
    endSession(session) {
      for (const one of [...open]) if (one.session === session) one.end();
    },
    endAll() {
      for (const one of [...open]) one.end();
    },
    count: () => open.size,
  };
}

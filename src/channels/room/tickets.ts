import type { Reply } from '../../../shared/channel.js';
import type { Instant } from '../../../shared/time.js';

/** Replies on their way from a post to the page that shows them, each for one session and a few minutes, in memory only. */
export interface Tickets {
  keep(session: string, reply: Reply): string;
  find(session: string, ticket: string): Reply | null;
  /** Forgets all of a session, when it ends. */
  forget(session: string): void;
}

const life = 5 * 60_000;
const most = 2000;

/** Opens an empty board of tickets. A lost one loses nothing: what matters stands in the tray too. */
export function openTickets(now: () => Instant): Tickets {
  const kept = new Map<
    string,
    { readonly session: string; readonly reply: Reply; readonly until: Instant }
  >();
  return {
    keep(session, reply) {
      for (const [ticket, { until }] of kept) if (until <= now() || kept.size >= most) kept.delete(ticket);
      const ticket = crypto.randomUUID();
      kept.set(ticket, { session, reply, until: now() + life });
      return ticket;
    },
    find(session, ticket) {
      const found = kept.get(ticket);
      return found?.session === session && found.until > now() ? found.reply : null;
    },
    forget(session) {
      for (const [ticket, one] of kept) if (one.session === session) kept.delete(ticket);
    },
  };
}

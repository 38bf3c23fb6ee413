import type { FeedItem, House, Who } from '../../../shared/channel.js';

/** How many items an answer of the feed holds at least before it is cut, and how many of the newest a page shows of each audience. */
const feedPage = 200;
const shownOfEach = 30;
const mostPeople = 5000;

/**
 * Finds the newest messages of a person's feed. The feed is read forwards, so the place near its end where the last
 * reading began to matter is remembered per person and reading goes on from there.
 */
export function openFeedTail(house: House): (who: Who) => Promise<readonly FeedItem[]> {
  const starts = new Map<string, number>();
  return async (who) => {
    const key = `${who.classId}/${who.person}`;
    let after = starts.get(key) ?? 0;
    const items = new Map<number, FeedItem>();
    for (;;) {
      const some = await house.feed(who, after);
      for (const item of some) items.set(item.seq, item);
      // Each audience may be cut by itself, so only the first page's worth of the merged answer is surely complete.
      const last = some[Math.min(feedPage, some.length) - 1];
      if (some.length < feedPage || last === undefined || last.seq <= after) break;
      after = last.seq;
    }
    const tail = newestOfEach([...items.values()].sort((a, b) => a.seq - b.seq));
    const first = tail[0];
    if (first) {
      if (starts.size >= mostPeople) starts.clear();
      starts.set(key, first.seq - 1);
    }
    return tail;
  };
}

function newestOfEach(items: readonly FeedItem[]): readonly FeedItem[] {
  const counts = { channel: 0, person: 0, staff: 0 };
  const newest = [...items].reverse().filter(({ message }) => {
    counts[message.audience.to] += 1;
    return counts[message.audience.to] <= shownOfEach;
  });
  return newest.reverse();
}

import type { FeedItem } from '../../../../shared/channel.js';
import type { Message } from '../../../../shared/messages.js';
import { plain } from '../render/plain.js';
import { movesIn, titled, withoutStanding } from '../render/standing.js';
import { say } from '../words.js';
import type { Ask, Page } from './page.js';
import { contextFor, FeedView, Messages, Region } from './region.js';

/** As many of the newest notes stand open; the others are folded away. */
const openNotes = 3;

/** What came for this pupil, newest first; what the turn offers already, or was just answered, isn't said twice. */
function trayOf(feed: readonly FeedItem[], turn: readonly Message[], ask: Ask): readonly FeedItem[] {
  const offered = new Set(turn.flatMap(movesIn));
  const answered = new Set((ask.answer?.messages ?? []).map(({ blocks }) => JSON.stringify(blocks)));
  return feed
    .filter(({ message }) => message.audience.to === 'person')
    .filter(({ message }) => !movesIn(message).some((move) => offered.has(move)))
    .filter(({ message }) => !answered.has(JSON.stringify(message.blocks)))
    .reverse();
}

/** A pupil's own page: what to do now first, then what came for them. */
export async function pupilPage(ask: Ask): Promise<Page> {
  const { tools, visitor } = ask;
  const { profile } = visitor;
  const turn = await tools.house.look(profile, 'turn', {});
  const feed = await tools.newest(profile);
  const tray = trayOf(feed, turn.messages, ask);
  const earlier = tray.slice(openNotes);
  const { title, messages } = titled(turn.messages.map(withoutStanding));
  return {
    title: title ?? say('hello', { nickname: plain(profile.nickname) }),
    seq: feed.at(-1)?.seq ?? 0,
    content: (
      <>
        <Region name="turn">
          <Messages messages={messages} context={contextFor(ask, 'turn')} />
        </Region>
        {tray.length === 0 ? (
          <Region name="tray" />
        ) : (
          <Region name="tray" title={say('for you')}>
            <FeedView items={tray.slice(0, openNotes)} context={contextFor(ask, 'tray', 3)} />
            {earlier.length === 0 ? null : (
              <details>
                <summary>{say('earlier for you')}</summary>
                <FeedView items={earlier} context={contextFor(ask, 'earlier', 3)} />
              </details>
            )}
          </Region>
        )}
      </>
    ),
  };
}

import { plain } from '../render/plain.js';
import { say } from '../words.js';
import type { Ask, Page } from './page.js';
import { contextFor, FeedView, Messages, Region } from './region.js';

/** A pupil's own page: what to do now, then what came for them, then the talk. */
export async function pupilPage(ask: Ask): Promise<Page> {
  const { tools, visitor } = ask;
  const { profile } = visitor;
  const turn = await tools.house.look(profile, 'turn', {});
  const tray = await tools.house.look(profile, 'for-you', {});
  const feed = await tools.newest(profile);
  const shown = new Set([...turn.messages, ...tray.messages].map(({ blocks }) => JSON.stringify(blocks)));
  const earlier = feed.filter(
    ({ message }) => message.audience.to === 'person' && !shown.has(JSON.stringify(message.blocks)),
  );
  const talk = feed.filter(({ message }) => message.audience.to === 'channel');
  return {
    title: say('hello', { nickname: plain(profile.nickname) }),
    content: (
      <>
        <Region name="turn">
          <Messages messages={turn.messages} context={contextFor(ask, 'turn')} />
        </Region>
        {tray.messages.length + earlier.length === 0 ? (
          <Region name="for-you" />
        ) : (
          <Region name="for-you" title={say('for you')}>
            <Messages messages={tray.messages} context={contextFor(ask, 'for-you', 3)} />
            {earlier.length === 0 ? null : (
              <details>
                <summary>{say('earlier for you')}</summary>
                <FeedView items={earlier} context={contextFor(ask, 'earlier', 3)} />
              </details>
            )}
          </Region>
        )}
        <Region name="talk" title={say('talk')}>
          {talk.length === 0 ? (
            <p>{say('no talk')}</p>
          ) : (
            <FeedView items={talk} context={contextFor(ask, 'talk', 3)} />
          )}
        </Region>
      </>
    ),
  };
}

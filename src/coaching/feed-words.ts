import { catalogue } from './catalogue.js';

/** Words of the cards by which a feed points at a look. */
export const feedWords = catalogue({
  digestReady: { from: 'trade', for: 'staff', words: 'The digest for the next session is ready.' },
  lookReady: { from: 'plain words', for: 'staff', words: 'There is something new to look at.' },
  openIt: { from: 'plain words', for: 'staff', words: 'Open it' },
  stuck: {
    from: 'plain words',
    for: 'staff',
    words: 'A message to {platform} could not be sent, so a place of this class is silent there. {why}',
  },
  stuckWay: {
    from: 'plain words',
    for: 'staff',
    words: 'Nothing is lost: what waits is sent once that is mended and /here is used there again.',
  },
  seeWaiting: { from: 'plain words', for: 'staff', words: 'See what waits' },
  done: { from: 'plain words', for: 'staff', words: 'Done.' },
});

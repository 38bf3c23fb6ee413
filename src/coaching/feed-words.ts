import { catalogue } from './catalogue.js';

/** Words of the cards by which a feed points at a look. */
export const feedWords = catalogue({
  digestReady: { from: 'trade', for: 'staff', words: 'The digest for the next session is ready.' },
  lookReady: { from: 'plain words', for: 'staff', words: 'There is something new to look at.' },
  openIt: { from: 'plain words', for: 'staff', words: 'Open it' },
  done: { from: 'plain words', for: 'staff', words: 'Done.' },
});

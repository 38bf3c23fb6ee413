import { catalogue } from './catalogue.js';

/** The reasons of the judges in a tutor's words, by rule; a quotation is put behind when shown, figures fill the slots. */
export const reasonWords = catalogue({
  'no question': { from: 'plain words', for: 'staff', words: 'it asks nothing' },
});

/** What staff read about help. */
export const helpLabels = catalogue({
  modelled: { from: 'trade', for: 'staff', words: 'an adult models it' },
  shared: { from: 'trade', for: 'staff', words: 'shared with an adult' },
  guided: { from: 'trade', for: 'staff', words: 'guided by stems' },
  independent: { from: 'trade', for: 'staff', words: 'alone' },
});

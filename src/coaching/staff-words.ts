import { catalogue } from './catalogue.js';

/** The reasons of the judges in a tutor's words, by rule; a quotation is put behind when shown, figures fill the slots. */
export const reasonWords = catalogue({
  'no question': { from: 'plain words', for: 'staff', words: 'it asks nothing' },
  'one sentence holds its words': {
    from: 'plain words',
    for: 'staff',
    words: 'one sentence holds {share} of its words',
  },
  'no sentence holds all its words': {
    from: 'plain words',
    for: 'staff',
    words: 'no one sentence holds all its words; the nearest',
  },
  'the text lacks words of it': {
    from: 'plain words',
    for: 'staff',
    words: 'the text lacks {missing} of its words',
  },
  'no place seems to answer it': {
    from: 'plain words',
    for: 'staff',
    words: 'no place in the text seems to answer it ({probability} that one does)',
  },
  'the answer may stand here': {
    from: 'plain words',
    for: 'staff',
    words: 'the answer may stand here ({probability})',
  },
  'word for word from the text': {
    from: 'plain words',
    for: 'staff',
    words: 'word for word from the text ({copied} of it)',
  },
  "like another pupil's question": {
    from: 'plain words',
    for: 'staff',
    words: '{copiedFromPeers} of it is like another pupil’s question',
  },
  'words in a row from the segment': {
    from: 'plain words',
    for: 'staff',
    words: '{words} words in a row from the text',
  },
  'share copied': {
    from: 'plain words',
    for: 'staff',
    words: '{copied} of its words stand in runs from the text',
  },
  'key terms held': {
    from: 'plain words',
    for: 'staff',
    words: 'it holds {coverage} of the key terms by weight',
  },
  'overlap with the gist': {
    from: 'plain words',
    for: 'staff',
    words: 'it meets {gist} of the adult’s gist',
  },
  'like another pupil’s post': {
    from: 'plain words',
    for: 'staff',
    words: '{copiedFromPeers} of it is like another pupil’s post',
  },
  'about something else': {
    from: 'plain words',
    for: 'staff',
    words: 'it is about something else (on the topic: {onTopic})',
  },
  'nearness of the meaning': {
    from: 'plain words',
    for: 'staff',
    words: 'the meaning fits the word to {fit}',
  },
  'the text has words of it here': {
    from: 'plain words',
    for: 'staff',
    words: 'the text has {share} of its words here',
  },
  'the text has none of its own words': {
    from: 'plain words',
    for: 'staff',
    words: 'the text has none of the words that it adds',
  },
  'its "not" stands against the text': {
    from: 'plain words',
    for: 'staff',
    words: 'its “not” stands against the text',
  },
  'clue in the text': { from: 'plain words', for: 'staff', words: 'the clue that it seems to rest on' },
  'nothing in the text leads there': {
    from: 'plain words',
    for: 'staff',
    words: 'nothing in the text leads there',
  },
  'a "not", so no outcome': {
    from: 'plain words',
    for: 'staff',
    words: 'it says “not”, so no outcome is worked out',
  },
  'hard place, misspelt': {
    from: 'plain words',
    for: 'staff',
    words: 'the hard place, spelt another way by the pupil',
  },
  'hard place': { from: 'plain words', for: 'staff', words: 'the hard place' },
});

/** What staff read about help. */
export const helpLabels = catalogue({
  modelled: { from: 'trade', for: 'staff', words: 'an adult models it' },
  shared: { from: 'trade', for: 'staff', words: 'shared with an adult' },
  guided: { from: 'trade', for: 'staff', words: 'guided by stems' },
  independent: { from: 'trade', for: 'staff', words: 'alone' },
});

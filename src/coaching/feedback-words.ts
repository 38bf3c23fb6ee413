import { catalogue } from './catalogue.js';

/**
 * What a pupil is told about a try: one true good thing ("good"), one next step ("next"), one doable prompt ("prompt").
 * The pattern is common practice, no source. An entry that ends in "alone" has no stem in it and is for pupils who work
 * without help. A slot holds only a word that stands in the passage.
 */
export const feedbackWords = catalogue({
  thanks: { from: 'plain words', for: 'pupil', '8-10': 'Thanks.' },
  'good thought': { from: 'plain words', for: 'pupil', '8-10': 'You put a thought into words.' },

  'question good why': { from: 'trade', for: 'pupil', '8-10': 'You asked why or how. That makes us think.' },
  'question good big idea': { from: 'trade', for: 'pupil', '8-10': 'Your question goes to the big idea.' },
  'question good two places': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'To answer you, friends may look in two places.',
    '11-14': 'To answer you, others may need to join two places.',
  },
  'question good own head': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'To answer you, friends must think and read.',
    '11-14': 'To answer you, others must read, and then think.',
  },
  'question good word': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'You asked about “{word}” in the text.',
  },
  'question good asks': { from: 'plain words', for: 'pupil', '8-10': 'You asked something.' },

  'question ask next': { from: 'plain words', for: 'pupil', '8-10': 'Now turn it into a question.' },
  'question ask prompt': { from: 'trade', for: 'pupil', '8-10': 'Start with why, how, who or what.' },
  'question ask alone': { from: 'plain words', for: 'pupil', '8-10': 'What would you ask a friend?' },
  'question writer next': { from: 'trade', for: 'pupil', '8-10': 'These words are the writer’s.' },
  'question writer prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Tell it to a friend. Ask it your own way.',
  },
  'question here next': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Next, ask about this part of the text.',
  },
  'question here prompt': { from: 'trade', for: 'pupil', '8-10': 'Pick one thing here. Ask why it is so.' },
  'question here alone': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Pick one thing here and ask about it.',
  },
  'question where next': { from: 'trade', for: 'pupil', '8-10': 'Where would a friend find the answer?' },
  'question where prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Is it in the text, or in the head?',
  },
  'question friend next': { from: 'trade', for: 'pupil', '8-10': 'Can a friend answer it from this part?' },
  'question friend prompt': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Find a place that would help them.',
  },
  'question big idea next': { from: 'trade', for: 'pupil', '8-10': 'Next, try for the big idea.' },
  'question big idea prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'What is this part most about? Ask why.',
  },
  'question big idea alone': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'What is this part most about?',
  },
  'question ready next': { from: 'trade', for: 'pupil', '8-10': 'Be ready to answer it too.' },
  'question ready prompt': { from: 'trade', for: 'pupil', '8-10': 'Which sentence helps with the answer?' },

  'sum-up good own words': { from: 'trade', for: 'pupil', '8-10': 'You used your own words.' },
  'sum-up good short': { from: 'trade', for: 'pupil', '8-10': 'You kept it short.' },
  'sum-up good both': { from: 'trade', for: 'pupil', '8-10': 'It is short and in your own words.' },
  'sum-up good word': { from: 'plain words', for: 'pupil', '8-10': 'You told about “{word}” from the text.' },

  'sum-up here next': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Next, tell about this part of the text.',
  },
  'sum-up here prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Who or what is it about? Start with that.',
  },
  'sum-up writer next': { from: 'trade', for: 'pupil', '8-10': 'These words are the writer’s.' },
  'sum-up writer prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Tell it to a friend. Then write what you said.',
  },
  'sum-up shorter next': { from: 'trade', for: 'pupil', '8-10': 'Next, try to make it shorter.' },
  'sum-up shorter prompt': { from: 'trade', for: 'pupil', '8-10': 'What can you leave out?' },
  'sum-up more next': { from: 'plain words', for: 'pupil', '8-10': 'Next, say a little more.' },
  'sum-up more prompt': { from: 'trade', for: 'pupil', '8-10': 'What does the text say about it?' },
  'sum-up often next': { from: 'trade', for: 'pupil', '8-10': 'The text says “{word}” often.' },
  'sum-up often prompt': { from: 'trade', for: 'pupil', '8-10': 'Does your sum-up need it?' },
  'sum-up one more next': { from: 'trade', for: 'pupil', '8-10': 'One more big thing is not in it yet.' },
  'sum-up one more prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Read this part again and look for it.',
  },
  'sum-up friend next': { from: 'trade', for: 'pupil', '8-10': 'Now try it on a friend.' },
  'sum-up friend prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Could they tell what this part says?',
  },

  'clarify good fits': { from: 'trade', for: 'pupil', '8-10': 'Your meaning fits the text.' },
  'clarify good plan': { from: 'trade', for: 'pupil', '8-10': 'You found a hard place and had a plan.' },
  'clarify good word': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You stopped at “{word}”. That is a good stop.',
  },
  'clarify good place': { from: 'trade', for: 'pupil', '8-10': 'You said what was hard.' },
  'clarify good small word': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You saw that a small word can be hard.',
  },

  'clarify tap next': { from: 'plain words', for: 'pupil', '8-10': 'We can’t find that word here yet.' },
  'clarify tap prompt': { from: 'plain words', for: 'pupil', '8-10': 'Tap the word in the text.' },
  'clarify younger next': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Which word might a younger child ask about?',
  },
  'clarify younger prompt': { from: 'plain words', for: 'pupil', '8-10': 'Tap that word.' },
  'clarify clue next': { from: 'trade', for: 'pupil', '8-10': 'The text may give a clue.' },
  'clarify clue prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Look near the word. What may it mean?',
  },
  'clarify work next': { from: 'trade', for: 'pupil', '8-10': 'Now try to work it out.' },
  'clarify work prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Read it again, then read on. What may it mean?',
  },
  'clarify who next': { from: 'trade', for: 'pupil', '8-10': 'Now find who or what it stands for.' },
  'clarify who prompt': { from: 'trade', for: 'pupil', '8-10': 'Read the sentence before. Who was there?' },
  'clarify again next': { from: 'trade', for: 'pupil', '8-10': 'Read it in the sentence.' },
  'clarify again prompt': { from: 'trade', for: 'pupil', '8-10': 'Does it still make sense?' },
  'clarify use next': { from: 'trade', for: 'pupil', '8-10': 'Now make the word yours.' },
  'clarify use prompt': { from: 'trade', for: 'pupil', '8-10': 'Say it in a sentence of your own.' },

  'predict good clue': { from: 'trade', for: 'pupil', '8-10': 'You used a clue from the text.' },
  'predict good ahead': { from: 'trade', for: 'pupil', '8-10': 'You thought about what comes next.' },
  'predict good word': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'You thought about “{word}” in the text.',
  },

  'predict ahead next': { from: 'trade', for: 'pupil', '8-10': 'Now look past this part.' },
  'predict ahead prompt': { from: 'trade', for: 'pupil', '8-10': 'Start with “I think next”.' },
  'predict ahead alone': { from: 'trade', for: 'pupil', '8-10': 'What may come next?' },
  'predict why next': { from: 'trade', for: 'pupil', '8-10': 'What makes you think so?' },
  'predict why prompt': { from: 'trade', for: 'pupil', '8-10': 'Add “because” and a clue from the text.' },
  'predict why alone': { from: 'trade', for: 'pupil', '8-10': 'Add a clue from the text.' },
  'predict check next': { from: 'trade', for: 'pupil', '8-10': 'Now read on and check.' },
  'predict check prompt': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Look for the sentence that tells you.',
  },

  'answer good text': { from: 'trade', for: 'pupil', '8-10': 'You used the text to answer.' },
  'answer good word': { from: 'plain words', for: 'pupil', '8-10': 'You told about “{word}” from the text.' },
  'answer good reply': { from: 'plain words', for: 'pupil', '8-10': 'You gave your friend a reply.' },

  'answer show next': { from: 'trade', for: 'pupil', '8-10': 'Now show where you found it.' },
  'answer show prompt': { from: 'trade', for: 'pupil', '8-10': 'Tap the sentence that helped you.' },
  'answer asked next': { from: 'trade', for: 'pupil', '8-10': 'Does it answer what your friend asked?' },
  'answer asked prompt': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Read the question again. Then add one thing.',
  },
  'answer look next': { from: 'trade', for: 'pupil', '8-10': 'Look once more at the text.' },
  'answer look prompt': { from: 'trade', for: 'pupil', '8-10': 'Find a sentence that helps to answer.' },
});

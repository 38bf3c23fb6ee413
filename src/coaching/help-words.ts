import { catalogue } from './catalogue.js';

/**
 * Help in four steps: a nudge, stems to start from, a model on another text (our own), a shared turn. The sentences
 * speak of no passage, so that the first steps can't give an answer away. "safe" ones serve where even so a run of words
 * happened to stand in an adult's sentence.
 */
export const helpWords = catalogue({
  'predict nudge': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Look at the name of the text and the last lines. What do they tell you?',
  },
  'predict stem': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You can start like this: “I think … will …, because the text says …”',
  },
  'predict model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. It says: “The sky over the boats grew dark.” We think the men will go home. The clue is the dark sky.',
  },
  'predict shared': { from: 'trade', for: 'pupil', '8-10': 'Pick a start. Then you finish it.' },

  'question nudge': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'What made you stop and think? Ask your friends about that.',
  },
  'question stem': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You can start like this: “Why did …?” “How does …?” “What would happen if …?”',
  },
  'question model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. It says: “The duck hid her eggs. A fox was near.” We could ask: “Why did the duck hide her eggs?”',
  },
  'question shared': { from: 'trade', for: 'pupil', '8-10': 'Pick a start. Then you finish it.' },

  'answer nudge': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Read the question once more. Which part of the text is it about?',
  },
  'answer stem': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You can start like this: “I think so because the text says …”',
  },
  'answer model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. A friend asks: “Why did the duck hide her eggs?” We say: “A fox was near. The text says so.”',
  },
  'answer shared': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Pick a sentence that helps. Then say it in your own words.',
  },

  'clarify nudge': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Which word might a younger child ask about? Tap it.',
  },
  'clarify stem': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You can start like this: “I stopped at …. I think it means …, because …”',
  },
  'clarify model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. It says: “The den, a hole in the ground, was warm.” We look beside “den”. A den is a hole where an animal sleeps.',
  },
  'clarify shared': { from: 'trade', for: 'pupil', '8-10': 'Pick a word. Read what stands beside it.' },

  'sum-up nudge': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Who or what is this part about? What is the main thing?',
  },
  'sum-up stem': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'You can start like this: “This part is about …. The main thing is …”',
  },
  'sum-up model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. It says: “Father got up. He fed the hens, the cow and the pig.” Our sum-up: “Father fed the animals.”',
  },
  'sum-up shared gaps': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'We start, you fill it in: “{half}”',
  },
  'sum-up shared': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Pick what this part is most about. Then tell about it.',
  },

  'add nudge': { from: 'trade', for: 'pupil', '8-10': 'Read the sum-up. Add or change one thing.' },
  'add stem': { from: 'trade', for: 'pupil', '8-10': 'You can start like this: “It also says …”' },
  'add model': {
    from: 'trade',
    for: 'pupil',
    '8-10':
      'Here is one about another text. The sum-up is: “Father fed the hens.” A friend adds: “He fed the cow too.”',
  },
  'add shared': { from: 'trade', for: 'pupil', '8-10': 'Pick one thing to do.' },

  'safe again': { from: 'trade', for: 'pupil', '8-10': 'Read it again.' },
  'safe slow': { from: 'trade', for: 'pupil', '8-10': 'Go slow.' },

  'choice predict who': { from: 'trade', for: 'pupil', '8-10': 'I think someone will …' },
  'choice predict find': { from: 'trade', for: 'pupil', '8-10': 'I think next we will find out …' },
  'choice predict same': { from: 'trade', for: 'pupil', '8-10': 'I think it will stay the same, because …' },
  'choice question why': { from: 'trade', for: 'pupil', '8-10': 'Why did …?' },
  'choice question how': { from: 'trade', for: 'pupil', '8-10': 'How does …?' },
  'choice question if': { from: 'trade', for: 'pupil', '8-10': 'What would happen if …?' },
  'choice add who': { from: 'trade', for: 'pupil', '8-10': 'Say who or what it is about.' },
  'choice add why': { from: 'trade', for: 'pupil', '8-10': 'Say why.' },
  'choice add less': { from: 'trade', for: 'pupil', '8-10': 'Take out what we do not need.' },
});

/** Stems for each question-answer relationship, to start a question with (signal stems are common practice, no source). */
export const stemWords = catalogue({
  'right there 1': { from: 'trade', for: 'pupil', '8-10': 'Who is …?' },
  'right there 2': { from: 'trade', for: 'pupil', '8-10': 'Where is …?' },
  'right there 3': { from: 'trade', for: 'pupil', '8-10': 'How many …?' },
  'think and search 1': { from: 'trade', for: 'pupil', '8-10': 'How are … and … like each other?' },
  'think and search 2': { from: 'trade', for: 'pupil', '8-10': 'How did …?' },
  'think and search 3': { from: 'trade', for: 'pupil', '8-10': 'What are two things that …?' },
  'author and me 1': { from: 'trade', for: 'pupil', '8-10': 'Why do you think …?' },
  'author and me 2': { from: 'trade', for: 'pupil', '8-10': 'What can you tell about …?' },
  'author and me 3': { from: 'trade', for: 'pupil', '8-10': 'What does the author want us to …?' },
  'on my own 1': { from: 'trade', for: 'pupil', '8-10': 'Have you ever …?' },
  'on my own 2': { from: 'trade', for: 'pupil', '8-10': 'What would you do if …?' },
  'on my own 3': { from: 'trade', for: 'pupil', '8-10': 'What do you think about …?' },
});

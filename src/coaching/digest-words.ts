import { catalogue, type Origin } from './catalogue.js';

const staff = (from: Origin, words: string) => ({ from, for: 'staff', words }) as const;

/** What the digest says to staff, in the trade's words. A suggestion has a "text" (what to do) and a "reason" (what shows it). */
export const digestWords = catalogue({
  'words gone': staff('plain words', '(The words are gone; the number stays.)'),
  'words sealed': staff('plain words', '(The words of an alarm are sealed.)'),
  'no words kept': staff('plain words', '(Noted in the session without words.)'),
  'name gone': staff('plain words', '(name gone)'),

  'noted live': staff('trade', 'Level {level}, noted by an adult in the session.'),
  'settled by tutor': staff('plain words', 'Level {level}, by your own word.'),
  'judged alone': staff('plain words', 'Level {level} by the judge.'),
  'judged because': staff('plain words', 'Level {level} by the judge: {reasons}.'),

  'a predict': staff('trade', 'prediction'),
  'a question': staff('trade', 'question'),
  'a answer': staff('plain words', 'answer'),
  'a clarify': staff('trade', 'clarifying'),
  'a sum-up': staff('trade', 'sum-up'),
  'a add': staff('plain words', 'addition'),

  'at question': staff('trade', 'questioning'),
  'at clarify': staff('trade', 'clarifying'),
  'at sum-up': staff('trade', 'summing up'),
  'at predict': staff('trade', 'predicting'),

  'group line': staff(
    'trade',
    'The group so far: {met} of {tries} typed tries met the mark (level 2 or more).',
  ),
  'group line early': staff(
    'plain words',
    'The group so far: {tries} typed tries, too few for a line on the whole.',
  ),
  'question mix': staff(
    'trade',
    'Questions by where the answer lives: {rightThere} right there, {thinkAndSearch} think and search, {authorAndMe} author and me, {onMyOwn} on my own, {unsure} unsure.',
  ),

  'weak strategy text': staff(
    'trade',
    'Model {strategy} for {pupil} once, then share a turn, starting from “{quote}”.',
  ),
  'weak strategy reason': staff(
    'trade',
    '{pupil} met the mark in {met} of {of} tries at it, on different days and passages.',
  ),
  'word of many text': staff('trade', 'Clarify “{word}” together: {pupil} wrote “{quote}”.'),
  'word of many reason': staff(
    'plain words',
    '{many} pupils stumbled on it, {pupil} the latest, and no meaning is confirmed yet.',
  ),
  'pasted sum-up text': staff(
    'trade',
    'Let {pupil} tell it to a friend with the text covered, then sum up “{quote}” anew.',
  ),
  'pasted sum-up reason': staff(
    'trade',
    '{percent} % of the words of this sum-up stand in runs of the passage; sum-ups like it from {pupil}: {times}.',
  ),
  'below twice text': staff('trade', 'Share a turn at {strategy} with {pupil}, from “{quote}”.'),
  'below twice reason': staff(
    'trade',
    'The last two tries of {pupil} at it stayed below the mark; too few yet to call it weak.',
  ),
  'only in the text text': staff(
    'trade',
    'Ask {pupil} to turn “{quote}” into a question whose answer must be worked out.',
  ),
  'only in the text reason': staff(
    'trade',
    'All {many} questions of {pupil} can be answered by pointing at the text; the group needs a mix.',
  ),
  'not led text': staff('trade', 'Let {pupil} lead the first part, with “{quote}” as the way in.'),
  'not led reason': staff('trade', '{pupil} has not led yet; others have led up to {most} times.'),
  'prediction unchecked text': staff(
    'trade',
    'Go back with {pupil} to “{quote}”: came true, partly, or changed?',
  ),
  'prediction unchecked reason': staff(
    'trade',
    'The part that this prediction of {pupil} is about is closed, and nobody has looked at it again.',
  ),
  'only names words text': staff(
    'trade',
    'Try a fix-up strategy with {pupil} on “{quote}”, and read the meaning back in the sentence.',
  ),
  'only names words reason': staff(
    'trade',
    '{pupil} named hard words {many} times and tried no way out of them yet.',
  ),
  'question unanswered text': staff('trade', 'Put the question of {pupil} to the group: “{quote}”.'),
  'question unanswered reason': staff('plain words', 'Nobody has answered {pupil} here.'),
  'not answered text': staff('trade', 'Ask {pupil} to answer {asker}: “{quote}”.'),
  'not answered reason': staff(
    'trade',
    '{pupil} has written on this passage and answered nobody; replies keep it a talk.',
  ),
  'worth hearing text': staff('plain words', 'Read this {doing} of {pupil} aloud as a model: “{quote}”.'),
  'worth hearing reason': staff('trade', 'It met the mark, and {pupil} can say how it was made.'),
  'any post text': staff('plain words', 'Take up “{quote}” with {pupil}.'),
  'any post reason': staff(
    'plain words',
    'It is the latest {doing} of {pupil}; there is too little yet to say more.',
  ),
});

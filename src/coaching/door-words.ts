import { catalogue, type Origin } from './catalogue.js';

const pupil = (words: string) => ({ from: 'plain words', for: 'pupil', '8-10': words }) as const;
const staff = (from: Origin, words: string) => ({ from, for: 'staff', words }) as const;

/** What is said at the door: to who comes in, and on slips. */
export const doorWords = catalogue({
  'too many tries': pupil('Too many tries. Wait ten minutes, or ask your tutor.'),
  'opens nothing': pupil('This code does not open anything. Look at your slip again, or ask your tutor.'),
  'not ready': pupil('Your class is not open yet. Your tutor will tell you when.'),
  'not your pictures': pupil('Those are not your pictures. Try again, or ask your tutor.'),
  'pick three': pupil('Pick three pictures.'),
  'wait a minute': pupil('Wait one minute. Then try again.'),
  'pictures locked': pupil('Too many tries. Ask your tutor to let you pick new pictures.'),
  'pictures after code': pupil('Write your code, then your three pictures, like this: CODE, boat, key, tree'),
  'pictures first': pupil('Come in on the page first and pick your three pictures.'),

  'pictures kept': pupil('Your three pictures are kept. Show them when you come in.'),
  'pictures pupils': staff('plain words', 'Three pictures are for pupils; adults set a passphrase.'),

  'not your passphrase': staff('plain words', 'This is not your passphrase. Try again.'),
  'passphrase short': staff(
    'plain words',
    'A passphrase needs 12 characters or more, 200 at most. Four words are good.',
  ),
  'passphrase locked': staff(
    'plain words',
    'Too many tries. Ask an administrator of the class to reset your passphrase.',
  ),
  'passphrase after code': staff('plain words', 'Write the code of your link, a comma and your passphrase.'),
  'passphrase first': staff('plain words', 'Come in on the page first and set your passphrase.'),

  'link made': staff(
    'plain words',
    'A new link for {who}, who is called when a post is worrying, was made by {by}. The old one no longer works. Was that agreed? If not, talk to each other and make another.',
  ),
  somebody: staff('plain words', 'somebody'),
  'slips revoked': staff('plain words', 'The slips no longer open anything.'),
  'slip new': staff('plain words', 'A new slip. It is shown this once.'),
  'slip title': staff('plain words', 'A new slip'),
  'slip once': staff(
    'plain words',
    'It is shown this once. Older slips and links of this person no longer work.',
  ),
  'slip until': staff('plain words', 'It opens the room until {when}.'),
  'slip code': staff('plain words', 'Code: '),
  'slip link': staff('plain words', 'Link: {link}'),
  'slip picture': staff('plain words', 'The link as a square code for a camera'),
  'sheet title': staff('plain words', 'Slips of {group}'),
  'sheet once': staff(
    'plain words',
    'New slips, shown this once: print them now. Older slips of these pupils no longer work, and who was signed in is signed out.',
  ),
  'sheet none': staff('plain words', 'There is no pupil in {group} yet.'),
  'sheet go': pupil('Go to this page:'),
  'sheet write': pupil('Write your code:'),
  'sheet keep': pupil('This slip is only for you. Keep it safe.'),
  'sheet until': pupil('It is good until {when}.'),
});

/** The younger register always stands; where the older one is missing the younger serves. */
type Entry =
  | {
      readonly from: 'trade' | 'open standard' | 'plain words' | 'ours';
      readonly for: 'pupil';
      readonly '8-10': string;
      readonly '11-14'?: string;
    }
  | {
      readonly from: 'trade' | 'open standard' | 'plain words' | 'ours';
      readonly for: 'staff';
      readonly words: string;
    };

/** Everything that the room itself says; each entry names where its words come from. */
export const roomWords = {
  'room name': { from: 'ours', for: 'pupil', '8-10': 'Turnstone' },
  'skip to page': { from: 'open standard', for: 'pupil', '8-10': 'Skip to the page' },
  pages: { from: 'plain words', for: 'pupil', '8-10': 'Pages' },

  // Coming in and going out.
  'come in title': { from: 'plain words', for: 'pupil', '8-10': 'Come in' },
  'code label': { from: 'plain words', for: 'pupil', '8-10': 'The code on your slip' },
  'code hint': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Small or big letters: both are fine. You can leave out the dashes.',
  },
  'come in': { from: 'plain words', for: 'pupil', '8-10': 'Come in' },
  'link title': { from: 'plain words', for: 'pupil', '8-10': 'Here is your door' },
  'link words': { from: 'plain words', for: 'pupil', '8-10': 'Press the button to come in.' },
  'own device': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Only I use this device. Keep me signed in.',
  },
  'not watched': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Nobody watches this page day and night. Do you need help now? Talk to a grown-up near you.',
  },
  'sign out': { from: 'plain words', for: 'pupil', '8-10': 'Sign out' },
  'signed out': { from: 'plain words', for: 'pupil', '8-10': 'You are signed out. See you next time.' },
  'idle out': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'You were away for a while, so this page closed. Come in again with your code.',
  },
  'come in first': { from: 'plain words', for: 'pupil', '8-10': 'Come in first. Then you can go on.' },
  'door shut': { from: 'plain words', for: 'pupil', '8-10': 'This did not open' },
  'pictures show': { from: 'plain words', for: 'pupil', '8-10': 'Show your three pictures' },
  'pictures pick': { from: 'plain words', for: 'pupil', '8-10': 'Pick three pictures' },
  'pictures show hint': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Pick them in the same order as before.',
  },
  'pictures pick hint': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'You will need them each time you come in. Only you should know them.',
  },
  'pictures forgot': { from: 'plain words', for: 'pupil', '8-10': 'Forgot them? Ask your tutor.' },
  'picture first': { from: 'plain words', for: 'pupil', '8-10': 'First picture' },
  'picture second': { from: 'plain words', for: 'pupil', '8-10': 'Second picture' },
  'picture third': { from: 'plain words', for: 'pupil', '8-10': 'Third picture' },
  'pictures three': { from: 'plain words', for: 'pupil', '8-10': 'Pick three pictures.' },
  'pictures keep': { from: 'plain words', for: 'pupil', '8-10': 'Keep these three' },
  'pictures mine': { from: 'plain words', for: 'pupil', '8-10': 'My three pictures' },
  'pictures why': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Do others use this device too? Three pictures keep your page yours.',
  },
  'pictures have': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'You have three pictures. You can pick new ones.',
  },
  'go on': { from: 'plain words', for: 'pupil', '8-10': 'Go on' },
  'passphrase title': { from: 'plain words', for: 'staff', words: 'Your passphrase' },
  'passphrase label': { from: 'plain words', for: 'staff', words: 'Your passphrase' },
  'passphrase new': { from: 'plain words', for: 'staff', words: 'Set a passphrase' },
  'passphrase hint': {
    from: 'plain words',
    for: 'staff',
    words:
      '12 characters or more; four words that you can remember are good. You are asked for it at each sign-in.',
  },
  'fill in code': { from: 'plain words', for: 'pupil', '8-10': 'Write the code from your slip.' },

  // A pupil's page.
  hello: { from: 'plain words', for: 'pupil', '8-10': 'Hello, {nickname}' },
  'my page': { from: 'plain words', for: 'pupil', '8-10': 'My page' },
  'for you': { from: 'plain words', for: 'pupil', '8-10': 'For you' },
  'earlier for you': { from: 'plain words', for: 'pupil', '8-10': 'Earlier notes for you' },
  talk: { from: 'plain words', for: 'pupil', '8-10': 'The talk' },
  'no talk': { from: 'plain words', for: 'pupil', '8-10': 'Nobody has said anything yet.' },
  words: { from: 'trade', for: 'pupil', '8-10': 'Words' },
  where: { from: 'plain words', for: 'pupil', '8-10': 'Where are we?' },
  'step title': { from: 'plain words', for: 'pupil', '8-10': 'Your part' },
  'how it looks': { from: 'plain words', for: 'pupil', '8-10': 'How the page looks' },
  'back to my page': { from: 'plain words', for: 'pupil', '8-10': 'Back to my page' },
  'grown-up': { from: 'trade', for: 'pupil', '8-10': 'Tell a grown-up' },
  'grown-up words': {
    from: 'trade',
    for: 'pupil',
    '8-10': 'Is something not right? Your tutor will see this. You can write what it is, or just send it.',
  },
  'grown-up label': { from: 'plain words', for: 'pupil', '8-10': 'What is it? (You can leave this empty.)' },
  'grown-up send': { from: 'plain words', for: 'pupil', '8-10': 'Send to my tutor' },
  scribed: { from: 'trade', for: 'pupil', '8-10': 'A grown-up typed this for me' },
  'no pick': { from: 'plain words', for: 'pupil', '8-10': 'I do not pick one' },
  'pick from list': { from: 'plain words', for: 'pupil', '8-10': 'Pick one' },
  'may be empty': { from: 'plain words', for: 'pupil', '8-10': '(can be empty)' },
  done: { from: 'plain words', for: 'pupil', '8-10': 'Done.' },

  // When something is not done.
  'look at this': { from: 'plain words', for: 'pupil', '8-10': 'This was not sent yet' },
  'go to form': { from: 'plain words', for: 'pupil', '8-10': 'Go to what you wrote' },
  'fill in first': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Something is still empty. Fill it in and send it.',
  },
  'your words': { from: 'plain words', for: 'pupil', '8-10': 'Here are your words. You can copy them.' },
  'page too old': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'This page was too old. Nothing was sent. Please send it again.',
  },
  'not here title': { from: 'plain words', for: 'pupil', '8-10': 'There is nothing here' },
  'not here': { from: 'plain words', for: 'pupil', '8-10': 'This page is not here. Go back to your page.' },
  'not yours title': { from: 'plain words', for: 'pupil', '8-10': 'This page is for somebody else' },
  'not yours': { from: 'plain words', for: 'pupil', '8-10': 'Only some people may see this page.' },
  'too big title': { from: 'plain words', for: 'pupil', '8-10': 'That is too much at once' },
  'too big': {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'Nothing was kept. Send a shorter text: at most 300 KiB with everything.',
  },
  'trouble title': { from: 'plain words', for: 'pupil', '8-10': 'That did not work' },
  trouble: {
    from: 'plain words',
    for: 'pupil',
    '8-10': 'It is not your fault. Wait a minute and try again.',
  },
  'not text': {
    from: 'plain words',
    for: 'staff',
    words:
      'Cannot read the file, expected plain text in UTF-8. Save it as a .txt or .md file and pick it again.',
  },

  // How the page looks.
  'text size': { from: 'plain words', for: 'pupil', '8-10': 'How big are the letters?' },
  'size normal': { from: 'plain words', for: 'pupil', '8-10': 'Normal' },
  'size large': { from: 'plain words', for: 'pupil', '8-10': 'Big' },
  'size largest': { from: 'plain words', for: 'pupil', '8-10': 'Very big' },
  spacing: { from: 'plain words', for: 'pupil', '8-10': 'How much room is between words and lines?' },
  'spacing normal': { from: 'plain words', for: 'pupil', '8-10': 'Normal' },
  'spacing wide': { from: 'plain words', for: 'pupil', '8-10': 'More room' },
  ground: { from: 'plain words', for: 'pupil', '8-10': 'What colour is the page?' },
  'ground sand': { from: 'ours', for: 'pupil', '8-10': 'Light sand' },
  'ground foam': { from: 'ours', for: 'pupil', '8-10': 'Pale blue' },
  'ground night': { from: 'ours', for: 'pupil', '8-10': 'Dark' },
  'show like this': { from: 'plain words', for: 'pupil', '8-10': 'Show it like this' },

  // Live, by script.
  'something new': { from: 'plain words', for: 'pupil', '8-10': 'Something new is here. Show it.' },
  'read to me': { from: 'plain words', for: 'pupil', '8-10': 'Read to me' },
  'stop reading': { from: 'plain words', for: 'pupil', '8-10': 'Stop reading' },
  'read my words': { from: 'plain words', for: 'pupil', '8-10': 'Read my words to me' },
  'read it aloud': { from: 'plain words', for: 'pupil', '8-10': 'Read this aloud' },

  // The staff side.
  waiting: { from: 'plain words', for: 'staff', words: 'What waits' },
  'staff notes': { from: 'plain words', for: 'staff', words: 'Notes for staff' },
  'no notes': { from: 'plain words', for: 'staff', words: 'No notes so far.' },
  digest: { from: 'trade', for: 'staff', words: 'Digest' },
  slips: { from: 'plain words', for: 'staff', words: 'Slips' },
  'slips why': {
    from: 'plain words',
    for: 'staff',
    words:
      'A sheet with a slip for each pupil of a group, to print and cut. It makes new slips: the old ones stop working at once, and who is signed in with one is signed out.',
  },
  'slips make': { from: 'plain words', for: 'staff', words: 'Make new slips for {group}' },
  'slips none': { from: 'plain words', for: 'staff', words: 'No group so far.' },
  passages: { from: 'trade', for: 'staff', words: 'Passages' },
  roster: { from: 'trade', for: 'staff', words: 'Roster' },
  table: { from: 'plain words', for: 'staff', words: 'At the table' },
  today: { from: 'plain words', for: 'staff', words: 'Morning list' },
  settings: { from: 'plain words', for: 'staff', words: 'Settings' },
  alarms: { from: 'trade', for: 'staff', words: 'Alarms' },
  'alarm words': { from: 'trade', for: 'staff', words: 'Words of an alarm' },
  commands: { from: 'plain words', for: 'staff', words: 'Commands' },
  preview: { from: 'plain words', for: 'staff', words: 'Preview' },
  post: { from: 'plain words', for: 'staff', words: 'A post' },
  help: { from: 'plain words', for: 'staff', words: 'Help' },
  'reading look': { from: 'plain words', for: 'staff', words: 'How the page looks' },
  'type a command': { from: 'plain words', for: 'staff', words: 'Type a slash command' },
  'type hint': {
    from: 'plain words',
    for: 'staff',
    words: 'For instance: /practice where. Each command below also has a form.',
  },
  'do command': { from: 'plain words', for: 'staff', words: 'Do it' },
  'all commands': { from: 'plain words', for: 'staff', words: 'All commands' },
  answer: { from: 'plain words', for: 'staff', words: 'Answer' },
  print: { from: 'plain words', for: 'staff', words: 'Print this page' },
} as const satisfies Record<string, Entry>;

export type RoomWord = keyof typeof roomWords;

/** One of the room's labels with its {slots} filled; throws where a slot has no value. */
export function say(word: RoomWord, slots: Readonly<Record<string, string>> = {}): string {
  const entry: Entry = roomWords[word];
  const words = entry.for === 'staff' ? entry.words : entry['8-10'];
  return words.replace(/\{(\w+)\}/gu, (_, slot: string) => {
    const value = slots[slot];
    if (value === undefined) throw new Error(`Cannot fill a label, expected a value for {${slot}}, got none`);
    return value;
  });
}

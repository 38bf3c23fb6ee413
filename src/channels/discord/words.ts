/** Everything that the Discord channel itself says, in plain words; what the practice says comes from the house. */
export const discordWords = {
  // A button that opens what is for one person alone.
  'for you': 'For you',
  'what waits': 'What waits',
  'go on': 'Go on',
  'open it': 'Open it',
  more: 'More',

  // Coming in.
  stranger: 'I do not know you here yet. Put in the code on your slip, once.',
  'put in code': 'Put in the code',
  'code label': 'The code on your slip',
  'code hint': 'Small or big letters: both are fine.',
  'come in': 'Come in',
  joined: 'You are in. What is for you stands behind “For you”, and nobody else sees it.',
  'only in servers': 'This works in the server of your class, not in a direct message.',

  // Binding a place.
  'age first':
    'Discord asks that everybody here is at least {age}, in some countries older. Is every pupil of this group old enough, and do their families know?',
  'old enough': 'Yes, all are old enough',
  'bind one': 'Pick a group, or say staff.',
  'pupils can write':
    'Everybody can write in this place past me, and I can’t read along. Take “Send Messages” and “Send Messages in Threads” from the pupils here; they reach the talk through my buttons.',
  'cannot say here': 'I may not write here yet. Give me “View Channel” and “Send Messages” in this place.',

  // Threads, one for each text.
  talk: 'Our text',
  'no threads':
    'On Discord I may not open threads in the channel of a group, or not write in them, so all talk stands in the channel itself. Give me “Create Public Threads” and “Send Messages in Threads” there.',
  'thread gone':
    'On Discord the thread of a text can’t be found or opened again, so its talk goes on in the channel itself. The next text gets a thread of its own.',
  unsure:
    'Cannot tell whether a message arrived on Discord, expected to read the channel’s history. Look whether it stands there, give me “Read Message History”, then use /here.',

  // When something is in the way.
  trouble: 'That did not work, and nothing was kept. Try again in a minute.',
  busy: 'Many people are here just now. Try again in a moment.',
  'you wrote': 'You wrote:',
  'too old': 'This button is too old. Open “For you” and go on from there.',
  'page gone': 'That part has gone. Ask for it again.',
  'not there': 'That word does not stand in the text. Look at it again.',
  'another step': 'Nearly there: one more part.',
  'not a text': 'Take a .txt or .md file that is no longer than {most} KB.',
  nothing: 'There is nothing here now.',
} as const;

export type DiscordKey = keyof typeof discordWords;

/** A sentence of the channel's own with its slots filled. */
export function say(key: DiscordKey, slots: Readonly<Record<string, string | number>> = {}): string {
  return Object.entries(slots).reduce(
    (so, [name, value]) => so.replaceAll(`{${name}}`, String(value)),
    discordWords[key] as string,
  );
}

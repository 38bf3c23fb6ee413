/** Words that the channel itself says; each names where it comes from. Pupils on Slack are sixteen or older, so one register serves. */
interface Entry {
  readonly from: 'trade' | 'open standard' | 'plain words' | 'ours';
  readonly for: 'pupil' | 'staff';
  readonly words: string;
}

const pupil = (words: string, from: Entry['from'] = 'plain words'): Entry => ({ from, for: 'pupil', words });
const staff = (words: string, from: Entry['from'] = 'plain words'): Entry => ({ from, for: 'staff', words });

const catalogue = {
  title: pupil('Turnstone', 'ours'),
  close: pupil('Close'),
  send: pupil('Send'),
  'my page': pupil('My page'),
  'for you': pupil('For you'),
  more: pupil('Go on'),
  'more kept': pupil('There is more. It is kept for you: open “For you” or your page.'),
  page: pupil('Page {n} of {many}'),
  kept: pupil('Done. It is kept.'),
  'nothing here': pupil('There is nothing here just now.'),
  'nothing to pick': pupil('There is nothing to pick just now.'),
  'up to': pupil('Up to {n} characters fit here.'),
  'pick one': pupil('Pick one'),
  'letters from to': pupil('{from} to {to}'),
  working: pupil('Working on it …'),
  'not kept': pupil('That did not work just now, and nothing was kept. Please try again.'),
  'too old': pupil('This button is from an earlier time. Open your page and go on from there.'),
  'form too late': pupil('The form could not be opened. Please press or type it again.'),
  'cannot read file': pupil(
    'The file could not be read. Send a .txt or .md file of at most 256 KB, as UTF-8.',
  ),
  'too long to carry': pupil('“{label}” does not fit here. You find it on your page in the room.'),
  stranger: pupil('I don’t know you here yet. Type /join code: and the code on your slip.'),
  'join how': pupil('Type /join code: and the code on your slip, for instance /join code:K7QM-2RTX-9P'),
  joined: pupil('You are {nickname} in {class} here now.'),
  'here which': staff('Whose place is this channel?'),
  'here staff': staff('Staff of the class'),
  'here not direct': staff('Type /here in a channel; this is a direct message.'),
  'here nobody may': staff('Only a tutor, a teacher or an administrator ties a channel to a class.'),
  'here age': staff(
    'Slack is for people of 16 and over (Slack’s terms). Everybody who reads here with {group} must be 16 or older; younger pupils practise in the room that the school serves.',
  ),
  'here age sure': staff('All are 16 or older: use this channel for {group}'),
  'here bound': staff(
    'This channel is for {place} now. Invite the bot into it if you have not yet: /invite @Turnstone',
  ),
  'here pupils in staff': staff('See that no pupil is in this channel.'),
  'stuck gone': staff(
    'Cannot post in this Slack channel, expected a channel that is there, got “{code}”. Tie another one with /here.',
  ),
  'stuck closed': staff(
    'Cannot post in this Slack channel, expected one that is open, got “{code}”. Unarchive it, or tie another one with /here.',
  ),
  'stuck outside': staff(
    'Cannot post in this Slack channel, expected the bot in it, got “{code}”. Invite it: /invite @Turnstone',
  ),
  'stuck token': staff(
    'Cannot post to Slack, expected a token that holds, got “{code}”. Install the app anew and set SLACK_BOT_TOKEN.',
  ),
  'stuck scope': staff(
    'Cannot post to Slack, expected all permissions of the manifest, got “{code}”. Install the app anew from “turnstone manifest”.',
  ),
  'stuck other': staff(
    'Cannot post this message in Slack, expected it to be taken, got “{code}”. Look at the channel’s settings; “turnstone doctor” helps.',
  ),
  'stuck workspace': staff(
    'Cannot post to Slack, expected this workspace to have the app installed; it was removed. Install it again at /slack/install of your server, then use /here.',
  ),
  'thread gone': staff(
    'On Slack the talk about a text can’t go on under its first message (“{code}”), so it goes on in the channel itself. The next text begins anew.',
  ),
  busy: pupil('Many people are here just now. Please try again in a moment.'),
  'install title': staff('Turnstone on Slack', 'ours'),
  'install how': staff(
    'Slack shows next what the app may do, and asks whether your workspace wants it. Everybody in it must be 16 or older.',
  ),
  'install go': staff('Go on to Slack'),
  'install done': staff(
    'Turnstone is in {name} now. Invite it into a channel (/invite @Turnstone), come in with /turnstone-join and your code, and type /here there.',
  ),
  'install refused': staff('Nothing was installed. You can begin again at any time.'),
  'install stale': staff(
    'This installation was not begun in this browser, took too long, or was done already. Please begin again.',
  ),
  'install failed': staff('Slack did not give a token, so nothing was installed. Please begin again.'),
  'install not here': staff(
    'Turnstone is installed in one workspace at a time, not in a whole organisation. Choose a workspace and begin again.',
  ),
  'install full': staff('Too many workspaces use this server already. Ask who runs it.'),
  'stuck unsure': staff(
    'Cannot tell whether a message arrived on Slack, expected to read the channel’s history, got “{code}”. Look whether it stands there before it is sent again.',
  ),
} as const satisfies Readonly<Record<string, Entry>>;

export type SlackWord = keyof typeof catalogue;

/** All of the channel's own words, for tests of the catalogues. */
export const slackWords: Readonly<Record<SlackWord, Entry>> = catalogue;

/** A sentence of the catalogue with its slots filled. */
export function say(key: SlackWord, slots: Readonly<Record<string, string | number>> = {}): string {
  return catalogue[key].words.replace(/\{(\w+)\}/gu, (_, name: string) => String(slots[name] ?? ''));
}

/** Commands that only a chat platform needs: who somebody is, whose a place is, and a way to one's page. */
export const ownCommands = [
  { name: 'turn', words: 'Your page: what is next for you', hint: '' },
  { name: 'join', words: 'Say who you are, with the code on your slip', hint: 'code:K7QM-2RTX-9P' },
  { name: 'here', words: 'Tie this channel to a group or to the staff', hint: 'staff or group:name' },
] as const;

export type OwnCommand = (typeof ownCommands)[number]['name'];

/** Names that Slack keeps for itself, so that no app may have them (from memory, Slack's help page on slash commands). */
const taken: ReadonlySet<string> = new Set([
  'active',
  'apps',
  'archive',
  'away',
  'call',
  'collapse',
  'dm',
  'dnd',
  'expand',
  'feed',
  'feedback',
  'help',
  'invite',
  'invite_people',
  'join',
  'kick',
  'leave',
  'me',
  'msg',
  'mute',
  'open',
  'prefs',
  'remind',
  'remove',
  'rename',
  'search',
  'shortcuts',
  'shrug',
  'star',
  'status',
  'topic',
  'who',
]);

/** The name under which a command is registered: its own, or with our name before it where Slack keeps it. */
export function registeredName(name: string): string {
  return taken.has(name) ? `turnstone-${name}` : name;
}

/** A command's name as the app knows it, from what Slack sends: "/turnstone-help" is help. */
export function plainName(command: string): string {
  return command.replace(/^\//u, '').replace(/^turnstone-/u, '');
}

/** The command of the channel's own that was typed, or null. */
export function findOwn(command: string): OwnCommand | null {
  return ownCommands.find(({ name }) => name === plainName(command))?.name ?? null;
}

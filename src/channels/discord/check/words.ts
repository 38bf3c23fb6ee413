/** What staff are told about what Discord grants; plain words, each bad news with its remedy. */
const words = {
  'token fine': 'Discord: the token is taken.',
  'token bad':
    'Discord: the token is not taken. Make a new one on the application’s page (Bot, Reset Token), set DISCORD_TOKEN and start again.',
  'cannot ask': 'Discord: could not be asked ({code}). Look at the network{where}, then run doctor again.',
  where: ' and at DISCORD_API',
  'slow down': 'Discord: asks to slow down. Wait a few minutes, then run doctor again.',
  'application fine': 'Discord: the token belongs to application {id}.',
  'application bad':
    'Discord: DISCORD_APPLICATION_ID is {set}, but the token belongs to application {id}. Set it to {id}, or leave it out.',
  'key fine': 'Discord: interactions come over HTTP, and the public key fits.',
  'key bad':
    'Discord: DISCORD_PUBLIC_KEY is not the application’s key, so every interaction is refused. Copy “Public Key” from the application’s page.',
  'key without address':
    'Discord: DISCORD_PUBLIC_KEY is set, but the application has no address for interactions, so they come over the gateway and nobody listens there. Set “Interactions Endpoint URL” on its page to your server’s address followed by {path}, or unset DISCORD_PUBLIC_KEY.',
  'address without key':
    'Discord: the application sends interactions to an address, but DISCORD_PUBLIC_KEY is not set, so none arrives. Set it, or clear “Interactions Endpoint URL” on the application’s page.',
  gateway: 'Discord: interactions come over the gateway.',
  'clock fine': 'Discord: this machine’s clock agrees to within a minute.',
  'clock bad':
    'Discord: this machine’s clock is {seconds} seconds {way}. Set it right (for instance with NTP), or reminders come at wrong times.',
  'no place': 'Discord: no place is tied yet. Type /here in the channel of a group or of the staff.',
  'not in server': 'Discord: the bot is not in the server of {place}. Invite it again: {invitation}',
  'no channel':
    'Discord: {place} is not there or hidden from the bot. Give it “View Channel” there, or use /here in another channel.',
  'place fine': 'Discord: in {place} the bot may do all that it needs.',
  lacks:
    'Discord: in {place} the bot lacks “{name}” ({why}). Without it, {without}. Give it to the bot’s role in that channel’s settings.',
  'everybody writes':
    'Discord: in {place} everybody can write past the bot, so the class’s talk is not moderated. Take “Send Messages” and “Send Messages in Threads” from @everyone in that channel’s settings; pupils write through the bot’s buttons.',
  'roles write':
    'Discord: in {place} these roles can write past the bot: {roles}. See that no pupil has one of them, or take “Send Messages” and “Send Messages in Threads” from it.',
  'only the bot writes': 'Discord: in {place} pupils reach the talk only through the bot.',
} as const;

/** A sentence about what Discord grants, its slots filled. */
export function checkWords(
  key: keyof typeof words,
  slots: Readonly<Record<string, string | number>> = {},
): string {
  return words[key].replace(/\{(\w+)\}/gu, (_, name: string) => String(slots[name] ?? ''));
}

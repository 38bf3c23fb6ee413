/** What staff are told about what Slack grants; plain words, each bad news with its remedy. */
const words = {
  'token fine': 'Slack: the token of workspace {team} is taken.',
  'token bad': 'Slack: the token of {whose} is not taken ({code}). Install the app anew{how}.',
  'by token': ' from its page at Slack, and set SLACK_BOT_TOKEN',
  'by page': ' at {path} of your server',
  'of the configuration': 'the configuration',
  'of workspace': 'workspace {tenant}',
  'none installed': 'Slack: no workspace has installed the app yet. Open {path} of your server in a browser.',
  locked:
    'Slack: the kept tokens can’t be opened with this TURNSTONE_KEY. Put the earlier key back, or let each workspace install the app anew at {path}.',
  'cannot ask': 'Slack: could not be asked ({code}). Look at the network{where}, then run doctor again.',
  where: ' and at SLACK_API',
  'slow down': 'Slack: asks to slow down. Wait a few minutes, then run doctor again.',
  'scopes fine': 'Slack: workspace {team} grants every permission of the manifest.',
  'scope lacks':
    'Slack: workspace {team} does not grant “{name}” ({why}). Without it, {without}. Install the app anew from “turnstone manifest”.',
  'scopes unknown':
    'Slack: which permissions workspace {team} grants can’t be seen. Compare the app’s page at Slack with “turnstone manifest”.',
  'socket fine': 'Slack: the token for the socket is taken.',
  'socket bad':
    'Slack: SLACK_APP_TOKEN is not taken ({code}). Make a new one with connections:write on the app’s page (Basic Information, App-Level Tokens).',
  'clock fine': 'Slack: this machine’s clock agrees to within a minute.',
  'clock bad':
    'Slack: this machine’s clock is {seconds} seconds {way}. Set it right (for instance with NTP): past five minutes every request of Slack is refused.',
  'no place': 'Slack: no channel is tied yet. Type /here in the channel of a group or of the staff.',
  'not installed':
    'Slack: {place} is in workspace {tenant}, which has not installed the app, or took it away. Install it there again, then use /here.',
  'not there':
    'Slack: {place} is not there, or is private and the bot is not in it. Invite it (/invite @Turnstone), or use /here in another channel.',
  archived: 'Slack: {place} is archived. Unarchive it, or use /here in another channel.',
  outside: 'Slack: the bot is not in {place}. Invite it there: /invite @Turnstone',
  'place fine': 'Slack: the bot is in {place}.',
  'place unknown':
    'Slack: whether the bot is in {place} and who may post there can’t be seen without {scope}. Look there: the bot must be among the members, and in Settings, Permissions only staff may post.',
  'everybody posts':
    'Slack: in {place} everybody can post past the bot, so the group’s talk is not moderated. In the channel’s Settings, Permissions let only staff post and reply in threads. Where your plan has no such setting, let the group practise in the room.',
  'everybody replies':
    'Slack: in {place} only some may post, but everybody can reply in threads, past the bot. In the channel’s Settings, Permissions take replies in threads away from everybody else.',
  'only some post':
    'Slack: in {place} only some may post and reply: {who}. See that no pupil is among them; the bot must be.',
} as const;

/** A sentence about what Slack grants, its slots filled. */
export function checkWords(
  key: keyof typeof words,
  slots: Readonly<Record<string, string | number>> = {},
): string {
  return words[key].replace(/\{(\w+)\}/gu, (_, name: string) => String(slots[name] ?? ''));
}

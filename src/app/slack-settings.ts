/** What is set for Slack. */
export interface SlackSettings {
  readonly botToken: string | null;
  readonly signingSecret: string | null;
  readonly appToken: string | null;
  readonly oauth: {
    readonly clientId: string;
    readonly clientSecret: string;
    readonly stateSecret: string;
  } | null;
  readonly api: string | null;
}

/** A setting's checked value, null where unset. */
type Get = (name: string) => string | null;

const oauthSettings = ['SLACK_CLIENT_ID', 'SLACK_CLIENT_SECRET', 'SLACK_STATE_SECRET'] as const;

/** What is missing of the settings that belong together, each with the others that are set. */
export function halfSet(get: Get): readonly string[] {
  const missing = oauthSettings.filter((name) => get(name) === null);
  if (missing.length === 0 || missing.length === oauthSettings.length) return [];
  const there = oauthSettings.filter((name) => !missing.includes(name)).join(' and ');
  return missing.map((name) => `${name}: expected to be set beside ${there}, got nothing`);
}

/** Slack as it is set: by one token, by what many workspaces need, or by both; null where by neither. */
export function slackOf(get: Get): SlackSettings | null {
  const botToken = get('SLACK_BOT_TOKEN');
  const [clientId, clientSecret, stateSecret] = oauthSettings.map(get);
  const oauth = clientId && clientSecret && stateSecret ? { clientId, clientSecret, stateSecret } : null;
  if (botToken === null && oauth === null) return null;
  return {
    botToken,
    signingSecret: get('SLACK_SIGNING_SECRET'),
    appToken: get('SLACK_APP_TOKEN'),
    oauth,
    api: get('SLACK_API'),
  };
}

/** Where Slack's requests arrive. */
export const slackPath = '/slack/events';

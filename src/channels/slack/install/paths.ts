/** Where a workspace begins to install the app. */
export const installPath = '/slack/install';
/** Where Slack sends the browser back to; the manifest names it. */
export const redirectPath = '/slack/oauth_redirect';

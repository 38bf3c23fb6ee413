import { say, type SlackWord } from './words.js';

const reasons: Readonly<Record<string, SlackWord>> = {
  channel_not_found: 'stuck gone',
  channel_type_not_supported: 'stuck gone',
  is_archived: 'stuck closed',
  not_in_channel: 'stuck outside',
  restricted_action: 'stuck outside',
  restricted_action_read_only_channel: 'stuck outside',
  token_revoked: 'stuck token',
  token_expired: 'stuck token',
  invalid_auth: 'stuck token',
  not_authed: 'stuck token',
  account_inactive: 'stuck token',
  org_login_required: 'stuck token',
  missing_scope: 'stuck scope',
  no_permission: 'stuck scope',
  not_allowed_token_type: 'stuck scope',
};

/** Words for staff by the code with which Slack refused a message. */
export function stuckWords(code: string): string {
  return say(reasons[code] ?? 'stuck other', { code: code.slice(0, 60) });
}

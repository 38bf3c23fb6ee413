import { createHmac, sign, type KeyObject } from 'node:crypto';
import { packMemo } from '../../src/channels/slack/press-code.js';
import { writeSubmitted } from '../../src/channels/discord/submitted-id.js';
import { application } from '../support/discord-stand-in.js';
import { childWords } from './child-words.js';
import type { Ready } from './line.js';
import { discordServer, slackTeam, type BenchPupil } from './school.js';

export const slackSecret = 'a signing secret of the measurement';

const ask = { kind: 'move', name: 'send-draft', args: { do: 'question', stop: '0' } } as const;

/** Which pupil sends the n-th post, pupils of all classes taking turns, and what it says. */
function nth(pupils: readonly BenchPupil[], segment: string, n: number): { pupil: BenchPupil; text: string } {
  const pupil = pupils[(n * 7) % pupils.length];
  if (!pupil) throw new Error('Cannot measure, expected pupils, got none');
  return { pupil, text: childWords('question', segment, n) };
}

/** A form with a question as Slack sends it, signed. */
export function slackRequest(pupils: readonly BenchPupil[], segment: string, n: number): Ready {
  const { pupil, text } = nth(pupils, segment, n);
  const payload = {
    type: 'view_submission',
    team: { id: slackTeam, domain: 'turnstone' },
    user: { id: pupil.slack, name: pupil.slack.toLowerCase(), team_id: slackTeam },
    api_app_id: 'A1',
    token: 'old',
    trigger_id: `trigger.${n}`,
    view: {
      id: `V${n}`,
      hash: `h${n}`,
      type: 'modal',
      callback_id: 'form',
      private_metadata: packMemo({ send: { by: 'form', action: ask } }, 3000),
      title: { type: 'plain_text', text: 'Ask a question' },
      submit: { type: 'plain_text', text: 'Send it' },
      blocks: [
        {
          type: 'input',
          block_id: 'f0:text',
          label: { type: 'plain_text', text: 'Your question' },
          element: { type: 'plain_text_input', action_id: 'a', multiline: true, max_length: 3000 },
        },
      ],
      state: { values: { 'f0:text': { a: { type: 'plain_text_input', value: text } } } },
    },
    response_urls: [],
  };
  const body = new URLSearchParams({ payload: JSON.stringify(payload) }).toString();
  const timestamp = String(Math.floor(Date.now() / 1000));
  const hash = createHmac('sha256', slackSecret).update(`v0:${timestamp}:${body}`).digest('hex');
  return {
    body,
    headers: {
      'content-type': 'application/x-www-form-urlencoded',
      'x-slack-request-timestamp': timestamp,
      'x-slack-signature': `v0=${hash}`,
    },
  };
}

/** A form with a question as Discord sends it. */
export function discordBody(pupils: readonly BenchPupil[], segment: string, n: number): string {
  const { pupil, text } = nth(pupils, segment, n);
  const id = String(1_000_000_000_000_000_000n + BigInt(n));
  const origin = { kind: 'look', name: 'step', args: { do: 'question' } } as const;
  const user = {
    id: pupil.discord,
    username: 'somebody',
    discriminator: '0',
    avatar: null,
    global_name: null,
  };
  return JSON.stringify({
    id,
    application_id: application,
    version: 1,
    type: 5,
    token: `token-${id}`,
    entitlements: [],
    locale: 'en-GB',
    authorizing_integration_owners: {},
    context: 0,
    attachment_size_limit: 1000,
    guild_id: discordServer,
    channel: { id: '5', type: 0 },
    channel_id: '5',
    member: { user, roles: [], permissions: '0', joined_at: '2026-01-01T00:00:00Z', flags: 0 },
    app_permissions: '3072',
    data: {
      custom_id: writeSubmitted({ opening: n.toString(36), page: 0, action: ask, origin }),
      components: [{ type: 18, id: 1, component: { type: 4, id: 2, custom_id: 'text', value: text } }],
    },
  });
}

/** The same, signed. */
export function discordRequest(body: string, key: KeyObject): Ready {
  const timestamp = String(Math.floor(Date.now() / 1000));
  const signature = sign(null, Buffer.from(timestamp + body), key).toString('hex');
  return {
    body,
    headers: {
      'content-type': 'application/json',
      'x-signature-ed25519': signature,
      'x-signature-timestamp': timestamp,
    },
  };
}

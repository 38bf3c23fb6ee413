import { webApi } from '@slack/bolt';
import type { WebClient } from '@slack/web-api';
import type { SlackOptions } from '../options.js';
import { clientOptions } from '../web.js';

/** How long one question may take, in milliseconds; two stand behind one another. */
const patience = 3500;

/** A client for questions that are asked once, and Slack's clock in milliseconds as of its last answer. */
export interface Ask {
  readonly client: WebClient;
  readonly clock: () => number | null;
}

/** Opens a client for questions with a token. */
export function openAsk(token: string, options: SlackOptions): Ask {
  let at: number | null = null;
  const client = new webApi.WebClient(token, {
    ...clientOptions(options),
    timeout: patience,
    fetch: async (input, init) => {
      const response = await fetch(input, init);
      const date = Date.parse(response.headers.get('date') ?? '');
      if (!Number.isNaN(date)) at = date;
      return response;
    },
  });
  return { client, clock: () => at };
}

import type { App } from '@slack/bolt';
import type { SlackLog } from './options.js';
import type { Verifier } from './verify.js';

type Receiver = NonNullable<NonNullable<ConstructorParameters<typeof App>[0]>['receiver']>;
type ReceiverEvent = Parameters<App['processEvent']>[0];

/** After this long without an answer Slack has given up on a request. */
const patience = 3000;

/** A receiver that takes requests from the server that is there already. */
export interface GuestReceiver extends Receiver {
  readonly handle: (request: Request) => Promise<Response>;
}

function parsed(body: string, type: string | null): Record<string, unknown> | null {
  try {
    if (type?.includes('json')) return JSON.parse(body) as Record<string, unknown>;
    const form = new URLSearchParams(body);
    const payload = form.get('payload');
    return payload === null ? Object.fromEntries(form) : (JSON.parse(payload) as Record<string, unknown>);
  } catch {
    return null;
  }
}

function answer(body: unknown): Response {
  if (body === undefined || body === null || body === '') return new Response('', { status: 200 });
  if (typeof body === 'string') return new Response(body, { status: 200 });
  return Response.json(body);
}

/** Opens the receiver: verifies, answers Slack's own checks, and hands everything else to the app. A request is answered when it is acknowledged; where that fails, with 500, so that Slack shows that nothing was done. */
export function guestReceiver(verify: Verifier, log: SlackLog): GuestReceiver {
  let app: App | null = null;

  const dispatch = (body: Record<string, unknown>, headers: Headers): Promise<Response> =>
    new Promise((settle) => {
      const late = setTimeout(() => settle(new Response('', { status: 404 })), patience);
      const finish = (response: Response): void => {
        clearTimeout(late);
        settle(response);
      };
      const retry = headers.get('x-slack-retry-num');
      const event: ReceiverEvent = {
        body,
        ...(retry === null ? {} : { retryNum: Number(retry) }),
        ack: (response: unknown) => {
          finish(answer(response));
          return Promise.resolve();
        },
      };
      if (!app) return finish(new Response('', { status: 503 }));
      app.processEvent(event).catch((why: unknown) => {
        log.error({ code: why instanceof Error ? why.name : 'unknown' }, 'a request of Slack failed');
        finish(new Response('', { status: 500 }));
      });
    });

  return {
    init(opened: App) {
      app = opened;
    },
    start: () => Promise.resolve(),
    stop: () => Promise.resolve(),
    async handle(request) {
      const text = await request.text();
      const refused = verify({
        timestamp: request.headers.get('x-slack-request-timestamp'),
        signature: request.headers.get('x-slack-signature'),
        body: text,
      });
      if (refused !== null) {
        log.warn({ refused }, 'a request that says it is Slack’s was refused');
        return new Response('', { status: 401 });
      }
      const body = parsed(text, request.headers.get('content-type'));
      if (body === null) return new Response('', { status: 400 });
      if (body['ssl_check'] !== undefined) return new Response('', { status: 200 });
      if (body['type'] === 'url_verification') return Response.json({ challenge: body['challenge'] });
      return dispatch(body, request.headers);
    },
  };
}

import type { Channel, House } from '../../../shared/channel.js';
import { checkSlack } from './check/check.js';
import { openSending } from './deliver.js';
import type { Desk } from './desk/desk.js';
import { hear, type Ears } from './hear.js';
import { openInFlight } from '../../../shared/in-flight.js';
import { installGuests } from './install/install.js';
import { openWorkspaces } from './install/workspaces.js';
import { checkOptions, mostInFlight, type SlackOptions } from './options.js';
import { guestReceiver, type GuestReceiver } from './receiver.js';
import { slackPath } from './slack-path.js';
import { openSocket, type Socket } from './socket.js';
import { openVerifier } from './verify.js';

type Handler = (request: Request) => Promise<Response>;

/**
 * The practice on Slack: commands, buttons and forms come in, answers go back privately as their acknowledgement, and what
 * is told goes to the channels that are bound. Updates arrive at `slackPath` of the server that is there already, or over
 * a socket where there is an app token. Nothing has to be reached for it to be ready.
 */
export function slackChannel(
  options: SlackOptions,
): Channel & { readonly guests?: Readonly<Record<string, Handler>> } {
  checkOptions(options);
  const { signingSecret, appToken, oauth, log, now } = options;
  const workspaces = openWorkspaces(options);
  const sending = openSending(workspaces, log, now);
  const receiver: GuestReceiver | null =
    signingSecret === null ? null : guestReceiver(openVerifier(signingSecret, now), log);
  const socket: Socket | null = appToken === null ? null : openSocket(appToken, options);
  const events = receiver ? { [slackPath]: (request: Request) => receiver.handle(request) } : {};
  const install = oauth === null ? {} : installGuests(oauth, options, workspaces);

  const earsOf = (house: House): Ears => ({
    options,
    workspaces,
    bounded: openInFlight(options.mostInFlight ?? mostInFlight),
    async deskOf(tenant): Promise<Desk> {
      const token = await workspaces.tokenOf(tenant);
      const client = await workspaces.clientOf(tenant);
      if (token === null || client === null) throw new Error('no token for this workspace');
      return { house, client, token, options };
    },
  });

  return {
    name: 'slack',
    ...(receiver || oauth ? { guests: { ...events, ...install } } : {}),
    start(house: House) {
      const ears = earsOf(house);
      if (receiver) hear(receiver, ears);
      if (socket) {
        hear(socket.receiver, ears);
        socket.start();
      }
      return Promise.resolve();
    },
    deliver: (delivery) => sending.deliver(delivery),
    stands: (delivery) => sending.stands(delivery),
    check: (places, at) => checkSlack(options, workspaces, places, at),
    async stop() {
      await socket?.stop();
    },
  };
}

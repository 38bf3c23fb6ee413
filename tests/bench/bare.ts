/**
 * The least that a bot can do, as a process of its own: it takes what the platform sends, by the platform's own library,
 * and answers at once. Prints its port when it is ready. Run with "slack", "discord" or "discord over HTTP".
 */
import { App } from '@slack/bolt';
import { Client, Events, GatewayIntentBits, MessageFlags } from 'discord.js';
import { createPublicKey, verify } from 'node:crypto';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';

const [, , what = '', api = '', secret = ''] = process.argv;

function ready(port: number): void {
  process.stdout.write(`${JSON.stringify({ port })}\n`);
}

/** Bolt's own receiver checks the signature, and the form is acknowledged without a look at it. */
async function slack(): Promise<void> {
  const app = new App({
    token: 'xoxb-bare',
    signingSecret: secret,
    clientOptions: { slackApiUrl: `${api}/api/` },
  });
  app.view(/.*/u, ({ ack }) => ack());
  const server = await app.start({ port: 0, host: '127.0.0.1' });
  ready((server.address() as AddressInfo).port);
}

async function discord(): Promise<void> {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds],
    rest: { api: `${api}/api`, version: '10' },
  });
  client.on(Events.Error, () => undefined);
  client.on(Events.InteractionCreate, (interaction) => {
    if (interaction.isModalSubmit())
      void interaction.reply({ content: 'Kept.', flags: MessageFlags.Ephemeral });
  });
  client.once(Events.ClientReady, () => ready(0));
  await client.login(secret);
}

/** The library has no receiver of its own for this, so Node's server and its check of signatures stand for one. */
async function discordOverHttp(): Promise<void> {
  const key = createPublicKey({
    key: Buffer.concat([Buffer.from('302a300506032b6570032100', 'hex'), Buffer.from(secret, 'hex')]),
    format: 'der',
    type: 'spki',
  });
  const answer = JSON.stringify({ type: 4, data: { content: 'Kept.', flags: 64 } });
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => {
      const body = Buffer.concat(chunks);
      const time = Buffer.from(String(request.headers['x-signature-timestamp']));
      const signature = Buffer.from(String(request.headers['x-signature-ed25519']), 'hex');
      const taken = verify(null, Buffer.concat([time, body]), key, signature);
      JSON.parse(body.toString('utf8'));
      response.writeHead(taken ? 200 : 401, { 'content-type': 'application/json' }).end(taken ? answer : '');
    });
  });
  await new Promise<void>((settle) => server.listen(0, '127.0.0.1', settle));
  ready((server.address() as AddressInfo).port);
}

if (what === 'slack') await slack();
else if (what === 'discord') await discord();
else await discordOverHttp();

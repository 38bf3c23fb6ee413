import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { turnstone } from '../../support/command-line.js';
import { discordPerson, until } from '../../support/discord-person.js';
import { seenText } from '../../support/discord-payloads.js';
import {
  application,
  discordToken,
  openDiscordStandIn,
  server,
  type DiscordStandIn,
} from '../../support/discord-stand-in.js';
import { serve } from '../../support/served.js';

describe('The program, started against a Discord on loopback', () => {
  let standIn: DiscordStandIn;
  let data: string;
  let env: Readonly<Record<string, string>>;
  beforeAll(async () => {
    data = await mkdtemp(join(tmpdir(), 'turnstone-discord-'));
    standIn = await openDiscordStandIn();
    standIn.openRoom('101');
    standIn.openRoom('102');
    env = {
      DISCORD_TOKEN: discordToken,
      DISCORD_API: standIn.url,
      TURNSTONE_DATA: data,
      TURNSTONE_PORT: '0',
    };
  });
  afterAll(async () => {
    expect(standIn.breaches).toEqual([]);
    await standIn.stop();
    await rm(data, { recursive: true });
  });
  const codeIn = (link: string): string => new URL(link).pathname.replace('/in/', '');

  it(
    'ties its demo class, talks there, and doctor says how the places stand',
    { timeout: 60_000 },
    async () => {
      const served = await serve(data, 0, env);
      await until(() => standIn.commands.has(server));
      const tutor = discordPerson(standIn, '11', '101');
      const joined = await tutor.command('join', '', { code: codeIn(served.ready.links.tutor) });
      expect(joined.text).toContain('You are in.');
      const { choices } = await tutor.suggest('here', 'group', 'group', '');
      const asked = await tutor.command('here', 'group', { group: choices[0]?.value });
      await tutor.pressLabel(asked, 'Yes, all are old enough');
      await discordPerson(standIn, '11', '102').command('here', 'staff');
      await tutor.command('practice', 'pause', { group: choices[0]?.value });
      await tutor.command('practice', 'resume', { group: choices[0]?.value });
      await until(() => standIn.room('101').length > 0);
      expect(standIn.room('101').map(seenText).join()).not.toBe('');
      expect(await served.stop()).toBe(0);

      standIn.everybodyWrites(true);
      standIn.forbid('102', 'read', true);
      const { code, out } = await turnstone(['doctor'], { env });
      expect(out).toContain(`fine  Discord: the token belongs to application ${application}.`);
      expect(out).toMatch(/mend {2}Discord: in #room-101 .*everybody can write past the bot/u);
      expect(out).toMatch(/mend {2}Discord: in #room-102 .*lacks “Read Message History”/u);
      expect(out).not.toContain(discordToken);
      expect(code).toBe(1);
    },
  );

  it('doctor says so, and soon, where Discord answers nothing', { timeout: 30_000 }, async () => {
    standIn.trouble('GET', /./u, 'hang', 100);
    const { out } = await turnstone(['doctor'], { env });
    expect(out).toMatch(/mend {2}Discord: could not be asked \(no answer\).*DISCORD_API/u);
  });
});

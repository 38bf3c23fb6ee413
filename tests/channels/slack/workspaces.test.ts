import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Channel } from '../../../shared/channel.js';
import { seal, unseal } from '../../../src/app/seal.js';
import { installPath, redirectPath } from '../../../src/channels/slack/install/paths.js';
import type { Vault } from '../../../src/channels/slack/install/workspaces.js';
import { slackPath } from '../../../src/channels/slack/slack-path.js';
import { messageOf, proseOf } from '../../contracts/channel-messages.js';
import { openFakeHouse } from '../../support/fake-house.js';
import { slackOver } from '../../support/open-slack.js';
import { SlackStandIn } from '../../support/slack-stand-in.js';

type Guests = Readonly<Record<string, (request: Request) => Promise<Response>>>;
const base = 'https://school.example';

describe('Slack for many workspaces', () => {
  let slack: SlackStandIn;
  let channel: Channel & { readonly guests?: Guests };
  let kept: string | null = null;
  let key = 'a key for tests only, long enough to seal';
  let now = Date.UTC(2026, 9, 6, 9);
  const lines: string[] = [];
  const write = (about: unknown, words: string): void => void lines.push(`${JSON.stringify(about)} ${words}`);
  const vault: Vault = {
    read: () => Promise.resolve(kept === null ? null : unseal(key, 'tests', kept)),
    write: (text) => Promise.resolve(void (kept = seal(key, 'tests', text))),
  };
  const open = async (): Promise<void> => {
    channel = slackOver(
      slack,
      { debug: write, warn: write, error: write },
      {
        botToken: null,
        oauth: { clientId: 'c1', clientSecret: 'client secret', stateSecret: 'state secret', base, vault },
        now: () => now,
      },
    );
    const events = channel.guests?.[slackPath];
    if (events) slack.sendTo(events);
    await channel.start(openFakeHouse());
  };
  beforeEach(async () => {
    kept = null;
    key = 'a key for tests only, long enough to seal';
    lines.length = 0;
    slack = await SlackStandIn.open(() => now);
    slack.room('C1');
    await open();
  });
  afterEach(async () => {
    expect(lines.join('\n')).not.toMatch(/xoxb|client secret|state secret/u);
    await channel.stop();
    await slack.stop();
  });

  const get = async (path: string, cookie = ''): Promise<Response> => {
    const guest = channel.guests?.[new URL(path, base).pathname];
    if (!guest) throw new Error('nobody answers there');
    return guest(new Request(new URL(path, base), { headers: { cookie } }));
  };
  /** Begins in a browser: its cookie, and where Slack is asked. */
  const begin = async (): Promise<{ readonly cookie: string; readonly asked: URL }> => {
    const page = await get(installPath);
    const [, href = ''] = /href="([^"]+)"/u.exec(await page.text()) ?? [];
    const cookie = page.headers.get('set-cookie') ?? '';
    expect(cookie).toMatch(/HttpOnly; SameSite=Lax; Secure$/u);
    return { cookie: cookie.split(';')[0] ?? '', asked: new URL(href.replaceAll('&amp;', '&')) };
  };
  const agree = (code: string, tenant: string, more: object = {}): void => {
    slack.workspaces.set(`xoxb-${tenant}`, tenant);
    const team = { id: tenant, name: `Workspace ${tenant}` };
    const scope = slack.scopes().join(',');
    slack.codes.set(code, { ok: true, access_token: `xoxb-${tenant}`, team, scope, ...more });
  };
  const install = async (tenant: string): Promise<void> => {
    const { cookie, asked } = await begin();
    agree(`code-${tenant}`, tenant);
    const state = asked.searchParams.get('state') ?? '';
    const done = await get(`${redirectPath}?code=code-${tenant}&state=${state}`, cookie);
    expect(await done.text()).toContain(`Turnstone is in Workspace ${tenant} now`);
  };
  const leave = (tenant: string, event: object, at = now): Promise<unknown> =>
    slack.update('events_api', {
      type: 'event_callback',
      team_id: tenant,
      api_app_id: 'A1',
      event_id: slack.next('Ev'),
      event_time: Math.floor(at / 1000),
      event,
    });
  const say = async (tenant: string, text = 'The tide is out.') =>
    channel.deliver?.({
      tenant,
      room: 'C1',
      telling: { do: 'say', key: text, message: messageOf([proseOf(text)]) },
      before: null,
      nonce: slack.next(`${tenant}-`).padEnd(25, '0'),
    });
  const tokensOf = (method: string): readonly (string | undefined)[] =>
    slack.calls.flatMap((call, at) => (call.method === method ? [slack.tokens[at]] : []));

  it('asks Slack for the permissions of the manifest, and to send the browser back', async () => {
    const { asked } = await begin();
    expect(asked.href.startsWith(`${slack.base}/oauth/v2/authorize?`)).toBe(true);
    expect(Object.fromEntries(asked.searchParams)).toMatchObject({
      client_id: 'c1',
      scope: slack.scopes().join(','),
      redirect_uri: `${base}${redirectPath}`,
    });
  });

  it('speaks in each workspace with its own token, also after a restart, and keeps none in the open', async () => {
    await install('T1');
    await install('T2');
    expect(slack.called('oauth.v2.access')[0]).toMatchObject({ redirect_uri: `${base}${redirectPath}` });
    expect(kept).not.toContain('xoxb');
    await say('T1');
    await say('T2');
    await channel.stop();
    await open();
    await say('T1');
    expect(tokensOf('chat.postMessage')).toEqual(['xoxb-T1', 'xoxb-T2', 'xoxb-T1']);
  });

  it('answers people of a workspace with its own token, and those of a strange one not at all', async () => {
    await install('T1');
    const known = slack.user('UWREN');
    await known.command('/passages add');
    expect(known.note).toContain('I don’t know you here yet');
    const stranger = await slack.update('slash_commands', {
      command: '/turn',
      team_id: 'T9',
      user_id: 'U1',
      channel_id: 'C1',
      text: '',
      trigger_id: 't',
      response_url: slack.responseUrl(() => undefined),
    });
    expect(stranger).toEqual({ status: 500, body: null });
  });

  it.each([
    ['used twice', (state: string, cookie: string) => [state, cookie] as const, true],
    ['of another browser', (state: string) => [state, ''] as const, false],
    ['that we never made', (_: string, cookie: string) => ['made-up', cookie] as const, false],
    ['left out', (_: string, cookie: string) => ['', cookie] as const, false],
  ])('refuses a state %s', async (_, bend, usedBefore) => {
    const { cookie, asked } = await begin();
    const [state, proof] = bend(asked.searchParams.get('state') ?? '', cookie);
    agree('one', 'T1');
    if (usedBefore) await get(`${redirectPath}?code=one&state=${state}`, proof);
    const asks = slack.called('oauth.v2.access').length;
    agree('two', 'T2');
    const refused = await get(`${redirectPath}?code=two&state=${state}`, proof);
    expect(refused.status).toBe(400);
    expect(await refused.text()).toContain('Please begin again');
    expect(slack.called('oauth.v2.access')).toHaveLength(asks);
  });

  it('refuses a state after ten minutes', async () => {
    const { cookie, asked } = await begin();
    now += 601_000;
    const late = await get(`${redirectPath}?code=x&state=${asked.searchParams.get('state')}`, cookie);
    expect(late.status).toBe(400);
  });

  it('keeps nothing where somebody says no, Slack gives no token, or a whole organisation is meant', async () => {
    const back = async (query: string): Promise<string> => {
      const { cookie, asked } = await begin();
      const page = await get(`${redirectPath}?${query}&state=${asked.searchParams.get('state')}`, cookie);
      return page.text();
    };
    expect(await back('error=access_denied')).toContain('Nothing was installed');
    expect(await back('code=unknown')).toContain('Slack did not give a token');
    agree('wide', 'E1', { is_enterprise_install: true });
    expect(await back('code=wide')).toContain('not in a whole organisation');
    expect(kept).toBeNull();
  });

  it('writes nothing of a workspace’s name as markup', async () => {
    const { cookie, asked } = await begin();
    agree('one', 'T1', { team: { id: 'T1', name: '<script>alert(1)</script>' } });
    const page = await get(`${redirectPath}?code=one&state=${asked.searchParams.get('state')}`, cookie);
    const text = await page.text();
    expect(text).toContain('&lt;script&gt;');
    expect(text).not.toContain('<script');
  });

  it.each([
    ['takes the app away', { type: 'app_uninstalled' }],
    ['revokes the bot’s token', { type: 'tokens_revoked', tokens: { bot: ['UBOT'] } }],
  ])('lets a workspace’s token go where it %s, and says how to come back', async (_, event) => {
    await install('T1');
    await install('T2');
    await leave('T1', event);
    expect(await say('T1')).toEqual({ stuck: expect.stringMatching(/\/slack\/install/u) as string });
    expect(await say('T2')).toMatchObject({ sent: expect.any(String) as string });
    expect(unseal(key, 'tests', kept ?? '')).not.toContain('xoxb-T1');
    await install('T1');
    expect(await say('T1')).toMatchObject({ sent: expect.any(String) as string });
  });

  it('keeps a token where only a person’s was revoked, or where the news is older than the installation', async () => {
    await install('T1');
    await leave('T1', { type: 'tokens_revoked', tokens: { oauth: ['U1'] } });
    await leave('T1', { type: 'app_uninstalled' }, now - 60_000);
    expect(await say('T1')).toMatchObject({ sent: expect.any(String) as string });
  });

  it('is looked at workspace by workspace', async () => {
    const none = (await channel.check?.([], now)) ?? [];
    expect(none[0]?.words).toMatch(/no workspace has installed the app yet.*\/slack\/install/u);
    await install('T1');
    await install('T2');
    slack.revoked.add('xoxb-T2');
    const found = (await channel.check?.([], Date.now())) ?? [];
    expect(found.filter(({ fine }) => !fine).map(({ words }) => words)).toEqual([
      expect.stringMatching(/the token of workspace T2 is not taken.*\/slack\/install/u),
    ]);
  });

  it('says so where the key is another, and goes on', async () => {
    await install('T1');
    await channel.stop();
    key = 'another key for tests, also long enough to seal';
    await open();
    const found = (await channel.check?.([], now)) ?? [];
    expect(found[0]?.words).toMatch(/can’t be opened with this TURNSTONE_KEY/u);
    expect(await say('T1')).toHaveProperty('stuck');
    await install('T1');
    expect(await say('T1')).toHaveProperty('sent');
  });
});

describe('a sealed text', () => {
  const key = 'a key for tests only, long enough to seal';
  it('opens with its key and name only, whole only, and never looks the same twice', () => {
    const sealed = seal(key, 'a', 'the tide is out');
    expect(unseal(key, 'a', sealed)).toBe('the tide is out');
    expect(seal(key, 'a', 'the tide is out')).not.toBe(sealed);
    expect(() => unseal(`${key}!`, 'a', sealed)).toThrow('expected the key that sealed it');
    expect(() => unseal(key, 'b', sealed)).toThrow('expected the key that sealed it');
    expect(() => unseal(key, 'a', `${sealed.slice(0, -2)}AA`)).toThrow('expected the key that sealed it');
    expect(() => unseal(key, 'a', '')).toThrow('expected the key that sealed it');
  });
});

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openFakeHouse } from '../../support/fake-house.js';
import { slackOver } from '../../support/open-slack.js';
import { SlackStandIn } from '../../support/slack-stand-in.js';

const own = { appToken: 'xapp-of-the-tests', signingSecret: null } as const;

describe('Updates over a socket', () => {
  let slack: SlackStandIn;
  let channel: ReturnType<typeof slackOver>;
  const lines: string[] = [];
  const log = (about: unknown, words: string): void => void lines.push(`${JSON.stringify(about)} ${words}`);
  const house = openFakeHouse();
  const answers = async (): Promise<string> => {
    const one = slack.user('UWREN');
    await one.command('/turn');
    return one.note;
  };

  beforeEach(async () => {
    lines.length = 0;
    slack = await SlackStandIn.open();
    channel = slackOver(slack, { debug: log, warn: log, error: log }, own);
  });
  afterEach(async () => {
    await channel.stop();
    expect(lines.join('\n')).not.toContain('xapp');
    await slack.stop();
  });
  const open = (): Promise<void> => expect.poll(() => slack.sockets, { timeout: 20_000 }).toBe(1);

  it('needs no port: the channel has no guests', () => {
    expect(channel.guests).toBeUndefined();
  });

  it('goes on after Slack asks to come again, and after the line breaks', async () => {
    await channel.start(house);
    await open();
    expect(await answers()).toContain('/join');
    for (const how of ['refresh', 'break'] as const) {
      const before = slack.called('apps.connections.open').length;
      slack.dropSockets(how);
      await expect
        .poll(() => slack.called('apps.connections.open').length, { timeout: 20_000 })
        .toBeGreaterThan(before);
      await open();
      expect(await answers()).toContain('/join');
    }
  });

  it('is ready while Slack can’t be reached, refuses, or is in trouble, and connects when it can', async () => {
    slack.fail(
      'apps.connections.open',
      'reset',
      { status: 500 },
      { status: 429, headers: { 'retry-after': '1' } },
      { error: 'invalid_auth' },
    );
    const before = Date.now();
    await channel.start(house);
    expect(Date.now() - before).toBeLessThan(500);
    await open();
    expect(await answers()).toContain('/join');
    expect(lines.filter((line) => line.includes('could not be opened')).length).toBeGreaterThanOrEqual(3);
  });

  it('drops what isn’t Slack’s way of speaking, and goes on', async () => {
    await channel.start(house);
    await open();
    for (const text of [
      'nonsense',
      '{}',
      '{"type":"events_api"}',
      '{"type":"interactive"}',
      'null',
      '[]',
      '{"type":"slash_commands","payload":{}}',
    ])
      slack.babble(text);
    expect(await answers()).toContain('/join');
  });
});

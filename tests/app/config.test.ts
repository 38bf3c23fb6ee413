import { describe, expect, it } from 'vitest';
import { readConfig } from '../../src/app/config.js';

describe('The configuration', () => {
  it('listens on loopback with the embedded store by default', () => {
    expect(readConfig({})).toEqual({
      data: './data',
      host: '127.0.0.1',
      port: 8080,
      url: null,
      trustProxy: false,
      key: null,
      log: 'info',
      discord: null,
      slack: null,
    });
  });

  it('names every wrong value at once, with what was expected', () => {
    const read = (): unknown =>
      readConfig({ TURNSTONE_PORT: '99999', TURNSTONE_LOG: 'loud', TURNSTONE_URL: 'ftp://x' });
    expect(read).toThrow(/TURNSTONE_PORT: expected a number from 0 to 65535, got "99999"/);
    expect(read).toThrow(/TURNSTONE_LOG: expected silent, error, warn, info or debug, got "loud"/);
    expect(read).toThrow(/TURNSTONE_URL: expected an address/);
  });

  it('never says a secret', () => {
    expect(() => readConfig({ TURNSTONE_KEY: 'short-secret' })).toThrow(
      /^(?!.*short-secret).*TURNSTONE_KEY/s,
    );
  });

  it('takes Slack by one token, or by the three settings for many workspaces, none of which is any good alone', () => {
    const many = {
      SLACK_CLIENT_ID: 'c1',
      SLACK_CLIENT_SECRET: 'secret one',
      SLACK_STATE_SECRET: 'secret two',
    };
    expect(readConfig({ SLACK_BOT_TOKEN: 'xoxb' }).slack).toMatchObject({ botToken: 'xoxb', oauth: null });
    expect(readConfig(many).slack).toMatchObject({
      botToken: null,
      oauth: { clientId: 'c1', clientSecret: 'secret one', stateSecret: 'secret two' },
    });
    for (const name of Object.keys(many)) {
      const read = (): unknown => readConfig({ ...many, [name]: '' });
      expect(read).toThrow(new RegExp(`${name}: expected to be set beside .*, got nothing`, 'u'));
      expect(read).not.toThrow(/secret (?:one|two)/u);
    }
  });

  it('refuses to listen beyond loopback without the address that links are built on', () => {
    expect(() => readConfig({ TURNSTONE_HOST: '0.0.0.0' })).toThrow(
      /TURNSTONE_URL: expected the school's address/,
    );
    expect(readConfig({ TURNSTONE_HOST: '0.0.0.0', TURNSTONE_URL: 'https://reading.example' }).host).toBe(
      '0.0.0.0',
    );
  });
});

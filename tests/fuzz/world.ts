import { createHmac } from 'node:crypto';
import { serializeSigned } from 'hono/utils/cookie';
import type { Hono } from 'hono';
import { slashCommands } from '../../commands/all.js';
import type { Who } from '../../shared/channel.js';
import { parseCommand } from '../../src/app/typed-command.js';
import { buildApp } from '../../src/channels/room/app.js';
import { loadAssets } from '../../src/channels/room/assets.js';
import { openFeedTail } from '../../src/channels/room/feed-tail.js';
import { formToken } from '../../src/channels/room/http/form-token.js';
import { openStreams } from '../../src/channels/room/streams.js';
import { makeJudges } from '../../src/app/judges.js';
import type { Judges } from '../../shared/judgements.js';
import { doorPictures } from '../../src/pictures/door-pictures.js';
import { memoryStore } from '../../src/store/memory-store.js';
import {
  openPlayed,
  playClass,
  playedKey,
  pupilNames,
  type Played,
  type PlayedClass,
} from '../support/played-class.js';
import { must } from './entrance.js';

/** A word that stands only in what is another class's. */
export const otherMark = 'Xanthemark';

/** A house with two classes, and the room over it without a socket. */
export interface World {
  readonly played: Played;
  readonly one: PlayedClass;
  readonly app: Hono;
  readonly people: readonly Insider[];
  request(path: string, init?: RequestInit): Promise<Response>;
  /** Whatever somebody of the first class gets to see must hold nothing of the other's. */
  check(seen: string): void;
  /** Ids that mean something here, those of the other class too. */
  ids(): Promise<readonly string[]>;
  close(): Promise<void>;
}

/** Somebody of the first class with their way into the room. */
export interface Insider {
  readonly name: string;
  readonly who: Who;
  readonly cookie: string;
  readonly token: string;
}

let judges: Judges | null = null;

async function comeIn({ store, clock }: Played, who: Who, name: string): Promise<Insider> {
  const id = `session-of-${name}-${'x'.repeat(12)}`;
  const hash = createHmac('sha256', playedKey).update(id).digest('base64url');
  const times = { startedAt: clock.now(), seenAt: clock.now(), expiresAt: Number.MAX_SAFE_INTEGER };
  await store.saveSession({ id: hash, classId: who.classId, person: who.person, ...times });
  const cookie = await serializeSigned('session', `${id}.${clock.now().toString(36)}.1`, playedKey);
  return { name, who, cookie: cookie.split(';')[0] ?? '', token: formToken(playedKey, id) };
}

async function writeOther(other: PlayedClass, played: Played): Promise<void> {
  await other.act('Wren', { type: 'visit' });
  await other.act('Wren', { type: 'send-draft', do: 'question', text: `Why is ${otherMark} here so early?` });
  const { posts } = await played.house.classes.load(other.classId);
  for (const { id } of Object.values(posts)) await other.act('Wren', { type: 'post-draft', post: id });
}

/** Opens a fresh world; judges are made once, since they read the lexicon. */
export async function openWorld(): Promise<World> {
  judges ??= makeJudges();
  const played = await openPlayed((now) => memoryStore({ now }), judges);
  const { house, store } = played;
  const one = await playClass(played);
  const other = await playClass(played, ` ${otherMark}`);
  await writeOther(other, played);
  for (const name of pupilNames) await one.act(name, { type: 'visit' });
  const { people: others, posts, groups } = await house.classes.load(other.classId);
  const othersIds = [others, posts, groups].flatMap((table) => Object.keys(table));
  const newest = openFeedTail(house);
  const streams = openStreams(house, newest);
  const quiet = (): void => {};
  const app = buildApp(
    house,
    {
      host: '127.0.0.1',
      port: 0,
      key: playedKey,
      secureCookies: false,
      trustProxy: false,
      log: { debug: quiet, warn: quiet, error: quiet },
      slashCommands,
      readCommand: parseCommand,
      pictures: doorPictures,
    },
    loadAssets(doorPictures),
    newest,
    streams,
  );
  const people: Insider[] = [];
  for (const [name, person] of Object.entries(one.people))
    people.push(await comeIn(played, { classId: one.classId, person }, name));
  const socket = { remoteAddress: '127.0.0.1', remotePort: 1, remoteFamily: 'IPv4' };
  return {
    played,
    one,
    app,
    people,
    request: async (path, init) => app.request(`http://127.0.0.1${path}`, init, { incoming: { socket } }),
    check(seen) {
      must(!seen.includes(otherMark), 'something of another class was shown');
    },
    async ids() {
      const state = await house.classes.load(one.classId);
      const tables = [state.people, state.groups, state.shelf, state.posts, state.alarms];
      return [...tables.flatMap((table) => Object.keys(table)), one.classId, other.classId, ...othersIds];
    },
    async close() {
      streams.endAll();
      await store.close();
    },
  };
}

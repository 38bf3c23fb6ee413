import { slashCommands } from '../../commands/all.js';
import { parseCommand } from '../../src/app/typed-command.js';
import type { RoomOptions } from '../../src/channels/room/options.js';
import { doorPictures } from '../../src/pictures/door-pictures.js';
import { roomChannel } from '../../src/channels/room/room.js';
import { openFakeHouse, type FakeHouse } from './fake-house.js';

export const roomKey = 'a key for tests only, long enough to sign';

/** What was logged, as one text, so that a test can search it. */
export interface OpenRoom {
  readonly url: string;
  readonly house: FakeHouse;
  readonly logged: () => string;
  stop(): Promise<void>;
}

/** Opens the room over a fake house on a free port of this machine. */
export async function openRoom(options: Partial<RoomOptions> = {}): Promise<OpenRoom> {
  const house = openFakeHouse();
  const lines: string[] = [];
  const write = (about: Readonly<Record<string, unknown>>, words: string): void => {
    lines.push(`${JSON.stringify(about)} ${words}`);
  };
  const room = roomChannel({
    host: '127.0.0.1',
    port: 0,
    key: roomKey,
    secureCookies: false,
    trustProxy: false,
    log: { debug: write, warn: write, error: write },
    slashCommands,
    readCommand: parseCommand,
    pictures: doorPictures,
    ...options,
  });
  await room.start(house);
  return { url: room.url(), house, logged: () => lines.join('\n'), stop: () => room.stop() };
}

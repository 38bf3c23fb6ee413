import { parseArgs } from 'node:util';
import { slashCommands } from '../../../commands/all.js';
import { asId, type ClassId } from '../../../shared/ids.js';
import { roomChannel } from '../../channels/room/room.js';
import { answerBackups } from '../backup-request.js';
import { calendar } from '../calendar.js';
import { doorPictures } from '../../pictures/door-pictures.js';
import { openChannels } from '../channels.js';
import { demoLinks, makeDemoClass, type DemoLinks } from '../demo-class.js';
import type { Io, Verb } from '../io.js';
import { configFor, openSchool, type School } from '../school.js';
import { startTicker } from '../ticker.js';
import { parseCommand } from '../typed-command.js';

async function linksOf(school: School, base: string): Promise<DemoLinks | null> {
  const known = await school.store.getNote('demo class');
  if (known !== null) return demoLinks(school, asId<ClassId>(known), base);
  if ((await school.store.classes()).length > 0) return null;
  return demoLinks(school, await makeDemoClass(school), base);
}

async function announce(io: Io, json: boolean, url: string, links: DemoLinks | null): Promise<void> {
  if (json) {
    const { tutor, teacher, pupils } = links ?? { tutor: null, teacher: null, pupils: [] };
    await io.out(
      `${JSON.stringify({ type: 'ready', url, links: { tutor, teacher, pupils, administrator: links?.administrator ?? null } })}\n`,
    );
    return;
  }
  const lines = [`Turnstone is ready at ${url}`];
  if (links) {
    lines.push(
      '',
      'An invented class to try things on:',
      `  tutor          ${links.tutor}`,
      `  teacher        ${links.teacher}`,
      `  administrator  ${links.administrator}`,
      ...links.pupils.map((link, at) => `  pupil ${at + 1}        ${link}`),
      '',
      'Make a real class in a folder of its own:',
      '  TURNSTONE_DATA=./school npm run -s turnstone -- make-class --name "Our class" --zone Europe/London --nickname Heron',
      '  TURNSTONE_DATA=./school npm start',
    );
  }
  await io.out(`${lines.join('\n')}\n`);
}

/** Serves until SIGTERM or SIGINT. */
export const verb: Verb = {
  name: 'start',
  usage: 'start [--json]',
  words: 'serves the room, and Discord and Slack where their tokens are set',
  async run(args, io) {
    const { values } = parseArgs({ args: [...args], options: { json: { type: 'boolean' } } });
    const config = configFor(io);
    let url = config.url ?? '';
    const school = await openSchool(config, () => url);
    const clock = { now: () => Date.now() };
    const channels = await openChannels(config, school, clock);
    const room = roomChannel({
      guests: channels.guests,
      host: config.host,
      port: config.port,
      key: school.key,
      secureCookies: config.url?.startsWith('https:') ?? false,
      trustProxy: config.trustProxy,
      log: school.log,
      slashCommands,
      readCommand: parseCommand,
      pictures: doorPictures,
    });
    const stopped = new Promise<void>((settle) => {
      process.once('SIGTERM', () => settle());
      process.once('SIGINT', () => settle());
    });
    try {
      await room.start(school.house);
      url = config.url?.replace(/\/$/, '') ?? room.url();
      const links = await linksOf(school, url);
      const backups = answerBackups(config.data, school.store, school.log);
      const ticker = startTicker({ ...school, calendar, clock });
      await channels.start();
      await announce(io, values.json ?? false, url, links);
      await stopped;
      await ticker.stop();
      await backups.stop();
    } finally {
      await channels.stop();
      await room.stop();
      await school.store.close();
    }
    return 0;
  },
};

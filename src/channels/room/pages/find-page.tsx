import { lookAtPath } from '../paths.js';
import { commandPage, commandsPage } from './commands.js';
import { lookPage, talkPage } from './look.js';
import { homes } from './menu.js';
import type { Ask, Page } from './page.js';
import { pupilPage } from './pupil.js';

/** The page behind an address, for whoever is signed in; null where there is none. Only addresses that are known here are pages. */
export async function findPage(ask: Ask): Promise<Page | null> {
  const { url, visitor } = ask;
  const { role } = visitor.profile;
  if (url.pathname === '/') {
    if (role === 'pupil') return pupilPage(ask);
    // What was typed before a refusal must not get lost on a way round.
    const home = new URL(homes[role], url);
    return ask.kept ? findPage({ ...ask, url: home }) : { title: '', content: <></>, instead: homes[role] };
  }
  if (url.pathname === '/talk') return talkPage(ask);
  if (url.pathname === '/commands') return commandsPage(ask);
  const command = /^\/commands\/([a-z-]{1,32})\/([a-z-]{1,32})$/.exec(url.pathname);
  if (command) return commandPage(ask, command[1] ?? '', command[2] ?? '');
  const look = lookAtPath(url);
  return look === null ? null : lookPage(ask, look.look, look.fields);
}

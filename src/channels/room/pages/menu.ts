import { mayLook, type LookName } from '../../../../shared/looks.js';
import { staffRoles, type Role } from '../../../../shared/roles.js';
import type { RoomWord } from '../words.js';

interface MenuItem {
  readonly path: string;
  readonly word: RoomWord;
  readonly who: readonly Role[];
}

const item = (path: string, word: RoomWord, look: LookName): MenuItem => ({ path, word, who: mayLook[look] });

const pupilMenu: readonly MenuItem[] = [
  item('/', 'my page', 'turn'),
  item('/talk', 'talk', 'turn'),
  item('/for-you', 'for you', 'for-you'),
  item('/words', 'words', 'words'),
  item('/where', 'where', 'where-are-we'),
  { path: '/page', word: 'how it looks', who: ['pupil'] },
];

const staffMenu: readonly MenuItem[] = [
  item('/waiting', 'waiting', 'waiting'),
  item('/digest', 'digest', 'digest'),
  item('/passages', 'passages', 'passages'),
  item('/roster', 'roster', 'roster'),
  { path: '/slips', word: 'slips', who: mayLook.roster },
  item('/at-the-table', 'table', 'at-the-table'),
  item('/morning-list', 'today', 'morning-list'),
  item('/talk', 'talk', 'waiting'),
  item('/where', 'where', 'where-are-we'),
  item('/words', 'words', 'words'),
  item('/alarms', 'alarms', 'alarms'),
  item('/settings', 'settings', 'settings'),
  { path: '/commands', word: 'commands', who: staffRoles },
];

/** The pages that a role may go to, in the order of use. */
export function menuOf(role: Role): readonly MenuItem[] {
  return (role === 'pupil' ? pupilMenu : staffMenu).filter(({ who }) => who.includes(role));
}

/** Where each role begins. */
export const homes: Readonly<Record<Role, string>> = {
  pupil: '/',
  tutor: '/waiting',
  teacher: '/waiting',
  administrator: '/roster',
  'safeguarding lead': '/alarms',
  'safeguarding deputy': '/alarms',
};

import { Fault } from './fault.js';
import { namedAdults, roles, staffRoles, type Role } from './roles.js';
import { readShape, type Shape, type UnionOf } from './shape.js';
import { doings } from './strategies.js';

/** Every look by name: what changes nothing, and its shape. */
export const lookShapes = {
  /** A pupil's page: the one next thing, the segment, the talk. */
  turn: {},
  /** The form of a step; `start` is a stem that was tapped and stands in the form already. */
  step: { do: doings, 'question?': 'post', 'to?': 'post', 'post?': 'post', 'start?': 'line' },
  /** What came for one person since the last visit, drafts included. */
  'for-you': {},
  'where-are-we': { 'group?': 'group' },
  passages: {},
  preview: { passage: 'passage' },
  'preview-text': { text: 'page', 'title?': 'line', 'grade?': 'number' },
  /** What waits for an adult, held first. */
  waiting: {},
  alarms: {},
  'alarm-words': { alarm: 'alarm' },
  digest: { 'group?': 'group' },
  words: { 'group?': 'group' },
  roster: {},
  settings: {},
  'morning-list': {},
  'at-the-table': { 'group?': 'group' },
  post: { post: 'post' },
  help: {},
} as const satisfies Record<string, Shape>;

export type Look = UnionOf<typeof lookShapes>;
export type LookName = Look['type'];

/** Which roles may take which look. */
export const mayLook: Readonly<Record<LookName, readonly Role[]>> = {
  turn: ['pupil'],
  step: ['pupil', 'tutor', 'teacher'],
  'for-you': ['pupil'],
  'where-are-we': ['pupil', 'tutor', 'teacher'],
  passages: ['tutor', 'teacher'],
  preview: ['tutor', 'teacher'],
  'preview-text': ['tutor', 'teacher'],
  waiting: ['tutor', 'teacher'],
  alarms: ['tutor', 'teacher', ...namedAdults],
  /** The deputy sees the words only of an alarm that went on to them. */
  'alarm-words': namedAdults,
  digest: ['tutor', 'teacher'],
  words: ['pupil', 'tutor', 'teacher'],
  roster: ['tutor', 'teacher', 'administrator'],
  settings: ['tutor', 'teacher', 'administrator'],
  'morning-list': ['tutor', 'teacher'],
  'at-the-table': ['tutor', 'teacher'],
  post: ['tutor', 'teacher'],
  help: roles,
};

/** Roles that have a staff side in the room. */
export const staffSide: readonly Role[] = staffRoles;

/** Whether a name is a look's. */
export function isLookName(name: string): name is LookName {
  return Object.hasOwn(lookShapes, name);
}

/** Reads a look from flat strings; throws `Fault` with what was expected. */
export function readLook(name: string, raw: Readonly<Record<string, string | undefined>>): Look {
  if (!isLookName(name)) {
    throw new Fault(
      'bad input',
      'Cannot show that, expected a known look',
      'Go back to the page and try again.',
    );
  }
  return { type: name, ...readShape(lookShapes[name], raw) } as Look;
}

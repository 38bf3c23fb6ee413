import type { ClassId, PersonId } from './ids.js';
import { namedAdults, roles, type Role } from './roles.js';
import { readShape, type Shape, type UnionOf } from './shape.js';
import {
  doings,
  fixUps,
  givens,
  helps,
  registers,
  relationships,
  strategies,
  type Given,
} from './strategies.js';
import type { Instant } from './time.js';
import { Fault } from './fault.js';

/** How much is looked at by an adult before it is public. */
export const moderations = ['hold everything', 'hold what is doubtful', 'publish'] as const;

/** Whether a class's line between literal and inferential moves with its tutor's checks. */
export const questionLines = ['follow the tutor', 'as measured'] as const;

/** What can be set for a class; each value is written as a line and checked when set. */
export const settingNames = [
  'moderation',
  'sessions',
  'school days',
  'open hours',
  'holidays',
  'register',
  'zone',
  'order',
  'alarm text',
  'alarm number',
  'term ends',
  'words kept',
  'longest kept',
  'year ends',
  'alarm words kept',
  'idle minutes',
  'alarm minutes',
  'picture secret',
  'staff passphrase',
  'question line',
] as const;
export type SettingName = (typeof settingNames)[number];

/** What an asker says of an answer; "helpful" is the leader's mark. */
export const responses = ['that is what I meant', 'look again here', 'helpful'] as const;

/** What a pupil says became of a prediction. */
export const outcomes = ['came true', 'partly', 'changed'] as const;

/** Every move by name, with the shape of what it carries. */
export const moveShapes = {
  // The class and its people.
  'make-class': { name: 'line', zone: 'line', 'register?': registers, nickname: 'line' },
  'change-setting': { setting: settingNames, value: 'line' },
  'open-strategy': { strategy: strategies, 'group?': 'group', 'pupil?': 'person' },
  'close-strategy': { strategy: strategies, 'group?': 'group', 'pupil?': 'person' },
  'make-group': { name: 'line' },
  'split-group': { group: 'group' },
  'add-person': { nickname: 'line', role: roles, 'group?': 'group', 'register?': registers },
  'rename-person': { person: 'person', nickname: 'line' },
  'move-pupil': { person: 'person', group: 'group' },
  'remove-person': { person: 'person' },
  'erase-person': { person: 'person' },
  'reset-second-key': { person: 'person' },
  'set-goal': { person: 'person', strategy: strategies },
  'set-help': { person: 'person', strategy: strategies, help: helps },
  // The shelf.
  'add-passage': { 'title?': 'line', text: 'page', 'grade?': 'number' },
  'withdraw-passage': { passage: 'passage' },
  'write-gist': { passage: 'passage', stop: 'number', text: 'text' },
  'write-spare-question': { passage: 'passage', stop: 'number', text: 'text' },
  'set-passage': { passage: 'passage', group: 'group' },
  'unset-passage': { passage: 'passage', group: 'group' },
  // The practice, by staff.
  'start-practice': { group: 'group' },
  'pause-practice': { group: 'group' },
  'resume-practice': { group: 'group' },
  'close-segment': { group: 'group' },
  'undo-close': { group: 'group' },
  'extend-segment': { group: 'group', days: 'number' },
  'read-live': { group: 'group', 'to?': 'number' },
  'end-practice': { group: 'group' },
  'name-leader': { group: 'group', person: 'person' },
  'skip-leader': { group: 'group' },
  'pair-leader': { group: 'group', person: 'person' },
  'note-live': {
    person: 'person',
    do: strategies,
    level: 'number',
    given: givens,
    'help?': helps,
    'text?': 'text',
    'stop?': 'number',
  },
  'note-led': { person: 'person' },
  // What waits for an adult.
  release: { posts: 'posts' },
  'send-back': { post: 'post', note: 'text' },
  remove: { post: 'post' },
  overrule: { post: 'post', level: 'number', 'as?': ['literal', 'inferential'], 'note?': 'text' },
  'confirm-meaning': { post: 'post', 'meaning?': 'text' },
  'acknowledge-alarm': { alarm: 'alarm' },
  'try-alarm': {},
  // The pupil.
  visit: {},
  'pass-prediction': {},
  'send-draft': {
    do: doings,
    text: 'text',
    'stop?': 'number',
    'word?': 'line',
    'offset?': 'number',
    'question?': 'post',
    'to?': 'post',
    'place?': 'place',
    'fixUp?': fixUps,
  },
  'improve-draft': { post: 'post', text: 'text', 'place?': 'place', 'fixUp?': fixUps },
  'post-draft': { post: 'post' },
  'leave-draft': { post: 'post' },
  'take-back': { post: 'post' },
  'say-where': { post: 'post', where: relationships },
  respond: { post: 'post', response: responses, 'place?': 'place' },
  'check-prediction': { post: 'post', outcome: outcomes, 'place?': 'place' },
  'quiet-pass': {},
  'take-lead': {},
  'ask-help': { do: doings },
  'tell-grown-up': { 'text?': 'text' },
  'review-word': { word: 'line', known: 'flag' },
  // The clock.
  'time-passed': {},
} as const satisfies Record<string, Shape>;

/** What somebody, or the clock, does to a class. */
export type Move = UnionOf<typeof moveShapes>;
export type MoveName = Move['type'];
export type MoveOf<N extends MoveName> = Extract<Move, { readonly type: N }>;

/** Who acts: a person of the class, the clock, or the founder of a class that isn't there yet. */
export type Actor = PersonId | 'clock' | 'founder';

/** A move with who made it, when, and a seed for the lot; `given` says how a text came, typed by default. */
export interface Act<M extends Move = Move> {
  readonly classId: ClassId;
  readonly by: Actor;
  readonly at: Instant;
  readonly seed: number;
  readonly given: Given;
  readonly move: M;
}

const tutoring = ['tutor', 'teacher'] as const satisfies readonly Role[];
const running = ['tutor', 'teacher', 'administrator'] as const satisfies readonly Role[];
const pupils = ['pupil'] as const satisfies readonly Role[];
const leading = ['pupil', 'tutor', 'teacher'] as const satisfies readonly Role[];

/** Which roles may make which move; nobody inherits from anybody. */
export const mayMove: Readonly<Record<MoveName, readonly Role[]>> = {
  'make-class': [],
  'change-setting': running,
  'open-strategy': tutoring,
  'close-strategy': tutoring,
  'make-group': running,
  'split-group': running,
  'add-person': running,
  'rename-person': running,
  'move-pupil': running,
  'remove-person': running,
  'erase-person': ['tutor', 'administrator'],
  'reset-second-key': running,
  'set-goal': tutoring,
  'set-help': tutoring,
  'add-passage': tutoring,
  'withdraw-passage': tutoring,
  'write-gist': tutoring,
  'write-spare-question': tutoring,
  'set-passage': tutoring,
  'unset-passage': tutoring,
  'start-practice': tutoring,
  'pause-practice': tutoring,
  'resume-practice': tutoring,
  'close-segment': tutoring,
  'undo-close': tutoring,
  'extend-segment': tutoring,
  'read-live': tutoring,
  'end-practice': tutoring,
  'name-leader': tutoring,
  'skip-leader': tutoring,
  'pair-leader': tutoring,
  'note-live': tutoring,
  'note-led': tutoring,
  release: tutoring,
  'send-back': tutoring,
  remove: tutoring,
  overrule: tutoring,
  'confirm-meaning': tutoring,
  'acknowledge-alarm': ['tutor', 'teacher', ...namedAdults],
  'try-alarm': [...running, 'safeguarding lead'],
  visit: roles,
  'pass-prediction': pupils,
  'send-draft': leading,
  'improve-draft': leading,
  'post-draft': leading,
  'leave-draft': leading,
  'take-back': leading,
  'say-where': pupils,
  respond: leading,
  'check-prediction': pupils,
  'quiet-pass': pupils,
  'take-lead': leading,
  'ask-help': pupils,
  'tell-grown-up': pupils,
  'review-word': pupils,
  'time-passed': [],
};

/** Whether a name is a move's. */
export function isMoveName(name: string): name is MoveName {
  return Object.hasOwn(moveShapes, name);
}

/** Reads a move from flat strings; throws `Fault` with what was expected. */
export function readMove(name: string, raw: Readonly<Record<string, string | undefined>>): Move {
  if (!isMoveName(name)) {
    throw new Fault(
      'bad input',
      'Cannot do that, expected a known move',
      'Go back to the page and try again.',
    );
  }
  return { type: name, ...readShape(moveShapes[name], raw) } as Move;
}

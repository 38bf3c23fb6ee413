import { Fault } from '../../shared/fault.js';
import type { PersonId } from '../../shared/ids.js';
import type { Block, Message } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import type { Register } from '../../shared/strategies.js';
import type { Instant } from '../../shared/time.js';
import { fill } from '../coaching/catalogue.js';
import { looksWords } from '../coaching/looks-words.js';
import { staffClassWords } from '../coaching/staff-class-words.js';
import { staffLooksWords } from '../coaching/staff-looks-words.js';
import { registerOf } from '../practice/lookup.js';
import type { ClassState, Person } from '../practice/state.js';
import type { LookPort } from './port.js';

/** Who looks at what, and when; handed to every look. */
export interface Asked {
  readonly port: LookPort;
  readonly state: ClassState;
  readonly by: Person;
  readonly register: Register;
  readonly at: Instant;
}

/** All words for staff; each page has its own part of the catalogue. */
const staffWords = { ...staffClassWords, ...staffLooksWords };

export type LooksKey = keyof typeof looksWords;
export type StaffKey = keyof typeof staffWords;
type Slots = Readonly<Record<string, string | number>>;

/** Gathers what a look needs of who asks. */
export function askedBy(port: LookPort, state: ClassState, by: Person, at: Instant): Asked {
  return { port, state, by, register: registerOf(state, by.id), at };
}

/** A sentence or label for children, in the words of whoever looks. */
export function say(asked: Pick<Asked, 'register'>, key: LooksKey, slots: Slots = {}): string {
  return fill(looksWords[key], slots, asked.register);
}

/** A sentence or label for staff. */
export function staff(key: StaffKey, slots: Slots = {}): string {
  return fill(staffWords[key], slots);
}

/** What somebody is called, also when the nickname is gone. */
export function nameOf(state: ClassState, person: PersonId | null): string {
  const found = person === null ? undefined : state.people[person];
  return (found === undefined ? null : wordsOf(found.nickname)) ?? fill(looksWords.somebody);
}

/** An answer to whoever looks. */
export function answer(asked: Asked, summary: string, blocks: readonly Block[]): Message {
  return { audience: { to: 'person', person: asked.by.id }, summary, blocks };
}

/** Finds something of the class by its id; throws `Fault` where it isn't there. */
export function found<T>(thing: T | undefined, what: string): T {
  if (thing !== undefined) return thing;
  throw new Fault(
    'not found',
    `Cannot show that, expected ${what} that is there`,
    'Go back to the page and pick it again.',
  );
}

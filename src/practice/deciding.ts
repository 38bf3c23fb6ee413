import type { ClassEvent } from '../../shared/events.js';
import { Fault, type FaultCode } from '../../shared/fault.js';
import type { GroupId, Id, PersonId } from '../../shared/ids.js';
import type { Judges } from '../../shared/judgements.js';
import type { Act, Actor } from '../../shared/moves.js';
import type { Calendar, Instant } from '../../shared/time.js';
import { chanceFrom, type Chance } from './chance.js';
import { evolve } from './evolve.js';
import type { SchoolTime } from './hours.js';
import type { ClassState, Group, Person } from './state.js';

/** What deciding needs from outside; both pure. */
export interface DecideTools {
  readonly judges: Judges;
  readonly calendar: Calendar;
}

type Bare<E> = E extends unknown ? Omit<E, 'at' | 'by'> : never;
/** An event without when and by whom, which are the act's. */
export type EventBody = Bare<ClassEvent>;

/** A decision in the making: the events so far and the state that they lead to, so that each rule sees what the one before it did. */
export interface Deciding {
  readonly act: Act;
  readonly tools: DecideTools;
  readonly chance: Chance;
  /** Whose events they are: the clock's for what was due before the act. */
  by: Actor;
  /** When the class was last known to be awake: the event before this decision. */
  readonly awakeAt: Instant;
  state: ClassState;
  readonly events: ClassEvent[];
}

/** Begins a decision. */
export function deciding(state: ClassState, act: Act, tools: DecideTools): Deciding {
  return { act, tools, chance: chanceFrom(act.seed), by: act.by, awakeAt: state.lastAt, state, events: [] };
}

/** Adds an event and follows it. */
export function add(d: Deciding, body: EventBody): void {
  const event = { ...body, at: d.act.at, by: d.by } as ClassEvent;
  d.events.push(event);
  d.state = evolve(d.state, event);
}

/** An id for what the next event brings in: a letter and that event's number in the class's stream. */
export function mint<I extends Id<string>>(d: Deciding, letter: string): I {
  return `${letter}${d.state.version + 1}` as I;
}

/** The class's school time as its settings now are. */
export function timeOf(d: Deciding): SchoolTime {
  return { settings: d.state.settings, calendar: d.tools.calendar };
}

/** Stops a decision: nothing happens, and who acted is told why. */
export function refuse(code: FaultCode, message: string, remedy: string): never {
  throw new Fault(code, message, remedy);
}

/** The person who acts; the clock and a founder may not come here. */
export function actorOf(d: Deciding): Person {
  const { by } = d.act;
  const person = by === 'clock' || by === 'founder' ? undefined : d.state.people[by];
  return person ?? refuse('not allowed', 'Cannot do that, expected somebody of this class', 'Sign in again.');
}

/** A group of the class. */
export function groupAt(d: Deciding, id: GroupId): Group {
  return (
    d.state.groups[id] ??
    refuse('not found', 'Cannot do that, expected a group of this class, got another', 'Pick a group again.')
  );
}

/** A person of the class who hasn't left. */
export function personAt(d: Deciding, id: PersonId): Person {
  const person = d.state.people[id];
  if (person && !person.removed) return person;
  return refuse(
    'not found',
    'Cannot do that, expected somebody of this class, got another',
    'Pick a person again.',
  );
}

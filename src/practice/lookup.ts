import type { GroupId, PassageId, PersonId } from '../../shared/ids.js';
import { staffRoles, type Role } from '../../shared/roles.js';
import type { Register, Strategy } from '../../shared/strategies.js';
import type { ClassState, Group, Person, Post, Practice } from './state.js';

/** A practice that waits or runs, whether paused or not; null where there is none. */
export type Running = Extract<Practice, { phase: 'waiting' | 'open' }>;

/** What runs or waits below a pause. */
export function runningOf(practice: Practice): Running | null {
  switch (practice.phase) {
    case 'none':
      return null;
    case 'waiting':
    case 'open':
      return practice;
    case 'paused':
      return practice.was;
    default:
      return practice satisfies never;
  }
}

/** What a table by words has for a word; a word that names what every object has ("constructor") is found only where it was put. */
export function under<T>(table: Readonly<Record<string, T>> | undefined, word: string): T | undefined {
  return table !== undefined && Object.hasOwn(table, word) ? table[word] : undefined;
}

/** Pupils of a group who are still in the class, in the order in which they came. */
export function pupilsOf(state: ClassState, group: GroupId): readonly Person[] {
  return Object.values(state.people).filter(
    (person) => person.role === 'pupil' && !person.removed && person.group === group,
  );
}

/** Everybody of one role who is still in the class. */
export function peopleOfRole(state: ClassState, role: Role): readonly Person[] {
  return Object.values(state.people).filter((person) => person.role === role && !person.removed);
}

/** Whether somebody is an adult of the class. */
export function isStaff(state: ClassState, person: PersonId | null): boolean {
  const role = person === null ? undefined : state.people[person]?.role;
  return staffRoles.some((staff) => staff === role);
}

/** An adult who may lead: the first tutor, else teacher, of the class. */
export function leadingAdult(state: ClassState): PersonId | null {
  const adults = Object.values(state.people).filter(({ removed }) => !removed);
  const found = adults.find(({ role }) => role === 'tutor') ?? adults.find(({ role }) => role === 'teacher');
  return found?.id ?? null;
}

/** The words in which somebody is spoken to. */
export function registerOf(state: ClassState, person: PersonId | null): Register {
  return (person === null ? null : state.people[person]?.register) ?? state.settings.register;
}

/** Strategies that a pupil is asked for: open for the group and not closed for the pupil. */
export function openFor(state: ClassState, person: PersonId): readonly Strategy[] {
  const who = state.people[person];
  const group = who?.group ? state.groups[who.group] : undefined;
  return state.settings.order.filter(
    (strategy) => group?.open.includes(strategy) && !who?.closed.includes(strategy),
  );
}

/** The one strategy on which feedback is given: the goal that staff set, else the first open one. */
export function goalOf(state: ClassState, person: PersonId): Strategy | null {
  return state.people[person]?.goal ?? openFor(state, person)[0] ?? null;
}

/** Posts of a group on a passage, oldest first. */
export function postsOfPassage(state: ClassState, group: GroupId, passage: PassageId): readonly Post[] {
  return (state.postsOf[`${group}/${passage}`] ?? []).flatMap((id) => {
    const post = state.posts[id];
    return post ? [post] : [];
  });
}

/** Posts of a group on one segment, oldest first. */
export function postsOn(
  state: ClassState,
  group: GroupId,
  passage: PassageId,
  stop: number,
): readonly Post[] {
  return postsOfPassage(state, group, passage).filter((post) => post.stop === stop);
}

/** Whether a post is sent: public, with staff, or waiting for an adult, in which case its author counts as done. */
export function isSent({ stage }: Post): boolean {
  return stage.stage === 'public' || stage.stage === 'held';
}

/** Whether the group may see a post. */
export function isShown({ stage }: Post): boolean {
  return stage.stage === 'public' && stage.to === 'group';
}

/** How many segments a passage has. */
export function segmentsOf(state: ClassState, passage: PassageId): number {
  return state.shelf[passage]?.reading.segments.length ?? 0;
}

/** The text of a segment; the title for the card before the first (-1). */
export function segmentText(state: ClassState, passage: PassageId, stop: number): string {
  const reading = state.shelf[passage]?.reading;
  return (stop < 0 ? reading?.title : reading?.segments[stop]?.text) ?? '';
}

/** Groups in the order in which they were made. */
export function groupsOf(state: ClassState): readonly Group[] {
  return Object.values(state.groups);
}

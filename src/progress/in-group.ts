import type { EvidenceRow } from '../../shared/evidence.js';
import type { GroupId, PassageId } from '../../shared/ids.js';
import type { ClassState, Group, Person, Post, Practice } from '../practice/state.js';

/** The pupils of a group, or of the whole class for null, in the order of the roster. */
export function pupilsIn(state: ClassState, group: GroupId | null): readonly Person[] {
  return Object.values(state.people).filter(
    (person) => person.role === 'pupil' && !person.removed && (group === null || person.group === group),
  );
}

/** One group, or all of them for null. */
export function groupsIn(state: ClassState, group: GroupId | null): readonly Group[] {
  return Object.values(state.groups).filter((one) => group === null || one.id === group);
}

/** Posts of a group that are public or wait for an adult, oldest first. */
export function sentIn(state: ClassState, group: GroupId | null): readonly Post[] {
  return Object.values(state.posts)
    .filter((post) => group === null || post.group === group)
    .filter((post) => post.stage.stage === 'public' || post.stage.stage === 'held')
    .toSorted((a, b) => a.at - b.at);
}

/** Rows of pupils who are in the group now: who moves takes the evidence along. */
export function rowsIn(
  state: ClassState,
  group: GroupId | null,
  rows: readonly EvidenceRow[],
): readonly EvidenceRow[] {
  const here = new Set(pupilsIn(state, group).map((person) => person.id));
  return rows.filter((row) => here.has(row.person)).toSorted((a, b) => a.at - b.at);
}

/** Where a practice stands on its passage: `closed` segments are behind it; null where nothing runs. */
export function standing(
  practice: Practice,
): { readonly passage: PassageId; readonly closed: number } | null {
  switch (practice.phase) {
    case 'none':
      return null;
    case 'waiting':
      return { passage: practice.passage, closed: practice.nextStop };
    case 'open':
      return { passage: practice.passage, closed: practice.segment.stop };
    case 'paused':
      return standing(practice.was);
    default:
      return practice satisfies never;
  }
}

/** The passage that a group talks about now or talked about last. */
export function latestPassage(group: Group): PassageId | null {
  return standing(group.practice)?.passage ?? group.finished.at(-1)?.passage ?? null;
}

import type { GroupId } from '../../shared/ids.js';
import { groupsOf } from '../practice/lookup.js';
import type { Group } from '../practice/state.js';
import { found, type Asked } from './asked.js';

/** The groups that a look is about: a pupil's own, the one that staff name, or all of them. */
export function groupsAsked(asked: Asked, group: GroupId | undefined): readonly Group[] {
  if (asked.by.role === 'pupil') {
    const own = asked.by.group === null ? undefined : asked.state.groups[asked.by.group];
    return own === undefined ? [] : [own];
  }
  if (group === undefined) return groupsOf(asked.state);
  return [found(asked.state.groups[group], 'a group')];
}

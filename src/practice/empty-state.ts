import type { ClassId } from '../../shared/ids.js';
import { settingDefaults } from './settings.js';
import type { ClassState } from './state.js';

/** A class that isn't made yet: version 0, nobody in it. */
export function emptyState(classId: ClassId): ClassState {
  return {
    id: classId,
    version: 0,
    made: false,
    lastAt: 0,
    name: '',
    settings: settingDefaults,
    people: {},
    groups: {},
    shelf: {},
    posts: {},
    alarms: {},
    trials: {},
    line: { shift: 0, movedAt: 0 },
    reviews: {},
    reviewSteps: {},
    meanings: {},
    postsOf: {},
    pending: [],
  };
}

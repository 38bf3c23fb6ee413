import type { GroupId } from '../../shared/ids.js';
import { passAlarms } from './decide-alarms.js';
import { add, type Deciding } from './deciding.js';
import { heldOf } from './evolve-posts.js';
import { sendPost } from './send-post.js';
import type { ClassState } from './state.js';

/** Drafts that send themselves, reminders about what waits, alarms that go to the deputy. */
export function passPosts(d: Deciding): void {
  for (const id of d.state.pending) {
    const post = d.state.posts[id];
    if (post?.stage.stage !== 'draft' || post.stage.postsItselfAt === null) continue;
    if (post.stage.postsItselfAt > d.act.at) continue;
    const gone = post.person === null || d.state.people[post.person]?.removed !== false;
    if (gone) add(d, { type: 'draft-left', post: id });
    else sendPost(d, post, 'by itself');
  }
  for (const group of Object.keys(d.state.groups) as GroupId[]) remindStaff(d, group);
  passAlarms(d);
}

/** One reminder for all that waits: where both the tutor's and the deputy's are due, the deputy's. */
function remindStaff(d: Deciding, group: GroupId): void {
  if (isDeputyDue(d.state, group, d.act.at)) {
    add(d, { type: 'staff-reminded', group, of: 'held, deputy' });
  } else if (isTutorDue(d.state, group, d.act.at)) {
    add(d, { type: 'staff-reminded', group, of: 'held' });
  }
}

function isTutorDue(state: ClassState, group: GroupId, at: number): boolean {
  return heldOf(state, group).some(
    ({ stage }) => stage.stage === 'held' && stage.reminded === 'no' && stage.times.remindAt <= at,
  );
}

function isDeputyDue(state: ClassState, group: GroupId, at: number): boolean {
  return heldOf(state, group).some(
    ({ stage }) => stage.stage === 'held' && stage.reminded !== 'deputy' && stage.times.deputyAt <= at,
  );
}

import type { Look } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import { runningOf, segmentsOf } from '../practice/lookup.js';
import type { Group } from '../practice/state.js';
import { standing } from '../progress/in-group.js';
import { answer, nameOf, say, type Asked } from './asked.js';
import { choice, choices, heading, look, prose } from './blocks.js';
import { groupsAsked } from './groups-asked.js';
import { whereForStaff } from './where-staff.js';

function pupilLines(asked: Asked, group: Group | undefined): readonly string[] {
  const running = group === undefined ? null : runningOf(group.practice);
  const at = group === undefined ? null : standing(group.practice);
  if (running === null || at === null) return [say(asked, 'no text yet')];
  const many = segmentsOf(asked.state, at.passage);
  const lines = [
    asked.state.shelf[at.passage]?.reading.title ?? '',
    say(asked, 'all read', { n: at.closed, many }),
  ];
  if (group?.practice.phase === 'paused') return [...lines, say(asked, 'paused')];
  if (running.phase === 'waiting') {
    const { opensAt, opensOn } = running;
    const opens =
      opensOn === null ? say(asked, 'opens later') : say(asked, 'opens', { when: asked.port.when(opensAt) });
    return [...lines, opens];
  }
  const { leader, times } = running.segment;
  return [
    ...lines,
    ...(leader === null ? [] : [say(asked, 'leads', { leader: nameOf(asked.state, leader) })]),
    say(asked, 'open until', { when: asked.port.when(times.closesAt) }),
  ];
}

/** Where the group stands: to children the part, the leader and a day; to staff who has done what, and the controls. */
export function whereAreWe(
  asked: Asked,
  { group }: Extract<Look, { type: 'where-are-we' }>,
): readonly Message[] {
  const groups = groupsAsked(asked, group);
  if (asked.by.role !== 'pupil') return groups.map((one) => whereForStaff(asked, one));
  const lines = pupilLines(asked, groups[0]);
  return [
    answer(asked, say(asked, 'where are we'), [
      heading(say(asked, 'where are we')),
      ...lines.map(prose),
      ...choices(null, [choice(say(asked, 'back'), look('turn'))]),
    ]),
  ];
}

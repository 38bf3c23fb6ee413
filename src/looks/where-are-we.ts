import type { Look } from '../../shared/looks.js';
import type { Block, Choice, Message } from '../../shared/messages.js';
import { pupilsOf, postsOn, runningOf, segmentsOf } from '../practice/lookup.js';
import type { Group, Person, Practice } from '../practice/state.js';
import { standing } from '../progress/in-group.js';
import { doingWords } from '../progress/doing-words.js';
import { answer, nameOf, say, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, list, look, move, pick, prose, typed } from './blocks.js';
import { groupsAsked } from './groups-asked.js';

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
    return [...lines, say(asked, 'opens', { when: asked.port.when(running.opensAt) })];
  }
  const { leader, times } = running.segment;
  return [
    ...lines,
    ...(leader === null ? [] : [say(asked, 'leads', { leader: nameOf(asked.state, leader) })]),
    say(asked, 'open until', { when: asked.port.when(times.closesAt) }),
  ];
}

/** What staff read of where a practice stands, in one line. */
export function phaseLine(asked: Asked, practice: Practice): string {
  const when = asked.port.when;
  switch (practice.phase) {
    case 'none':
      return staff('phase none');
    case 'waiting':
      return staff('phase waiting', { part: practice.nextStop + 1, when: when(practice.opensAt) });
    case 'open': {
      const { stop, leader, times } = practice.segment;
      const slots = { part: stop + 1, when: when(times.closesAt) };
      return leader === null
        ? staff('phase open', slots)
        : staff('phase open led', { ...slots, leader: nameOf(asked.state, leader) });
    }
    case 'paused':
      return staff(`phase paused ${practice.why}`, { when: when(practice.since) });
    default:
      return practice satisfies never;
  }
}

function pupilLine(asked: Asked, group: Group, pupil: Person): string {
  const running = runningOf(group.practice);
  const who = nameOf(asked.state, pupil.id);
  if (running?.phase !== 'open') return pupil.away ? staff('pupil away', { who }) : who;
  const done = postsOn(asked.state, group.id, running.passage, running.segment.stop)
    .filter(
      (post) => post.person === pupil.id && (post.stage.stage === 'public' || post.stage.stage === 'held'),
    )
    .map((post) => doingWords(post.do));
  if (done.length > 0) return staff('pupil did', { who, what: done.join(', ') });
  return staff(
    pupil.away ? 'pupil away' : running.segment.seen.includes(pupil.id) ? 'pupil seen' : 'pupil unseen',
    {
      who,
    },
  );
}

function controls({ id: group, practice, beforeClose }: Group): readonly Choice[] {
  const args = { group };
  const make = (key: Parameters<typeof staff>[0], name: Parameters<typeof move>[0]): Choice =>
    choice(staff(key), move(name, args));
  const undo = beforeClose === null ? [] : [make('undo close', 'undo-close')];
  switch (practice.phase) {
    case 'none':
      return [make('start', 'start-practice'), ...undo];
    case 'paused':
      return [make('resume', 'resume-practice'), make('end practice', 'end-practice')];
    case 'waiting':
      return [
        make('read live', 'read-live'),
        make('pause', 'pause-practice'),
        ...undo,
        make('end practice', 'end-practice'),
      ];
    case 'open':
      return [
        make('close segment', 'close-segment'),
        make('read live', 'read-live'),
        make('skip leader', 'skip-leader'),
        make('pause', 'pause-practice'),
        ...undo,
        make('end practice', 'end-practice'),
      ];
    default:
      return practice satisfies never;
  }
}

function openForms(asked: Asked, group: Group, pupils: readonly Person[]): readonly Block[] {
  if (group.practice.phase !== 'open') return [];
  const args = { group: group.id };
  const options = pupils.map(({ id }) => ({ value: id, label: nameOf(asked.state, id) }));
  const person = pick('person', staff('pupil label'), options);
  return [
    form(staff('name leader'), move('name-leader', args), [person], staff('name leader')),
    form(staff('pair leader'), move('pair-leader', args), [person], staff('pair leader')),
    form(
      staff('extend'),
      move('extend-segment', args),
      [typed('line', 'days', staff('days label'), { max: 2, value: '1' })],
      staff('extend'),
    ),
  ];
}

function forStaff(asked: Asked, group: Group): Message {
  const pupils = pupilsOf(asked.state, group.id);
  const at = standing(group.practice);
  const title = at === null ? null : (asked.state.shelf[at.passage]?.reading.title ?? null);
  return answer(asked, `${group.name}: ${phaseLine(asked, group.practice)}`, [
    heading(title === null ? group.name : `${group.name}: ${title}`),
    prose(phaseLine(asked, group.practice)),
    ...list(pupils.map((pupil) => pupilLine(asked, group, pupil))),
    ...choices(null, controls(group)),
    ...openForms(asked, group, pupils),
    ...choices(null, [
      choice(staff('see waiting'), look('waiting')),
      choice(staff('see digest'), look('digest', { group: group.id })),
      choice(staff('see table'), look('at-the-table', { group: group.id })),
    ]),
  ]);
}

/** Where the group stands: to children the part, the leader and a day; to staff who has done what, and the controls. */
export function whereAreWe(
  asked: Asked,
  { group }: Extract<Look, { type: 'where-are-we' }>,
): readonly Message[] {
  const groups = groupsAsked(asked, group);
  if (asked.by.role !== 'pupil') return groups.map((one) => forStaff(asked, one));
  const lines = pupilLines(asked, groups[0]);
  return [
    answer(asked, say(asked, 'where are we'), [
      heading(say(asked, 'where are we')),
      ...lines.map(prose),
      ...choices(null, [choice(say(asked, 'back'), look('turn'))]),
    ]),
  ];
}

import type { Block, Choice, Message } from '../../shared/messages.js';
import { strategies } from '../../shared/strategies.js';
import { isSent, isShown, postsOn, pupilsOf, runningOf } from '../practice/lookup.js';
import type { Group, Person } from '../practice/state.js';
import { doingWords } from '../progress/doing-words.js';
import { standing } from '../progress/in-group.js';
import { answer, nameOf, staff, type Asked } from './asked.js';
import { choice, choices, form, heading, list, look, move, pick, prose, typed } from './blocks.js';
import { phaseLine } from './phase-line.js';
import { staffQuotation } from './staff-posts.js';

function pupilLine(asked: Asked, group: Group, pupil: Person): string {
  const running = runningOf(group.practice);
  const who = nameOf(asked.state, pupil.id);
  if (running?.phase !== 'open') return pupil.away ? staff('pupil away', { who }) : who;
  const done = postsOn(asked.state, group.id, running.passage, running.segment.stop)
    .filter((post) => post.person === pupil.id && isSent(post))
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

/** The public talk on the segment that is open or was the last one, with a closer look and an answer. */
function talk(asked: Asked, group: Group): readonly Block[] {
  const running = runningOf(group.practice);
  if (running === null) return [];
  const stop = running.phase === 'open' ? running.segment.stop : running.nextStop - 1;
  const posts = postsOn(asked.state, group.id, running.passage, stop).filter(isShown);
  if (posts.length === 0) return [];
  return [
    heading(staff('talk title', { part: stop + 1 })),
    ...posts.flatMap((post) => [
      staffQuotation(asked.state, post),
      ...choices(null, [
        choice(staff('look closer'), look('post', { post: post.id })),
        ...(post.do === 'question'
          ? [choice(staff('answer'), look('step', { do: 'answer', question: post.id }))]
          : []),
      ]),
    ]),
  ];
}

/** What an adult can write into the talk, for instance when they lead. */
function write({ practice }: Group): readonly Block[] {
  if (practice.phase !== 'open') return [];
  return choices(
    staff('write yourself'),
    strategies.map((strategy) => choice(staff(`write ${strategy}`), look('step', { do: strategy }))),
  );
}

/** Where one group stands, for staff: who has done what, and the controls of that phase. */
export function whereForStaff(asked: Asked, group: Group): Message {
  const pupils = pupilsOf(asked.state, group.id);
  const at = standing(group.practice);
  const title = at === null ? null : (asked.state.shelf[at.passage]?.reading.title ?? null);
  return answer(asked, `${group.name}: ${phaseLine(asked, group.practice)}`, [
    heading(title === null ? group.name : `${group.name}: ${title}`),
    prose(phaseLine(asked, group.practice)),
    ...list(pupils.map((pupil) => pupilLine(asked, group, pupil))),
    ...choices(null, controls(group)),
    ...talk(asked, group),
    ...write(group),
    ...openForms(asked, group, pupils),
    ...choices(null, [
      choice(staff('see waiting'), look('waiting')),
      choice(staff('see digest'), look('digest', { group: group.id })),
      choice(staff('see table'), look('at-the-table', { group: group.id })),
    ]),
  ]);
}

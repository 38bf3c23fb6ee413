import type { EventOf } from '../../shared/events.js';
import type { GroupId } from '../../shared/ids.js';
import type { Block } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import type { Telling } from '../../shared/tellings.js';
import { heldOf } from './evolve-posts.js';
import type { ClassState } from './state.js';
import {
  choice,
  choices,
  heading,
  look,
  move,
  nameOf,
  prose,
  replace,
  say,
  speakTo,
  toChannel,
  toStaff,
  withdraw,
} from './told.js';

/** The one message about what waits in a group: said when the first post waits, replaced as the number changes, withdrawn when nothing waits. */
export function tellWaiting(state: ClassState, id: GroupId): readonly Telling[] {
  const group = state.groups[id];
  if (!group || group.waitingFrom === 0) return [];
  const held = heldOf(state, id);
  const key = `waiting/${id}/${group.waitingFrom}`;
  if (held.length === 0) return [withdraw(key, toStaff(id))];
  const blocks = waitingBlocks(state, held.length, held.filter(isApart).length);
  return [
    state.version === group.waitingFrom ? say(key, toStaff(id), blocks) : replace(key, toStaff(id), blocks),
  ];
}

/** Doubtful ones are looked at one by one; the others can be published on one screen. */
function isApart({ stage }: ReturnType<typeof heldOf>[number]): boolean {
  return stage.stage === 'held' && stage.why !== 'everything';
}

function waitingBlocks(state: ClassState, count: number, apart: number): readonly Block[] {
  const speak = speakTo(state);
  return [
    prose(speak('waits', { count })),
    ...(apart > 0 ? [prose(speak('waits apart', { count: apart }))] : []),
    ...choices(choice(speak('look'), look('waiting'), true)),
  ];
}

/** Reminders to staff, each one message. */
export function tellReminder(state: ClassState, event: EventOf<'staff-reminded'>): readonly Telling[] {
  const speak = speakTo(state);
  const key = `reminder/${state.version}`;
  const group = event.group;
  const count = heldOf(state, group).length;
  const args = group === null ? {} : { group };
  switch (event.of) {
    case 'held':
    case 'held, deputy': {
      const words = speak(event.of === 'held' ? 'reminder held' : 'reminder deputy', { count });
      return [
        say(key, toStaff(group), [prose(words), ...choices(choice(speak('look'), look('waiting'), true))]),
      ];
    }
    case 'alone': {
      const practice = group === null ? undefined : state.groups[group]?.practice;
      const who = practice?.phase === 'open' ? (practice.segment.active[0] ?? null) : null;
      return [
        say(key, toStaff(group), [
          prose(speak('alone', { name: nameOf(state, who) })),
          ...choices(
            choice(speak('pause'), move('pause-practice', args)),
            choice(speak('read live'), move('read-live', args)),
          ),
        ]),
      ];
    }
    case 'split':
      return [
        say(key, toStaff(group), [
          prose(speak('split')),
          ...choices(choice(speak('split it'), move('split-group', args), true)),
        ]),
      ];
    default:
      return event.of satisfies never;
  }
}

/** The line between literal and inferential has moved, and how to take that back. */
export function tellLine(state: ClassState, event: EventOf<'line-moved'>): readonly Telling[] {
  const speak = speakTo(state);
  const { checked, differed, side } = event;
  return [
    say(`line/${state.version}`, toStaff(null), [
      prose(speak('line moved', { checked, differed, side })),
      ...choices(
        choice(
          speak('line back'),
          move('change-setting', { setting: 'question line', value: 'as measured' }),
        ),
      ),
    ]),
  ];
}

/** The note to staff when a practice pauses itself. */
export function tellNobody(state: ClassState, id: GroupId): Telling {
  const speak = speakTo(state);
  return say(`nobody/${state.version}`, toStaff(id), [
    prose(speak('nobody active', { group: state.groups[id]?.name ?? '' })),
    ...choices(
      choice(speak('go on now'), move('resume-practice', { group: id }), true),
      choice(speak('read live'), look('at-the-table', { group: id })),
    ),
  ]);
}

/** A meaning that the tutor confirmed is the whole group's. */
export function tellMeaning(state: ClassState, event: EventOf<'meaning-confirmed'>): readonly Telling[] {
  const post = state.posts[event.post];
  const meaning = wordsOf(event.meaning);
  if (!post || meaning === null) return [];
  const speak = speakTo(state);
  return [
    say(`word/${post.id}/${state.version}`, toChannel(post.group), [
      heading(speak('our word', { word: event.word })),
      { type: 'quotation', text: meaning, by: null },
    ]),
  ];
}

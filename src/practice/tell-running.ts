import type { EventOf } from '../../shared/events.js';
import type { Telling } from '../../shared/tellings.js';
import { segmentCardAgain, titleOf } from './tell-segment.js';
import { tellNobody } from './tell-staff.js';
import type { ClassState } from './state.js';
import { heading, prose, say, speakTo, toChannel, toStaff, whenOf } from './told.js';

type RunningEvent = EventOf<'leg-ended' | 'practice-paused' | 'practice-resumed' | 'passage-finished'>;

/** What the group and staff are told when a leg, a passage or the practice itself stops or goes on. */
export function tellRunning(state: ClassState, event: RunningEvent): readonly Telling[] {
  const speak = speakTo(state);
  const channel = toChannel(event.group);
  switch (event.type) {
    case 'leg-ended':
      return legEnded(state, event);
    case 'practice-paused':
      if (event.why === 'nobody active') return [tellNobody(state, event.group)];
      return [say(`pause/${state.version}`, channel, [prose(speak('a break'))])];
    case 'practice-resumed':
      return [
        say(`resume/${state.version}`, channel, [
          prose(speak('go on')),
          ...(event.opensOn !== null && event.opensAt !== null && event.opensAt > event.at
            ? [prose(speak('next opens', { when: whenOf(speak, event.opensOn) }))]
            : []),
        ]),
        ...segmentCardAgain(state, event.group),
      ];
    case 'passage-finished': {
      const next =
        event.next === null ? [] : [prose(speak('text next', { title: titleOf(state, event.next) }))];
      return [
        say(`finished/${event.group}/${event.passage}/${state.version}`, channel, [
          prose(speak('text done')),
          ...next,
        ]),
      ];
    }
    default:
      return event satisfies never;
  }
}

/** The end of a leg: the group hears when it meets, staff are shown the digest. */
function legEnded(state: ClassState, event: EventOf<'leg-ended'>): readonly Telling[] {
  const speak = speakTo(state);
  const { group } = event;
  const key = `${group}/${state.groups[group]?.legs ?? 0}/${state.version}`;
  const meet =
    event.sessionOn === null ? [] : [prose(speak('we meet', { when: whenOf(speak, event.sessionOn) }))];
  const next =
    event.sessionOn !== null || event.nextLegOn === null
      ? []
      : [prose(speak('next leg', { when: whenOf(speak, event.nextLegOn) }))];
  const quiet = event.why === 'nobody active';
  return [
    ...(quiet ? [] : [say(`leg/${key}`, toChannel(group), [heading(speak('leg done')), ...meet, ...next])]),
    { do: 'show', key: `digest/${key}`, look: { type: 'digest', group }, audience: toStaff(group) },
  ];
}

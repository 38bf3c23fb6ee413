import type { EventOf } from '../../shared/events.js';
import type { GroupId, PassageId } from '../../shared/ids.js';
import type { Block } from '../../shared/messages.js';
import type { Telling } from '../../shared/tellings.js';
import { isStaff, postsOn, runningOf } from './lookup.js';
import { closingSumUp, sumUpsSoFar } from './sum-ups.js';
import type { ClassState, SegmentState } from './state.js';
import { questionTellings } from './tell-talk.js';
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
  toPerson,
  whenOf,
  type Speak,
} from './told.js';

type SegmentEvent = EventOf<
  'leg-began' | 'segment-opened' | 'segment-closed' | 'segment-extended' | 'close-undone' | 'leader-changed'
>;

/** What the group is told about its segment; each segment has one card, replaced as things change. */
export function tellSegment(state: ClassState, event: SegmentEvent): readonly Telling[] {
  switch (event.type) {
    case 'leg-began':
      return card(state, event);
    case 'segment-opened':
      return [...segmentCard(state, event.group, 'say'), ...tellLeader(state, event.group, 'you lead')];
    case 'segment-closed':
      return closed(state, event);
    case 'segment-extended':
      return event.by === 'clock'
        ? segmentCard(state, event.group, 'replace')
        : [...segmentCard(state, event.group, 'replace'), note(state, event.group, 'more time')];
    case 'close-undone':
      return [...segmentCard(state, event.group, 'replace'), note(state, event.group, 'open again')];
    case 'leader-changed':
      return changedLeader(state, event);
    default:
      return event satisfies never;
  }
}

/** Words of the first segment that a reader may stumble on, three at most. */
function neededWords(state: ClassState, passage: PassageId): readonly string[] {
  const hard = state.shelf[passage]?.reading.segments[0]?.hardWords ?? [];
  return hard
    .toSorted((a, b) => b.difficulty - a.difficulty)
    .slice(0, 3)
    .map(({ word }) => word);
}

/** The card before the first segment of a passage. */
function card(state: ClassState, event: EventOf<'leg-began'>): readonly Telling[] {
  const group = state.groups[event.group];
  const running = group ? runningOf(group.practice) : null;
  if (!group || running?.phase !== 'waiting' || running.nextStop > 0) return [];
  const speak = speakTo(state);
  const { passage } = running;
  const words = neededWords(state, passage);
  const now = event.firstOpensAt <= event.at;
  const predicts = group.open.includes('predict');
  return [
    say(`card/${group.id}/${passage}`, toChannel(group.id), [
      heading(speak('new text', { title: titleOf(state, passage) })),
      ...(predicts ? [prose(speak('look first'))] : []),
      ...(words.length > 0 ? [prose(speak('needed words', { words: words.join(', ') }))] : []),
      prose(now ? speak('card now') : speak('card opens', { when: whenOf(speak, event.firstOpensOn) })),
      ...choices(
        predicts ? choice(speak('guess'), look('step', { do: 'predict' }), true) : null,
        predicts
          ? choice(speak('not sure yet'), move('pass-prediction'))
          : choice(speak('read'), look('turn'), true),
      ),
    ]),
  ];
}

/** A passage's title. */
export function titleOf(state: ClassState, passage: PassageId): string {
  return state.shelf[passage]?.reading.title ?? '';
}

/** Names a segment's card; one that opens again, in the next leg or after an undone close, has a new one. */
function segmentKey(group: GroupId, { card }: SegmentState): string {
  return `segment/${group}/${card}`;
}

function leadWords(state: ClassState, speak: Speak, { leader, partner }: SegmentState): string {
  if (leader === null) return speak('nobody leads');
  const slots = { leader: nameOf(state, leader), partner: nameOf(state, partner) };
  return partner === null ? speak('leads this part', slots) : speak('lead together', slots);
}

/** The card of the open segment: so far, who leads, until when, what to do. The text itself comes after the prediction. */
function segmentCard(
  state: ClassState,
  id: GroupId,
  how: 'say' | 'replace',
  more: readonly string[] = [],
): readonly Telling[] {
  const group = state.groups[id];
  if (group?.practice.phase !== 'open') return [];
  const { passage, segment } = group.practice;
  const speak = speakTo(state);
  const soFar = sumUpsSoFar(state, id, passage, segment.stop);
  const blocks: readonly Block[] = [
    heading(speak('part', { title: titleOf(state, passage), number: segment.stop + 1 })),
    ...(soFar.length > 0 ? [heading(speak('so far')), ...soFar.map(quoted)] : []),
    prose([leadWords(state, speak, segment), ...more].join(' ')),
    prose(speak('until when', { when: whenOf(speak, segment.times.closesOn) })),
    ...choices(
      choice(speak('read'), look('turn'), true),
      group.open.includes('question')
        ? choice(speak('ask a question'), look('step', { do: 'question' }))
        : null,
      group.open.includes('clarify') ? choice(speak('hard word'), look('step', { do: 'clarify' })) : null,
    ),
  ];
  const key = segmentKey(id, segment);
  return [how === 'say' ? say(key, toChannel(id), blocks) : replace(key, toChannel(id), blocks)];
}

/** The card of an open segment, replaced. */
export function segmentCardAgain(state: ClassState, id: GroupId): readonly Telling[] {
  return segmentCard(state, id, 'replace');
}

function quoted(text: string): Block {
  return { type: 'quotation', text, by: null };
}

function note(state: ClassState, id: GroupId, key: 'more time' | 'open again'): Telling {
  const practice = state.groups[id]?.practice;
  const speak = speakTo(state);
  const until =
    practice?.phase === 'open'
      ? [prose(speak('until when', { when: whenOf(speak, practice.segment.times.closesOn) }))]
      : [];
  return say(`note/${state.version}`, toChannel(id), [prose(speak(key)), ...until]);
}

/** Tells the leader in private; an adult who leads knows how. */
function tellLeader(state: ClassState, id: GroupId, key: 'you lead' | 'your turn'): readonly Telling[] {
  const practice = state.groups[id]?.practice;
  if (practice?.phase !== 'open' || practice.segment.leader === null) return [];
  const { leader, stop } = practice.segment;
  if (isStaff(state, leader)) return [];
  const speak = speakTo(state, leader);
  return [
    say(`lead/${id}/${practice.passage}/${stop}/${state.version}`, toPerson(leader), [
      prose(speak(key)),
      ...choices(
        choice(speak('ask a question'), look('step', { do: 'question' }), true),
        choice(speak('quiet pass'), move('quiet-pass')),
      ),
    ]),
  ];
}

/** The nudge of the leader. */
export function tellNudge(state: ClassState, event: EventOf<'leader-nudged'>): readonly Telling[] {
  return tellLeader(state, event.group, 'your turn');
}

/** "Finch leads this part. Wren leads another day": never that somebody failed. */
function changedLeader(state: ClassState, event: EventOf<'leader-changed'>): readonly Telling[] {
  const practice = state.groups[event.group]?.practice;
  if (practice?.phase !== 'open') return [];
  const speak = speakTo(state);
  const { from, leader } = event;
  const stays =
    from === null || from === leader || isStaff(state, from) || state.people[from]?.removed !== false;
  const more = stays ? [] : [speak('leads another day', { leader: nameOf(state, from) })];
  const lead = leadWords(state, speak, practice.segment);
  return [
    ...segmentCard(state, event.group, 'replace', more),
    say(`note/${state.version}`, toChannel(event.group), [prose([lead, ...more].join(' '))]),
    ...(event.why === 'took the lead' || event.why === 'paired'
      ? []
      : tellLeader(state, event.group, 'you lead')),
  ];
}

/** A segment that closed: its sum-up, when the next one opens, and the answers, which everybody may see now. */
function closed(state: ClassState, event: EventOf<'segment-closed'>): readonly Telling[] {
  const group = state.groups[event.group];
  const running = group ? runningOf(group.practice) : null;
  if (!group || running === null) return [];
  const { passage } = running;
  const speak = speakTo(state);
  const next =
    event.nextOpensOn === null || event.nextOpensAt === null
      ? []
      : event.nextOpensAt <= event.at
        ? [prose(speak('next now'))]
        : [prose(speak('next opens', { when: whenOf(speak, event.nextOpensOn) }))];
  const questions = postsOn(state, group.id, passage, event.stop).filter((post) => post.do === 'question');
  return [
    say(`closed/${group.id}/${passage}/${event.stop}/${state.version}`, toChannel(group.id), [
      heading(speak('part done')),
      ...sumUpBlocks(state, speak, group.id, passage, event.stop),
      ...next,
    ]),
    ...questions.flatMap((question) => questionTellings(state, question)),
  ];
}

function sumUpBlocks(
  state: ClassState,
  speak: Speak,
  id: GroupId,
  passage: PassageId,
  stop: number,
): readonly Block[] {
  const sumUp = closingSumUp(state, id, passage, stop);
  if (sumUp !== null) {
    const who =
      sumUp.by === null ? speak('grown-up sums up') : speak('sums up', { name: nameOf(state, sumUp.by) });
    return [
      prose(who),
      { type: 'quotation', text: sumUp.text, by: sumUp.by === null ? null : nameOf(state, sumUp.by) },
    ];
  }
  if (!state.groups[id]?.open.includes('sum-up')) return [];
  const running = state.groups[id] ? runningOf(state.groups[id].practice) : null;
  const on = running?.leg?.sessionOn ?? null;
  return [prose(on === null ? speak('sum up next time') : speak('sum up on', { when: whenOf(speak, on) }))];
}

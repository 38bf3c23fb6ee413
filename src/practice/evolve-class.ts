import type { EventOf } from '../../shared/events.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import type { Said } from '../../shared/said.js';
import { strategies } from '../../shared/strategies.js';
import { withGroup, withItem, withoutItem, withPerson } from './changing.js';
import { groupsOf, pupilsOf } from './lookup.js';
import { readSetting, settingDefaults } from './settings.js';
import type { ClassState, Group, Person, Post, PostStage } from './state.js';

type ClassChange = EventOf<
  | 'class-made'
  | 'setting-changed'
  | 'line-moved'
  | 'strategy-opened'
  | 'strategy-closed'
  | 'group-made'
  | 'person-added'
  | 'person-renamed'
  | 'pupil-moved'
  | 'person-removed'
  | 'person-erased'
  | 'second-key-reset'
  | 'goal-set'
  | 'help-changed'
>;

/** The class after something about itself or its people. */
export function evolveClass(state: ClassState, event: ClassChange): ClassState {
  switch (event.type) {
    case 'class-made':
      return {
        ...state,
        made: true,
        name: event.name,
        settings: {
          ...settingDefaults,
          zone: event.zone,
          register: event.register,
          moderation: event.moderation ?? 'hold everything',
        },
      };
    case 'setting-changed':
      return lineAfter({ ...state, settings: settingsAfter(state, event) }, event);
    case 'line-moved':
      return { ...state, line: { shift: event.to, movedAt: event.at } };
    case 'strategy-opened':
    case 'strategy-closed':
      return withStrategy(state, event);
    case 'group-made':
      return { ...state, groups: { ...state.groups, [event.group]: newGroup(event.group, event.name) } };
    case 'person-added':
      return addPerson(state, event);
    case 'person-renamed':
      return withPerson(state, event.person, (person) => ({ ...person, nickname: event.nickname }));
    case 'pupil-moved':
      return movePupil(state, event.person, event.group);
    case 'person-removed':
      return takeOut(
        withPerson(state, event.person, (person) => ({ ...person, removed: true })),
        event.person,
      );
    case 'person-erased':
      return erase(state, event.person);
    case 'second-key-reset':
      // What opens a door lies with the store, never in the state.
      return state;
    case 'goal-set':
      return withPerson(state, event.person, (person) => ({ ...person, goal: event.strategy }));
    case 'help-changed':
      return withPerson(state, event.person, (person) => ({
        ...person,
        help: { ...person.help, [event.strategy]: event.help },
      }));
    default:
      return event satisfies never;
  }
}

/** Where the line is to stay as measured, what it has moved is taken back. */
function lineAfter(state: ClassState, { setting, at }: EventOf<'setting-changed'>): ClassState {
  return setting === 'question line' ? { ...state, line: { shift: 0, movedAt: at } } : state;
}

function settingsAfter({ settings }: ClassState, event: EventOf<'setting-changed'>): ClassState['settings'] {
  try {
    return readSetting(settings, event.setting, event.value);
  } catch {
    // A value that an older version took and this one doesn't must not stop a replay.
    return settings;
  }
}

function withStrategy(
  state: ClassState,
  { type, strategy, group, pupil }: EventOf<'strategy-opened' | 'strategy-closed'>,
): ClassState {
  const opens = type === 'strategy-opened';
  if (pupil !== null) {
    return withPerson(state, pupil, (person) => ({
      ...person,
      closed: opens ? withoutItem(person.closed, strategy) : withItem(person.closed, strategy),
    }));
  }
  return groupsOf(state)
    .filter(({ id }) => group === null || id === group)
    .reduce(
      (after, { id }) =>
        withGroup(after, id, (one) => ({
          ...one,
          open: opens ? withItem(one.open, strategy) : withoutItem(one.open, strategy),
          justOpened:
            opens && !one.open.includes(strategy)
              ? withItem(one.justOpened, strategy)
              : withoutItem(one.justOpened, strategy),
        })),
      state,
    );
}

function newGroup(id: GroupId, name: string): Group {
  return {
    id,
    name,
    open: strategies,
    justOpened: [],
    queue: [],
    lot: [],
    lastLeader: null,
    led: {},
    practice: { phase: 'none' },
    finished: [],
    aloneTimes: 0,
    legs: 0,
    waitingFrom: 0,
    beforeClose: null,
  };
}

function addPerson(state: ClassState, event: EventOf<'person-added'>): ClassState {
  const person: Person = {
    id: event.person,
    nickname: event.nickname,
    role: event.role,
    register: event.register,
    group: event.group,
    removed: false,
    away: false,
    goal: null,
    help: { question: 'guided', clarify: 'guided', 'sum-up': 'guided', predict: 'guided' },
    closed: [],
    lastSeen: null,
    missed: 0,
  };
  const added = { ...state, people: { ...state.people, [person.id]: person } };
  return person.role === 'pupil' && event.group !== null ? joinLot(added, person.id, event.group, 0) : added;
}

/** How often the group's other pupils have led at the least. */
function leastLed(state: ClassState, group: GroupId, except: PersonId): number {
  const led = state.groups[group]?.led ?? {};
  const counts = pupilsOf(state, group)
    .filter(({ id }) => id !== except)
    .map(({ id }) => led[id] ?? 0);
  return counts.length === 0 ? 0 : Math.min(...counts);
}

/** Whoever joins starts level with those who led least, or as far ahead of them as in the old group. */
function joinLot(state: ClassState, person: PersonId, group: GroupId, ahead: number): ClassState {
  const count = leastLed(state, group, person) + Math.max(0, ahead);
  return withGroup(state, group, (one) => ({
    ...one,
    lot: withItem(one.lot, person),
    led: { ...one.led, [person]: count },
  }));
}

function movePupil(state: ClassState, person: PersonId, group: GroupId): ClassState {
  const from = state.people[person]?.group ?? null;
  const ahead = from === null ? 0 : (state.groups[from]?.led[person] ?? 0) - leastLed(state, from, person);
  const moved = withPerson(state, person, (one) => ({ ...one, group }));
  return joinLot(takeOut(moved, person, group), person, group, ahead);
}

/** Takes a person out of lots and of the open segments of every group but one. */
function takeOut(state: ClassState, person: PersonId, except?: GroupId): ClassState {
  const groups = groupsOf(state)
    .filter((group) => group.id !== except)
    .map((group): [GroupId, Group] => [
      group.id,
      { ...group, lot: withoutItem(group.lot, person), practice: withoutPerson(group.practice, person) },
    ]);
  return { ...state, groups: { ...state.groups, ...Object.fromEntries(groups) } };
}

function withoutPerson(practice: Group['practice'], person: PersonId): Group['practice'] {
  if (practice.phase === 'paused') {
    const was = withoutPerson(practice.was, person);
    return was.phase === 'open' || was.phase === 'waiting' ? { ...practice, was } : practice;
  }
  if (practice.phase !== 'open') return practice;
  const { segment } = practice;
  return {
    ...practice,
    segment: {
      ...segment,
      active: withoutItem(segment.active, person),
      partner: segment.partner === person ? null : segment.partner,
    },
  };
}

function erase(state: ClassState, person: PersonId): ClassState {
  const gone: Said = { kind: 'said', by: person, gone: 'erased' };
  const blank = (what: Said): Said => (what.by === person ? gone : what);
  const posts = Object.fromEntries(
    Object.entries(state.posts).map(([id, post]) => [id, blankPost(post, blank)]),
  );
  const meanings = Object.fromEntries(
    Object.entries(state.meanings).map(([word, meaning]) => [word, blank(meaning)]),
  );
  const { [person]: _, ...reviews } = state.reviews;
  const { [person]: __, ...reviewSteps } = state.reviewSteps;
  const blanked = withPerson({ ...state, posts, meanings, reviews, reviewSteps }, person, (one) => ({
    ...one,
    nickname: gone,
    removed: true,
  }));
  return takeOut(blanked, person);
}

function blankPost(post: Post, blank: (what: Said) => Said): Post {
  return {
    ...post,
    text: post.text.kind === 'seed' ? post.text : blank(post.text),
    word: post.word === null ? null : blank(post.word),
    stage: blankStage(post.stage, blank),
  };
}

function blankStage(stage: PostStage, blank: (what: Said) => Said): PostStage {
  return stage.stage === 'sent back' ? { ...stage, note: blank(stage.note) } : stage;
}

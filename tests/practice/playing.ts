import type { ClassEvent, EventName, EventOf } from '../../shared/events.js';
import {
  asId,
  type ClassId,
  type GroupId,
  type PassageId,
  type PersonId,
  type PostId,
} from '../../shared/ids.js';
import type { Message } from '../../shared/messages.js';
import type { Actor, Move } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import type { Doing, Given } from '../../shared/strategies.js';
import type { Telling } from '../../shared/tellings.js';
import { decide, type Decision } from '../../src/practice/decide.js';
import { due } from '../../src/practice/due.js';
import { emptyState } from '../../src/practice/empty-state.js';
import { evidenceOf } from '../../src/practice/evidence-of.js';
import { evolve } from '../../src/practice/evolve.js';
import type { ClassState, Group, Post, SegmentState } from '../../src/practice/state.js';
import { tell } from '../../src/practice/tell.js';
import { turnOf, type Turn } from '../../src/practice/turn.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import { fakeCalendar } from '../support/fake-calendar.js';
import { fakeJudges } from '../support/fake-judges.js';

export const minute = 60_000;
export const hour = 60 * minute;
export const day = 24 * hour;

/** Monday 2026-01-05 at a time of day, UTC. */
export function monday(time = '08:00'): number {
  return Date.parse(`2026-01-05T${time}:00Z`);
}

/** A weekday of that week: 1 Monday .. 7 Sunday; 8 is the next Monday. */
export function weekday(nth: number, time = '08:00'): number {
  return monday(time) + (nth - 1) * day;
}

export const text = (segments: number): string =>
  Array.from({ length: segments }, (_, nth) => `Stones lie on beach ${nth + 1}. Birds turn them.`).join(
    '\n\n',
  );

/** A class that is played through decide, evolve and tell, as the shell does it, with a clock that the test sets. */
export class Played {
  state: ClassState = emptyState(asId<ClassId>('c1'));
  now: number;
  readonly events: ClassEvent[] = [];
  readonly tellings: { readonly telling: Telling; readonly by: ClassEvent }[] = [];
  readonly evidence = new Map<string, EvidenceRow>();
  seed = 1;

  constructor(now: number) {
    this.now = now;
  }

  /** Decides a move without following it. */
  decide(by: Actor, move: Move, given: Given = 'typed'): Decision {
    const act = { classId: this.state.id, by, at: this.now, seed: this.seed, given, move };
    this.seed += 1;
    return decide(this.state, act, { judges: fakeJudges, calendar: fakeCalendar });
  }

  /** Makes a move that must be taken; the events that it led to. */
  move(by: Actor, move: Move, given: Given = 'typed'): readonly ClassEvent[] {
    const decision = this.decide(by, move, given);
    if ('refusal' in decision) throw new Error(`refused ${move.type}: ${decision.refusal.message}`);
    this.follow(decision.events);
    return decision.events;
  }

  follow(events: readonly ClassEvent[]): void {
    for (const event of events) {
      this.state = evolve(this.state, event);
      this.events.push(event);
      for (const telling of tell(this.state, event)) this.tellings.push({ telling, by: event });
      for (const row of evidenceOf(this.state, event)) this.evidence.set(row.key, row);
    }
  }

  /** The code of a refusal, or null where the move is taken. */
  refused(by: Actor, move: Move): string | null {
    const decision = this.decide(by, move);
    return 'refusal' in decision ? decision.refusal.code : null;
  }

  /** Steps through every due instant up to a time; the events that it led to. */
  until(at: number): readonly ClassEvent[] {
    const from = this.events.length;
    for (let step = 0; step < 500; step += 1) {
      const next = due(this.state);
      if (next === null || next > at) break;
      this.now = Math.max(this.now, next);
      this.move('clock', { type: 'time-passed' });
    }
    this.now = Math.max(this.now, at);
    return this.events.slice(from);
  }

  /** Lets the machine sleep until a time, then tells it that time has passed. */
  sleepUntil(at: number): readonly ClassEvent[] {
    this.now = at;
    return this.move('clock', { type: 'time-passed' });
  }

  person(nickname: string): PersonId {
    const found = Object.values(this.state.people).find((one) => wordsOf(one.nickname) === nickname);
    if (!found) throw new Error(`no ${nickname}`);
    return found.id;
  }

  nickname(person: PersonId | null): string {
    const found = person === null ? undefined : this.state.people[person];
    return (found ? wordsOf(found.nickname) : null) ?? 'nobody';
  }

  get group(): Group {
    const group = Object.values(this.state.groups)[0];
    if (!group) throw new Error('no group');
    return group;
  }

  get groupId(): GroupId {
    return this.group.id;
  }

  get segment(): SegmentState {
    if (this.group.practice.phase !== 'open') throw new Error(`not open but ${this.group.practice.phase}`);
    return this.group.practice.segment;
  }

  get phase(): string {
    return this.group.practice.phase;
  }

  /** The leader of the open segment, by nickname. */
  get leader(): string {
    return this.nickname(this.segment.leader);
  }

  /** Pupils who don't lead the open segment, by nickname. */
  get others(): readonly string[] {
    return this.segment.active.filter((id) => id !== this.segment.leader).map((id) => this.nickname(id));
  }

  /** Sends a draft; the post. */
  draft(
    by: string,
    doing: Doing,
    words: string,
    more: Partial<Extract<Move, { type: 'send-draft' }>> = {},
  ): Post {
    const before = new Set(Object.keys(this.state.posts));
    this.move(this.person(by), { type: 'send-draft', do: doing, text: words, ...more });
    const made = Object.values(this.state.posts).find(({ id }) => !before.has(id));
    if (!made) throw new Error('no post');
    return made;
  }

  /** Sends a draft and posts it; the post as it then stands. */
  post(
    by: string,
    doing: Doing,
    words: string,
    more: Partial<Extract<Move, { type: 'send-draft' }>> = {},
  ): Post {
    const { id } = this.draft(by, doing, words, more);
    if (this.at(id).stage.stage === 'draft') this.move(this.person(by), { type: 'post-draft', post: id });
    return this.at(id);
  }

  at(id: PostId): Post {
    const post = this.state.posts[id];
    if (!post) throw new Error(`no post ${id}`);
    return post;
  }

  turn(nickname: string): Turn {
    return turnOf(this.state, this.person(nickname), this.now);
  }

  staff(move: Move): readonly ClassEvent[] {
    return this.move(this.person('Heron'), move);
  }

  of<N extends EventName>(name: N): readonly EventOf<N>[] {
    return this.events.filter((event): event is EventOf<N> => event.type === name);
  }

  /** Messages said or replaced for an audience, as plain lines. */
  told(to: 'channel' | 'staff' | PersonId, from = 0): readonly string[] {
    return this.tellings.slice(from).flatMap(({ telling }) => {
      if (telling.do !== 'say' && telling.do !== 'replace') return [];
      const { audience } = telling.message;
      const mine = audience.to === 'person' ? audience.person === to : audience.to === to;
      return mine ? [plain(telling.message)] : [];
    });
  }

  passage(nth = 0): PassageId {
    const found = Object.values(this.state.shelf)[nth];
    if (!found) throw new Error('no passage');
    return found.id;
  }

  addPassage(segments: number, title = 'Shore birds'): PassageId {
    this.staff({ type: 'add-passage', text: text(segments), title, grade: 4 });
    return this.passage(Object.keys(this.state.shelf).length - 1);
  }
}

/** The words of a message in one line. */
export function plain({ blocks }: Message): string {
  return blocks
    .flatMap((block): string[] => {
      switch (block.type) {
        case 'heading':
        case 'quotation':
          return [block.text];
        case 'prose':
          return [block.prose.map((span) => span.text).join('')];
        case 'choices':
          return [
            ...(block.prompt === null ? [] : [block.prompt]),
            ...block.choices.map(({ label }) => `[${label}]`),
          ];
        case 'list':
          return block.items.map((item) => item.map((span) => span.text).join(''));
        case 'measure':
          return [block.words];
        case 'picture':
          return [block.picture.alternative];
        case 'form':
          return [block.title];
        default:
          return block satisfies never;
      }
    })
    .join(' ');
}

export interface Setup {
  readonly pupils?: readonly string[];
  readonly segments?: number;
  readonly moderation?: 'hold everything' | 'hold what is doubtful' | 'publish';
  readonly sessions?: string;
  readonly at?: number;
}

/** A class with its tutor Heron, pupils, one passage set; not started. */
export function makeClass(setup: Setup = {}): Played {
  const { pupils = ['Finch', 'Wren', 'Robin'], segments = 3, moderation = 'hold what is doubtful' } = setup;
  const played = new Played(setup.at ?? monday());
  played.move('founder', { type: 'make-class', name: 'Room 4', zone: 'UTC', nickname: 'Heron' });
  played.staff({ type: 'change-setting', setting: 'moderation', value: moderation });
  if (setup.sessions !== undefined) {
    played.staff({ type: 'change-setting', setting: 'sessions', value: setup.sessions });
  }
  for (const nickname of pupils) played.staff({ type: 'add-person', nickname, role: 'pupil' });
  const passage = played.addPassage(segments);
  played.staff({ type: 'set-passage', passage, group: played.groupId });
  return played;
}

/** The same class with its practice started. */
export function startClass(setup: Setup = {}): Played {
  const played = makeClass(setup);
  played.staff({ type: 'start-practice', group: played.groupId });
  return played;
}

import { Fault } from '../../shared/fault.js';
import { asId, type ClassId, type GroupId, type PassageId, type PersonId } from '../../shared/ids.js';
import type { Judges } from '../../shared/judgements.js';
import type { Message } from '../../shared/messages.js';
import { readMove, type Move } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import { strategies, type Doing } from '../../shared/strategies.js';
import type { Telling } from '../../shared/tellings.js';
import type { ClassEvent } from '../../shared/events.js';
import { digestOf } from '../progress/digest.js';
import type { Digest } from '../progress/digest-shape.js';
import type { ClassState, Post } from '../practice/state.js';
import { memoryStore } from '../store/memory-store.js';
import { calendar } from './calendar.js';
import { openHouse, type OpenHouse } from './house.js';
import { silentLog } from './log.js';
import { newestQuestion } from './newest-question.js';

/** A passage of a rehearsal; the grade is that of its readers, by the text's own level where left out. */
export interface RehearsedPassage {
  readonly text: string;
  readonly grade?: number;
}

/** One post of a rehearsal; `at` in milliseconds, `line` where it stood in the file. */
export interface RehearsedPost {
  readonly line: number;
  readonly at: number;
  readonly by: string;
  readonly do: Exclude<Doing, 'add'>;
  readonly text: string;
  readonly word: string | undefined;
  readonly to: string | undefined;
}

/** What a rehearsal tells while it runs. */
export interface RehearsalEars {
  readonly event: (event: ClassEvent) => void;
  readonly message: (message: Message, at: number) => void;
  readonly refused: (line: number, why: string) => void;
}

export interface RehearsalResult {
  readonly digest: Digest;
  /** The digest as staff read it. */
  readonly pages: readonly Message[];
}

const classId = asId<ClassId>('rehearsal');
const zone = 'UTC';

/** Small seeded generator (mulberry32): the same seed gives the same lots. */
export function seeded(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return (t ^ (t >>> 14)) >>> 1;
  };
}

/** Runs a class through posts with the same handle as the server, an in-memory store and a clock that steps through every due instant. */
export async function rehearse(
  judges: Judges,
  passages: readonly RehearsedPassage[],
  posts: readonly RehearsedPost[],
  seed: number,
  ears: RehearsalEars,
): Promise<RehearsalResult> {
  const ordered = [...posts].sort((a, b) => a.at - b.at);
  let now = ordered[0]?.at ?? Date.UTC(2026, 0, 5, 9);
  const store = await memoryStore();
  const lot = seeded(seed);
  const house = openHouse({
    store,
    judges,
    calendar,
    clock: { now: () => now },
    log: silentLog,
    key: 'rehearsal-key-rehearsal-key-rehearsal',
    baseUrl: () => 'http://127.0.0.1',
    seed: lot,
  });
  const run = new Run(house, ears, () => now);
  try {
    await run.begin(passages, [...new Set(ordered.map(({ by }) => by))]);
    for (const post of ordered) {
      await stepTo(post.at);
      await run.submit(post);
    }
    await finish();
    const state = await house.classes.load(classId);
    const rows = await store.evidence({ classId });
    const digest = digestOf({ state, group: null, rows, at: now });
    const pages = await run.digestPages();
    return { digest, pages };
  } finally {
    await store.close();
  }

  /** Lets every due instant up to `until` pass, one by one. */
  async function stepTo(until: number): Promise<void> {
    for (let steps = 0; steps < 5000; steps += 1) {
      const next = await store.nextDue();
      if (next === null || next > until) break;
      now = Math.max(now, next);
      await house.passTime(classId);
      await run.settle();
    }
    now = Math.max(now, until);
  }

  /** On until every passage has closed; what a practice without pupils leaves open is read together. */
  async function finish(): Promise<void> {
    for (let steps = 0; steps < 5000; steps += 1) {
      if (await run.finished()) return;
      const next = await store.nextDue();
      if (next !== null && !(await run.paused())) {
        now = Math.max(now, next);
        await house.passTime(classId);
        await run.settle();
      } else await run.readTheRest();
    }
  }
}

class Run {
  readonly #house: OpenHouse;
  readonly #ears: RehearsalEars;
  readonly #now: () => number;
  readonly #people = new Map<string, PersonId>();
  #group: GroupId = asId('');
  #staff: PersonId = asId('');
  #updates = 0;
  #told: Promise<void> = Promise.resolve();

  constructor(house: OpenHouse, ears: RehearsalEars, now: () => number) {
    this.#house = house;
    this.#ears = ears;
    this.#now = now;
    house.watch((_, done) => {
      for (const event of done.events) ears.event(event);
      for (const { telling, at } of done.tellings)
        this.#told = this.#told.then(() => this.#tell(telling, at));
    });
  }

  /** Waits until all that was told has been shown. */
  settle(): Promise<void> {
    return this.#told;
  }

  async #tell(telling: Telling, at: number): Promise<void> {
    if (telling.do === 'say' || telling.do === 'replace') this.#ears.message(telling.message, at);
    if (telling.do === 'show') {
      for (const page of await this.digestPages())
        this.#ears.message({ ...page, audience: telling.audience }, at);
    }
  }

  async digestPages(): Promise<readonly Message[]> {
    const reply = await this.#house.look({ classId, person: this.#staff }, 'digest', {});
    return reply.messages;
  }

  async #act(by: PersonId | 'founder', move: Move): Promise<{ done: boolean; why: string }> {
    this.#updates += 1;
    const reply = await this.#house.act({ classId, by, at: this.#now(), move }, `rehearsed-${this.#updates}`);
    await this.settle();
    return { done: reply.done, why: reply.why ?? '' };
  }

  async #must(by: PersonId | 'founder', move: Move): Promise<ClassState> {
    const { done, why } = await this.#act(by, move);
    if (!done) throw new Error(`Cannot rehearse, expected ${move.type} to be done, got: ${why}`);
    return this.#house.classes.load(classId);
  }

  async begin(passages: readonly RehearsedPassage[], pupils: readonly string[]): Promise<void> {
    const made = await this.#must('founder', {
      type: 'make-class',
      name: 'Rehearsal',
      zone,
      nickname: 'Founder',
    });
    const founder = Object.values(made.people)[0]?.id ?? asId<PersonId>('');
    const staffed = await this.#must(founder, { type: 'add-person', nickname: 'Teacher', role: 'teacher' });
    this.#staff = Object.values(staffed.people).find(({ role }) => role === 'teacher')?.id ?? founder;
    this.#group = Object.values(staffed.groups)[0]?.id ?? asId<GroupId>('');
    await this.#must(this.#staff, {
      type: 'change-setting',
      setting: 'moderation',
      value: 'hold what is doubtful',
    });
    for (const nickname of pupils) {
      const state = await this.#must(this.#staff, {
        type: 'add-person',
        nickname,
        role: 'pupil',
        group: this.#group,
      });
      const person = Object.values(state.people).find(
        (one) => wordsOf(one.nickname) === nickname && one.role === 'pupil',
      );
      if (person) this.#people.set(nickname, person.id);
    }
    const { groups } = await this.#house.classes.load(classId);
    for (const strategy of strategies) {
      if (groups[this.#group]?.open.includes(strategy)) continue;
      await this.#must(this.#staff, { type: 'open-strategy', strategy });
    }
    for (const { text, grade } of passages) {
      const before = new Set(Object.keys((await this.#house.classes.load(classId)).shelf));
      const added = await this.#must(this.#staff, {
        type: 'add-passage',
        text,
        ...(grade === undefined ? {} : { grade }),
      });
      const passage = Object.keys(added.shelf).find((id) => !before.has(id)) ?? '';
      await this.#must(this.#staff, {
        type: 'set-passage',
        passage: asId<PassageId>(passage),
        group: this.#group,
      });
    }
    await this.#must(this.#staff, { type: 'start-practice', group: this.#group });
  }

  async submit(post: RehearsedPost): Promise<void> {
    const person = this.#people.get(post.by);
    if (person === undefined) return;
    if (await this.paused()) await this.#act(this.#staff, { type: 'resume-practice', group: this.#group });
    const state = await this.#house.classes.load(classId);
    const question =
      post.do === 'answer' ? newestQuestion(state, person, post.to && this.#people.get(post.to)) : null;
    const before = new Set(Object.keys(state.posts));
    const draft = await this.#send(person, post, question);
    if (!draft.done) {
      this.#ears.refused(post.line, draft.why);
      return;
    }
    const after = await this.#house.classes.load(classId);
    const sent = Object.values<Post>(after.posts).find(
      ({ id, person: by }) => !before.has(id) && by === person,
    );
    if (sent?.stage.stage === 'draft') await this.#act(person, { type: 'post-draft', post: sent.id });
  }

  /** Sends a draft as any channel would: read by the move's shape, so that an empty text is refused here too. */
  async #send(
    person: PersonId,
    post: RehearsedPost,
    question: Post | null,
  ): Promise<{ done: boolean; why: string }> {
    // An answer to nobody is sent all the same: it is screened before it is refused.
    const to = post.do === 'answer' ? (question?.id ?? 'none') : undefined;
    const fields = { do: post.do, text: post.text, word: post.word, question: to };
    try {
      return await this.#act(person, readMove('send-draft', fields));
    } catch (why) {
      if (why instanceof Fault) return { done: false, why: `${why.message}. ${why.remedy}` };
      throw why;
    }
  }

  async #practice(): Promise<ClassState['groups'][GroupId]['practice'] | undefined> {
    return (await this.#house.classes.load(classId)).groups[this.#group]?.practice;
  }

  async finished(): Promise<boolean> {
    return (await this.#practice())?.phase === 'none';
  }

  async paused(): Promise<boolean> {
    return (await this.#practice())?.phase === 'paused';
  }

  /** Nobody comes any more: the adult reads the rest with the group, as the practice's own note suggests. */
  async readTheRest(): Promise<void> {
    const practice = await this.#practice();
    if (practice === undefined || practice.phase === 'none') return;
    const state = await this.#house.classes.load(classId);
    const last = (state.shelf[practice.passage]?.reading.segments.length ?? 1) - 1;
    if (practice.phase === 'paused')
      await this.#act(this.#staff, { type: 'resume-practice', group: this.#group });
    const read = await this.#act(this.#staff, { type: 'read-live', group: this.#group, to: last });
    if (!read.done) await this.#must(this.#staff, { type: 'end-practice', group: this.#group });
  }
}

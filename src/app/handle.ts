import type { Reply } from '../../shared/channel.js';
import type { ClassEvent } from '../../shared/events.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import { Fault } from '../../shared/fault.js';
import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Judges } from '../../shared/judgements.js';
import type { Message } from '../../shared/messages.js';
import type { Act, Actor } from '../../shared/moves.js';
import type { Telling } from '../../shared/tellings.js';
import type { Calendar, Instant } from '../../shared/time.js';
import { decide } from '../practice/decide.js';
import { due } from '../practice/due.js';
import { evidenceOf } from '../practice/evidence-of.js';
import { evolve } from '../practice/evolve.js';
import type { ClassState } from '../practice/state.js';
import { inTalk } from '../practice/talk-of.js';
import { tell } from '../practice/tell.js';
import type { Commit, Store } from '../store/store.js';
import type { Classes } from './classes.js';
import type { Log } from './log.js';
import type { Outcome as Written } from './writer.js';

export interface HandleTools {
  readonly store: Store;
  readonly classes: Classes;
  readonly write: (commit: Commit) => Promise<Written>;
  readonly judges: Judges;
  readonly calendar: Calendar;
  readonly log: Log;
  /** Told after each commit, so that open pages and senders wake up. */
  readonly committed: (classId: ClassId, done: Done) => void;
}

/** What one move led to. */
export interface Done {
  readonly events: readonly ClassEvent[];
  readonly tellings: readonly { readonly telling: Telling; readonly at: Instant; readonly event: number }[];
}

interface Outcome extends Done {
  readonly state: ClassState;
  readonly evidence: readonly EvidenceRow[];
}

/** Evolves event by event, since each is told from the state right after it. */
function follow(before: ClassState, events: readonly ClassEvent[]): Outcome {
  let state = before;
  const tellings: { telling: Telling; at: Instant; event: number }[] = [];
  const evidence: EvidenceRow[] = [];
  for (const [index, event] of events.entries()) {
    const last = state;
    state = evolve(state, event);
    for (const telling of tell(state, event))
      tellings.push({ telling: inTalk(last, state, event, telling), at: event.at, event: index });
    evidence.push(...evidenceOf(state, event));
  }
  return { state, events, tellings, evidence };
}

/** A short message to one person in plain words. */
export function note(person: PersonId, text: string): Message {
  return {
    audience: { to: 'person', person },
    summary: text,
    blocks: [{ type: 'prose', prose: [{ text }] }],
  };
}

/** A refusal as a reply: nothing changed. A pupil is told what to do now and no more, since the rest is for grown-ups. */
export function refusalReply(by: Actor, message: string, remedy: string, toPupil = false): Reply {
  const why = `${message}. ${remedy}`;
  return { done: false, messages: [note(whoOf(by) ?? ('' as PersonId), toPupil ? remedy : why)], why };
}

/** Whether somebody who acts is a pupil of the class. */
export function isPupil(state: ClassState, by: Actor): boolean {
  const person = whoOf(by);
  return person !== undefined && state.people[person]?.role === 'pupil';
}

function whoOf(by: Actor): PersonId | undefined {
  return by === 'clock' || by === 'founder' ? undefined : by;
}

function replyOf(by: Actor, outcome: Done): Reply {
  const messages = outcome.tellings.flatMap(({ telling }) =>
    telling.do === 'say' && telling.message.audience.to === 'person' && telling.message.audience.person === by
      ? [telling.message]
      : [],
  );
  return { done: true, messages };
}

/** What an update was answered with when it came the first time, null where it is new. A refusal whose words have gone since still says what to do. */
async function answeredBefore(
  store: Store,
  { classId, by }: Act,
  updateId: string | null,
): Promise<Reply | null> {
  const stored = updateId === null ? null : await store.reply(classId, updateId);
  if (stored === null) return null;
  const before = JSON.parse(stored) as Reply;
  if (before.done || before.messages.length > 0) return before;
  return refusalReply(by, 'Cannot do this again, expected something new', 'Go back to your page.', true);
}

/**
 * The life of a move: the class decides, and events, reply, messages, evidence and due time are committed in one
 * transaction; only then is it acknowledged by returning. An update that was seen before writes nothing, which the commit
 * itself finds out, and is answered as it was.
 */
export async function handle(tools: HandleTools, act: Act, updateId: string | null): Promise<Reply> {
  const { store, classes } = tools;
  return classes.alone(act.classId, async () => {
    for (let tries = 0; tries < 3; tries += 1) {
      const state = await classes.load(act.classId);
      const decision = decide(state, act, { judges: tools.judges, calendar: tools.calendar });
      if ('refusal' in decision) {
        // What was done the first time may well be refused the second.
        const before = await answeredBefore(store, act, updateId);
        if (before !== null) return before;
        const { message, remedy } = decision.refusal;
        const reply = refusalReply(act.by, message, remedy, isPupil(state, act.by));
        if (updateId !== null)
          await store.keepReply(act.classId, updateId, JSON.stringify(reply), act.at, whoOf(act.by));
        return reply;
      }
      const outcome = follow(state, decision.events);
      const reply = replyOf(act.by, outcome);
      if (decision.events.length === 0 && updateId === null) return reply;
      const written = await tools.write({
        classId: act.classId,
        expectedVersion: state.version,
        events: outcome.events,
        inbox: updateId === null ? null : { updateId, reply: JSON.stringify(reply) },
        tellings: outcome.tellings,
        evidence: outcome.evidence,
        dueAt: due(outcome.state),
      });
      if ('duplicate' in written) return (await answeredBefore(store, act, updateId)) ?? reply;
      if ('conflict' in written) {
        classes.drop(act.classId);
        continue;
      }
      classes.keep(act.classId, outcome.state);
      await afterwards(tools, act.classId, outcome);
      return reply;
    }
    throw new Fault(
      'in use',
      'Cannot keep this, expected to be the only one writing, got another writer thrice',
      'Try again.',
    );
  });
}

/** Tells what is no move of the class, such as a platform that takes no messages: stored, shown and sent as any message, without an event. */
export async function tellBeside(
  tools: Pick<HandleTools, 'classes' | 'write' | 'committed'>,
  classId: ClassId,
  telling: Telling,
  at: Instant,
): Promise<void> {
  await tools.classes.alone(classId, async () => {
    const state = await tools.classes.load(classId);
    const tellings = [{ telling, at, event: 0 }];
    await tools.write({
      classId,
      expectedVersion: state.version,
      events: [],
      inbox: null,
      tellings,
      evidence: [],
      dueAt: due(state),
    });
    tools.committed(classId, { events: [], tellings });
  });
}

/** An event as anybody but the store may see it: an alarm's words are sealed from the moment they are kept. */
function sealed(event: ClassEvent): ClassEvent {
  if (event.type !== 'alarm-raised') return event;
  return { ...event, words: { kind: 'sealed', by: event.words.by, ref: event.alarm } };
}

/** What must follow a commit: an erasure goes through all that is kept; then whoever listens is told. */
async function afterwards(tools: HandleTools, classId: ClassId, outcome: Outcome): Promise<void> {
  for (const event of outcome.events) {
    if (event.type === 'second-key-reset') await tools.store.secondKey(classId, event.person, () => null);
    if (event.type !== 'person-erased') continue;
    await tools.store.erasePerson(classId, event.person);
    tools.classes.drop(classId);
  }
  tools.log.debug(
    { classId, version: outcome.state.version, events: outcome.events.map(({ type }) => type) },
    'kept',
  );
  tools.committed(classId, { ...outcome, events: outcome.events.map(sealed) });
}

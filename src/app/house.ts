import { randomInt } from 'node:crypto';
import { slashCommands } from '../../commands/all.js';
import type { House, Profile, Reply, TypedCommand, Update, Who } from '../../shared/channel.js';
import { Fault } from '../../shared/fault.js';
import type { ClassId } from '../../shared/ids.js';
import type { Judges } from '../../shared/judgements.js';
import { isLookName, mayLook, readLook } from '../../shared/looks.js';
import type { FieldOption } from '../../shared/messages.js';
import { readMove, type Act, type Move } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import { namedAdults } from '../../shared/roles.js';
import type { SuggestionSource } from '../../shared/slash-command.js';
import type { Telling } from '../../shared/tellings.js';
import type { Calendar, Clock } from '../../shared/time.js';
import { feedWords } from '../coaching/feed-words.js';
import { lookAt } from '../looks/look-at.js';
import { due } from '../practice/due.js';
import type { Person } from '../practice/state.js';
import type { Store } from '../store/store.js';
import { openClasses, type Classes } from './classes.js';
import { whenWords } from './calendar.js';
import { readFeed } from './feed.js';
import { openComingIn } from './coming-in.js';
import { openDoors, type Doors } from './doors.js';
import { handle, isPupil, note, refusalReply, tellBeside, type Done, type HandleTools } from './handle.js';
import type { Log } from './log.js';
import { mendPlaces } from './mend-places.js';
import { openSecondKeys, type SecondKeys } from './second-keys.js';
import { openSlips } from './slips.js';
import { fieldsOf, findAction, suggestionsFor } from './typed-command.js';
import { openWriter } from './writer.js';

export interface HouseDeps {
  readonly store: Store;
  readonly judges: Judges;
  readonly calendar: Calendar;
  readonly clock: Clock;
  readonly log: Log;
  /** Signs and hashes secrets. */
  readonly key: string;
  /** What links are built on; asked for when a link is made, since a free port is known only then. */
  readonly baseUrl: () => string;
  /** Chance for the lot; tests and rehearsals hand in their own. */
  readonly seed?: () => number;
}

/** The house with what only the app itself asks of it. */
export interface OpenHouse extends House {
  readonly classes: Classes;
  readonly doors: Doors;
  readonly keys: SecondKeys;
  /** Makes one act happen, outside any channel; for the clock, a founder, a rehearsal. */
  act(
    act: Omit<Act, 'seed' | 'given'> & Partial<Pick<Act, 'seed' | 'given'>>,
    updateId?: string,
  ): Promise<Reply>;
  /** Lets time pass for a class: everything that is due by now. */
  passTime(classId: ClassId): Promise<void>;
  /** Tells what is no move of the class. */
  tellBeside(classId: ClassId, telling: Telling): Promise<void>;
  /** Calls back after each commit, with what it led to. */
  watch(seen: (classId: ClassId, done: Done) => void): () => void;
}

/** Opens the house over a store. */
export function openHouse(deps: HouseDeps): OpenHouse {
  const { store, clock, calendar } = deps;
  const classes = openClasses(store);
  const now = (): number => clock.now();
  const doors = openDoors(store, deps.key, now);
  const keys = openSecondKeys(store, deps.key, now);
  const slips = openSlips({
    doors,
    classes,
    baseUrl: deps.baseUrl,
    now,
    tell: (classId, telling) => tellBeside(tools, classId, telling, clock.now()),
  });
  const watchers = new Set<(classId: ClassId, done: Done) => void>();
  const tools: HandleTools = {
    store,
    classes,
    write: openWriter(store),
    judges: deps.judges,
    calendar,
    log: deps.log,
    committed: (classId, done) => {
      for (const seen of watchers) seen(classId, done);
    },
  };
  const seed = deps.seed ?? (() => randomInt(2 ** 31));

  const personOf = async (who: Who): Promise<Person | null> => {
    const person = (await classes.load(who.classId)).people[who.person];
    return person && !person.removed ? person : null;
  };
  const act: OpenHouse['act'] = (one, updateId) =>
    handle(tools, { seed: seed(), given: 'typed', ...one }, updateId ?? null);

  const moveAs = async (update: Update): Promise<Reply> => {
    let move: Move;
    try {
      move = readMove(update.move, update.fields);
    } catch (why) {
      if (!(why instanceof Fault)) throw why;
      const state = await classes.load(update.who.classId);
      return refusalReply(update.who.person, why.message, why.remedy, isPupil(state, update.who.person));
    }
    return act(
      {
        classId: update.who.classId,
        by: update.who.person,
        at: clock.now(),
        given: update.given ?? 'typed',
        move,
      },
      update.id,
    );
  };

  const lookAs = async (
    who: Who,
    name: string,
    fields: Readonly<Record<string, string | undefined>>,
  ): Promise<Reply> => {
    try {
      const person = await personOf(who);
      if (!person || !isLookName(name) || !mayLook[name].includes(person.role)) {
        throw new Fault(
          'not allowed',
          'Cannot show that, expected somebody who may see it',
          'Go back to your own page.',
        );
      }
      const state = await classes.load(who.classId);
      const at = clock.now();
      const port = {
        store,
        judges: deps.judges,
        when: (instant: number) => whenWords(instant, at, state.settings.zone),
        commands: slashCommands,
      };
      return { done: true, messages: await lookAt(port, state, who.person, readLook(name, fields), at) };
    } catch (why) {
      if (why instanceof Fault) return refusalReply(who.person, why.message, why.remedy);
      throw why;
    }
  };

  const command = async (who: Who, updateId: string, typed: TypedCommand): Promise<Reply> => {
    try {
      const action = findAction(typed);
      const person = await personOf(who);
      if (!person || !action.who.includes(person.role)) {
        throw new Fault(
          'not allowed',
          `Cannot do /${typed.name} ${typed.action}, expected ${action.who.join(' or ')}`,
          'Ask somebody who may.',
        );
      }
      const fields = fieldsOf(await classes.load(who.classId), action, typed.options);
      if ('door' in action.does) return await slips.door(who, action.does.door, fields);
      if ('look' in action.does) return await lookAs(who, action.does.look, fields);
      const reply = await moveAs({ id: updateId, who, move: action.does.move, fields });
      return reply.done && reply.messages.length === 0
        ? { done: true, messages: [note(who.person, 'Done.')] }
        : reply;
    } catch (why) {
      if (why instanceof Fault) return refusalReply(who.person, why.message, why.remedy);
      throw why;
    }
  };

  const comingIn = openComingIn({ doors, keys, classes, store, move: moveAs });

  const house: OpenHouse = {
    classes,
    doors,
    keys,
    act,
    move: moveAs,
    look: lookAs,
    command,
    async suggest(who, source: SuggestionSource, typed): Promise<readonly FieldOption[]> {
      if (!(await personOf(who))) return [];
      const wanted = typed.trim().toLowerCase();
      return suggestionsFor(await classes.load(who.classId), source)
        .filter(({ label }) => label.toLowerCase().includes(wanted))
        .slice(0, 25);
    },
    async feed(who, after) {
      const person = await personOf(who);
      return person ? readFeed(store, await classes.load(who.classId), person, after) : [];
    },
    listen(who, changed) {
      const seen = (classId: ClassId): void => {
        if (classId === who.classId) changed();
      };
      watchers.add(seen);
      return () => watchers.delete(seen);
    },
    async profile(who): Promise<Profile | null> {
      const person = await personOf(who);
      if (!person) return null;
      const state = await classes.load(who.classId);
      return {
        ...who,
        nickname: wordsOf(person.nickname) ?? 'somebody',
        role: person.role,
        register: person.register ?? state.settings.register,
        group: person.group,
        className: state.name,
      };
    },
    ...comingIn,
    session: (id) => doors.session(id),
    signOut: (id) => doors.signOut(id),
    makeSlip: slips.makeSlip,
    now: () => clock.now(),
    async identify(channel, tenant, user) {
      const found = await store.identity(channel, tenant, user);
      return found && (await personOf(found)) ? { classId: found.classId, person: found.person } : null;
    },
    async bindPlace(who, channel, tenant, room, audience) {
      const person = await personOf(who);
      const named = namedAdults.some((role) => role === person?.role);
      const runs = person !== null && ['tutor', 'teacher', 'administrator'].includes(person.role);
      if (!runs && !(named && audience.to === 'staff')) {
        return refusalReply(
          who.person,
          'Cannot bind this place, expected a tutor, teacher or administrator',
          'Ask one of them.',
        );
      }
      // A named adult's place is theirs alone: calls come there, and nothing else of the class.
      const bound = runs ? audience : ({ to: 'person', person: who.person } as const);
      const before = await store.places(who.classId);
      const taken = before.some(
        ({ place, audience: of }) =>
          place.channel === channel && place.tenant === tenant && place.room === room && of.to !== 'person',
      );
      if (!runs && taken) {
        return refusalReply(
          who.person,
          'Cannot call you here, expected a place of your own, got one that others of the class read',
          'Use a private place that only you see.',
        );
      }
      await store.bindPlace(who.classId, { channel, tenant, room }, bound);
      await mendPlaces(store, who.classId, { channel, tenant, room }, bound, (telling) =>
        tellBeside(tools, who.classId, telling, clock.now()),
      );
      return { done: true, messages: [note(who.person, feedWords.done.words)] };
    },
    async passTime(classId) {
      const state = await classes.load(classId);
      const next = due(state);
      if (next === null || next > clock.now()) return;
      await act({ classId, by: 'clock', at: clock.now(), move: { type: 'time-passed' } });
    },
    tellBeside: (classId, telling) => tellBeside(tools, classId, telling, clock.now()),
    watch(seen) {
      watchers.add(seen);
      return () => watchers.delete(seen);
    },
  };
  return house;
}

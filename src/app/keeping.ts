import type { ClassId } from '../../shared/ids.js';
import type { Calendar, Clock, Instant, LocalDate } from '../../shared/time.js';
import type { Settings } from '../practice/state.js';
import type { Store, Unhurried } from '../store/store.js';
import type { OpenHouse } from './house.js';
import type { Log } from './log.js';

/** Instants of a class before which things have had their time. */
export interface Cuts {
  readonly words: Instant;
  readonly levels: Instant;
  readonly alarmWords: Instant;
}

const dayLength = 24 * 3600_000;
/** Days after which words go whatever end of term is set, so that a slip of the pen keeps nothing for ever. */
const longestEver = 366;
/** The hour of the night, in minutes, at which the day's work begins. */
const night = 3 * 60;

function dateOf(day: string): LocalDate {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  return { year, month, day: date };
}

/** The end of a day in the class's zone. */
function endOf(date: LocalDate, { zone }: Settings, calendar: Calendar): Instant {
  return calendar.instant(calendar.plusDays(date, 1), 0, zone);
}

/** Words go some days after the end of their term; those that no end of term is ahead of, some days after they were said. */
function wordsCut(settings: Settings, now: Instant, calendar: Calendar): Instant {
  const longest = now - settings.longestKept * dayLength;
  if (settings.termEnds === null) return longest;
  const term = dateOf(settings.termEnds);
  const goneAt = endOf(calendar.plusDays(term, settings.wordsKept), settings, calendar);
  if (now < goneAt) return now - longestEver * dayLength;
  return Math.max(endOf(term, settings, calendar), longest);
}

/** The end of the school year that ended last, or so many years before it. */
function yearCut(settings: Settings, now: Instant, calendar: Calendar, yearsBefore: number): Instant {
  const [month = 7, day = 31] = settings.yearEnds.split('-').map(Number);
  const { year } = calendar.local(now, settings.zone);
  const inYear = (of: number): Instant => endOf({ year: of, month, day }, settings, calendar);
  const last = inYear(year) <= now ? year : year - 1;
  return inYear(last - yearsBefore);
}

/** What of a class has had its time, by its settings. */
export function cutsOf(settings: Settings, now: Instant, calendar: Calendar): Cuts {
  return {
    words: wordsCut(settings, now, calendar),
    levels: yearCut(settings, now, calendar, 0),
    alarmWords: yearCut(settings, now, calendar, settings.alarmWordsKept),
  };
}

export interface KeepingTools {
  readonly store: Store;
  readonly house: OpenHouse;
  readonly calendar: Calendar;
  readonly clock: Clock;
  readonly log: Log;
}

class Stopped extends Error {}

/** How the work lets posts have their turn, and ends early where it is stopped: what is left is done the next time. */
function unhurried({ house }: KeepingTools, classId: ClassId, stopped: () => boolean): Unhurried {
  return {
    async pause() {
      await new Promise((resolve) => setImmediate(resolve));
      if (stopped()) throw new Stopped();
    },
    alone: (work) =>
      house.classes.alone(classId, async () => {
        await work();
        house.classes.drop(classId);
      }),
  };
}

async function keepClass(tools: KeepingTools, classId: ClassId, stopped: () => boolean): Promise<number> {
  const { store, house, calendar, clock, log } = tools;
  const { settings } = await house.classes.load(classId);
  const cuts = cutsOf(settings, clock.now(), calendar);
  const how = unhurried(tools, classId, stopped);
  const words = await store.expireWords(classId, cuts.words, how);
  const levels = await store.expireLevels(classId, cuts.levels, how);
  const alarmWords = await store.expireSealed(classId, cuts.alarmWords);
  const gone = words + levels + alarmWords;
  if (gone > 0) log.info({ classId, words, levels, alarmWords }, 'what has had its time is gone');
  return gone;
}

/** Lets all that has had its time go, class by class; one that fails is tried again the next time and stops no other. */
export async function keep(tools: KeepingTools, stopped: () => boolean = () => false): Promise<void> {
  const { store, house, clock, log } = tools;
  const classes = await store.classes();
  let gone = 0;
  for (const classId of classes) {
    try {
      gone += await keepClass(tools, classId, stopped);
    } catch (why) {
      if (why instanceof Stopped) return;
      log.error({ classId, code: why instanceof Error ? why.name : 'unknown' }, 'keeping failed for a class');
    }
  }
  await store.expireDoors(clock.now());
  if (gone === 0) return;
  // Whoever was just reading a class while its words went has read them: nothing of that stays in memory.
  for (const classId of classes) house.classes.drop(classId);
  await store.sweep();
}

/** When to keep again: at three in the night that comes next, in the zone of the first class, since one folder is one school. */
export async function nextKeeping({ store, house, calendar, clock }: KeepingTools): Promise<Instant> {
  const now = clock.now();
  const [first] = await store.classes();
  const zone = first === undefined ? 'UTC' : (await house.classes.load(first)).settings.zone;
  const today = calendar.local(now, zone);
  const tonight = calendar.instant(today, night, zone);
  return tonight > now ? tonight : calendar.instant(calendar.plusDays(today, 1), night, zone);
}

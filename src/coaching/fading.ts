import type { EvidenceRow } from '../../shared/evidence.js';
import { helps, strategies, type Help, type Level, type Strategy } from '../../shared/strategies.js';

/**
 * When help fades and when it comes back (common practice, no source; the numbers are settings).
 * An adult's leading (modelled, shared) is withdrawn when most of the last four or five turns are adequate; stems
 * (guided) are dropped after some good turns in a row; two turns in a row below bring one step of help back. Only turns
 * given under the present help count, and only those given the same way as the latest (typed, said ...), since kinds are
 * never pooled.
 */
export interface FadingSettings {
  /** An adequate turn. */
  readonly adequate: Level;
  /** Good turns in a row after which stems are dropped; common practice says 2 or 3. */
  readonly goodRun: number;
  /** Turns in a row below, after which help comes back. */
  readonly poorRun: number;
  /** Turns looked at before an adult stops leading: at least, at most. */
  readonly window: readonly [number, number];
  /** Share of them that must be adequate; common practice says 70 to 80 %. */
  readonly share: number;
  /** Whether the texts have just become harder, when no help is taken away. */
  readonly harderText: boolean;
}

/** Defaults, common practice, no source. */
export const fadingDefaults: FadingSettings = {
  adequate: 2,
  goodRun: 3,
  poorRun: 2,
  window: [4, 5],
  share: 0.75,
  harderText: false,
};

type Turn = EvidenceRow & { readonly level: Level };

/** Turns of a strategy in order of time, settled ones only. */
function turnsOf(rows: readonly EvidenceRow[], strategy: Strategy): readonly Turn[] {
  return rows
    .filter((row): row is Turn => row.do === strategy && row.level !== null)
    .toSorted((a, b) => a.at - b.at);
}

/** The latest unbroken run of turns under one help, given as the latest was. */
function runUnder(turns: readonly Turn[], help: Help): readonly Turn[] {
  const given = turns.at(-1)?.given;
  const from = turns.findLastIndex((turn) => turn.help !== help) + 1;
  return turns.slice(from).filter((turn) => turn.given === given);
}

function stepFrom(help: Help, by: 1 | -1): Help | null {
  return helps[helps.indexOf(help) + by] ?? null;
}

/** The next help by the turns of this strategy alone. */
function byOwnTurns(turns: readonly Turn[], help: Help, settings: FadingSettings): Help | null {
  const run = runUnder(turns, help);
  const good = (turn: Turn) => turn.level >= settings.adequate;
  const last = run.slice(-settings.poorRun);
  if (last.length === settings.poorRun && !last.some(good)) return stepFrom(help, -1);
  if (settings.harderText) return null;
  switch (help) {
    case 'modelled':
    case 'shared': {
      const looked = run.slice(-settings.window[1]);
      if (looked.length < settings.window[0]) return null;
      return looked.filter(good).length / looked.length >= settings.share ? stepFrom(help, 1) : null;
    }
    case 'guided': {
      const streak = run.slice(-settings.goodRun);
      return streak.length === settings.goodRun && streak.every(good) ? stepFrom(help, 1) : null;
    }
    case 'independent':
      return null;
    default:
      return help satisfies never;
  }
}

function isLess(help: Help | null, than: Help): boolean {
  return help !== null && helps.indexOf(help) > helps.indexOf(than);
}

/** Whether a strategy is due to fade by its latest turns; whether it faded on a day, as its turns show. */
function fadeState(
  turns: readonly Turn[],
  day: string,
  settings: FadingSettings,
): 'due' | 'faded' | 'neither' {
  const latest = turns.at(-1);
  if (latest === undefined) return 'neither';
  if (isLess(byOwnTurns(turns, latest.help, settings), latest.help)) return 'due';
  const before = turns.findLast((turn) => turn.help !== latest.help);
  return before?.day === day && isLess(latest.help, before.help) ? 'faded' : 'neither';
}

/**
 * The help that a pupil gets with a strategy from now on, or null where it stays. `rows` are one pupil's, of any
 * strategy. All four strategies never lose help at once: where all are due or faded today, the last one due waits.
 */
export function fade(
  rows: readonly EvidenceRow[],
  strategy: Strategy,
  help: Help,
  settings: FadingSettings = fadingDefaults,
): Help | null {
  const turns = turnsOf(rows, strategy);
  const next = byOwnTurns(turns, help, settings);
  if (!isLess(next, help)) return next;
  const day = turns.at(-1)?.day ?? '';
  const others = strategies
    .filter((other) => other !== strategy)
    .map((other) => ({ other, state: fadeState(turnsOf(rows, other), day, settings) }));
  const allAtOnce = others.every(({ state }) => state !== 'neither');
  const laterDue = others.some(
    ({ other, state }) => state === 'due' && strategies.indexOf(other) > strategies.indexOf(strategy),
  );
  return allAtOnce && !laterDue ? null : next;
}

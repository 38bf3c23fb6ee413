import { pino, type Logger } from 'pino';

export type Log = Logger;

/** The log: ids, counts and codes only, to standard error; never a pupil's words, never a token. */
export function openLog(level: string): Log {
  return pino(
    { level, base: null, timestamp: pino.stdTimeFunctions.isoTime },
    pino.destination({ dest: 2, sync: true }),
  );
}

/** A log that keeps silent, for commands that print results only and for tests. */
export const silentLog: Log = pino({ level: 'silent' });

/** A point in time: milliseconds since 1970-01-01T00:00Z. */
export type Instant = number;

/** A calendar day in some zone; month 1..12, day 1..31. */
export interface LocalDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** A wall-clock reading in some zone; weekday 1 Monday .. 7 Sunday, minute of the day 0..1439. */
export interface LocalTime extends LocalDate {
  readonly weekday: number;
  readonly minute: number;
}

/** Converts between instants and wall clocks of IANA zones; pure, handed in because the pure rooms have no zone data. */
export interface Calendar {
  /** The wall clock of a zone at an instant. */
  local(at: Instant, zone: string): LocalTime;
  /** The instant of a wall-clock minute; a minute that a daylight-saving change skips gives the one that is as much later as the gap is long, a doubled one the earlier. */
  instant(date: LocalDate, minute: number, zone: string): Instant;
  /** The day a number of days after another. */
  plusDays(date: LocalDate, days: number): LocalDate;
  /** Whether the zone is a known IANA name. */
  knows(zone: string): boolean;
}

/** Tells the time; the one source of "now" in the shell. */
export interface Clock {
  now(): Instant;
}

import { Fault } from '../../shared/fault.js';
import type { Chance } from './chance.js';

/** One input that is ready to be given. */
export interface Input {
  /** What it is, for the report of a failure. */
  readonly shown: unknown;
  /** Gives it and checks what came of it; throws what must not be. */
  run(): void | Promise<void>;
}

/** A way into the program that inputs are made for. */
export interface Entrance {
  readonly name: string;
  /** Its part of all inputs, in hundredths. */
  readonly share: number;
  open(chance: Chance): Promise<{ next(): Promise<Input> | Input; close(): Promise<void> }>;
}

/** Throws what must not be. */
export function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(what);
}

/** Lets pass what is a clear `Fault`, which says what to do; anything else that is thrown must not be. */
export function mustBeClear(why: unknown): void {
  if (!(why instanceof Fault)) throw why;
  must(/^(?:Cannot|This|Write)/u.test(why.message), `a fault says "${why.message.slice(0, 80)}"`);
  must(why.remedy.trim() !== '', `a fault without a remedy: ${why.message.slice(0, 80)}`);
}

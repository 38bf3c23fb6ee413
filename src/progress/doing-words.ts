import type { Doing, Strategy } from '../../shared/strategies.js';
import { fill } from '../coaching/catalogue.js';
import { digestWords } from '../coaching/digest-words.js';

/** What a try is called to staff: "question", "sum-up", "prediction". */
export function doingWords(doing: Doing): string {
  return fill(digestWords[`a ${doing}`]);
}

/** What a strategy is called to staff: "questioning", "summing up". */
export function strategyWords(strategy: Strategy): string {
  return fill(digestWords[`at ${strategy}`]);
}

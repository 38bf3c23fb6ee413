import type { Doing } from '../../shared/strategies.js';
import { fill } from '../coaching/catalogue.js';
import { digestWords } from '../coaching/digest-words.js';

/** What a try is called to staff: "question", "sum-up", "prediction". */
export function doingWords(doing: Doing): string {
  return fill(digestWords[`a ${doing}`]);
}

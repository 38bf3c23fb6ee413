import type { Field } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { optionsOf } from '../render/modal.js';

function plainWord(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/**
 * What a field stands for that had too many options to be picked and was typed: the option that is called so, else the
 * first that begins so. Null where there is none; every other field is taken as it came.
 */
export function valueOf(field: Field, given: string): string | null {
  const options = optionsOf(field);
  if (options === null || given.trim() === '' || options.length <= limits.selectOptions) return given;
  if (options.some(({ value }) => value === given.trim())) return given.trim();
  const wanted = plainWord(given);
  if (wanted === '') return null;
  const found =
    options.find(({ label }) => plainWord(label) === wanted) ??
    options.find(({ label }) => plainWord(label).startsWith(wanted));
  return found?.value ?? null;
}

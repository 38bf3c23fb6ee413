import type { Analysis } from '../text/analysis.js';

const denials = new Set(
  "not no never none nobody nothing without cannot can't cant don't dont doesn't doesnt didn't didnt isn't isnt aren't arent wasn't wasnt weren't werent won't wont wouldn't wouldnt couldn't couldnt shouldn't shouldnt hardly".split(
    ' ',
  ),
);

/** How often a text denies. */
export function denialsIn({ tokens }: Analysis): number {
  return tokens.filter(({ lower }) => denials.has(lower)).length;
}

/** Whether one of two texts denies something and the other nothing: what is denied, the computer can't know. */
export function deniesOtherwise(text: Analysis, gist: Analysis): boolean {
  return denialsIn(text) > 0 !== denialsIn(gist) > 0;
}

/** All matches of a global pattern, without the copy of the pattern that `matchAll` makes each time (which costs a compilation). */
export function eachMatch(pattern: RegExp, text: string): RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  pattern.lastIndex = 0;
  for (let match = pattern.exec(text); match !== null; match = pattern.exec(text)) {
    found.push(match);
    if (match[0] === '') pattern.lastIndex += 1;
  }
  return found;
}

/** At most this many matches of a rule are looked at; ours. */
const mostMatches = 12;

/** As `eachMatch`, but also those that begin inside an earlier match, so that what one sentence excuses doesn't hide the next. */
export function overlapping(pattern: RegExp, text: string): RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  pattern.lastIndex = 0;
  for (
    let match = pattern.exec(text);
    match !== null && found.length < mostMatches;
    match = pattern.exec(text)
  ) {
    found.push(match);
    pattern.lastIndex = match.index + Math.max(1, /^\S+\s*/u.exec(match[0])?.[0].length ?? 1);
  }
  return found;
}

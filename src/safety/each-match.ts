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

/** Longest line in bytes, its end not counted. */
export const longestLine = 256 * 1024;

/** A line of a JSON Lines stream: its value, or why it can't be read. Lines count physical lines from 1. */
export type JsonLine =
  { readonly line: number; readonly value: unknown } | { readonly line: number; readonly fault: string };

const utf8 = new TextDecoder('utf-8', { fatal: true });

function parse(line: number, bytes: Uint8Array): JsonLine | null {
  let text: string;
  try {
    text = utf8.decode(bytes);
  } catch {
    return { line, fault: 'Cannot read this line, expected UTF-8, got other bytes' };
  }
  if (line === 1) text = text.replace(/^\uFEFF/u, '');
  if (text.trim() === '') return null;
  try {
    return { line, value: JSON.parse(text) as unknown };
  } catch {
    return { line, fault: 'Cannot read this line, expected one JSON object, got something else' };
  }
}

/** Cuts a byte stream into JSON lines; CRLF, blank lines and a byte-order mark are accepted; memory stays within one longest line. */
export async function* readJsonLines(input: AsyncIterable<Uint8Array>): AsyncGenerator<JsonLine> {
  let parts: Uint8Array[] = [];
  let size = 0;
  let line = 1;
  const take = (): JsonLine | null => {
    const result: JsonLine | null =
      size > longestLine
        ? { line, fault: `Cannot read this line, expected at most ${longestLine} bytes, got more` }
        : parse(line, Buffer.concat(parts));
    parts = [];
    size = 0;
    line += 1;
    return result;
  };
  for await (const chunk of input) {
    let start = 0;
    for (let end = chunk.indexOf(10); end !== -1; end = chunk.indexOf(10, start)) {
      size += end - start;
      if (size <= longestLine + 1) parts.push(chunk.subarray(start, end));
      if (size === longestLine + 1 && chunk[end - 1] === 13) size -= 1;
      const result = take();
      if (result) yield result;
      start = end + 1;
    }
    size += chunk.length - start;
    if (size <= longestLine + 1) parts.push(chunk.subarray(start));
    else parts = [];
  }
  if (size > 0) {
    const result = take();
    if (result) yield result;
  }
}

/** The messages on Discord that one of ours became, in order; `laidOut` since such a message can't go back to a plain one. */
export interface SentId {
  readonly laidOut: boolean;
  readonly ids: readonly string[];
}

/** As it is kept for replace and withdraw: "123" or "v:123,124". */
export function writeSentId({ laidOut, ids }: SentId): string {
  return (laidOut ? 'v:' : '') + ids.join(',');
}

/** Reads it back; no ids where there was none. */
export function readSentId(text: string | null): SentId {
  const laidOut = text?.startsWith('v:') ?? false;
  const ids = (text ?? '')
    .replace(/^v:/u, '')
    .split(',')
    .filter((id) => /^\d+$/.test(id));
  return { laidOut, ids };
}

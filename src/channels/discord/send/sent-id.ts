/** The messages on Discord that one of ours became, in order; `laidOut` since such a message can't go back to a plain one, `thread` where they don't stand in the place itself. */
export interface SentId {
  readonly laidOut: boolean;
  readonly ids: readonly string[];
  readonly thread: string | null;
}

/** As it is kept for replace and withdraw: "123", "v:123,124", in a thread "120/v:123,124". */
export function writeSentId({ laidOut, ids, thread }: SentId): string {
  return (thread === null ? '' : `${thread}/`) + (laidOut ? 'v:' : '') + ids.join(',');
}

/** Reads it back; no ids where there was none. */
export function readSentId(text: string | null): SentId {
  const [, thread, laidOut, ids] = /^(?:(\d+)\/)?(v:)?(.*)$/su.exec(text ?? '') ?? [];
  return {
    laidOut: laidOut !== undefined,
    ids: (ids ?? '').split(',').filter((id) => /^\d+$/.test(id)),
    thread: thread ?? null,
  };
}

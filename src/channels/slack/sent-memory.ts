/** What this process knows of its messages: which arrived, of which that is in doubt, and where it has posted before. */
export interface SentMemory {
  idOf(nonce: string): string | undefined;
  arrived(nonce: string, place: string, id: string): void;
  doubt(nonce: string): void;
  isDoubtful(nonce: string): boolean;
  /** The first message to a place after a start may be one whose sending a crash cut off. */
  mayStand(nonce: string, place: string): boolean;
}

/** How many nonces are remembered. */
const remembered = 2000;

/** Opens an empty memory. */
export function openMemory(): SentMemory {
  const sent = new Map<string, string>();
  const doubtful = new Set<string>();
  const places = new Set<string>();
  return {
    idOf: (nonce) => sent.get(nonce),
    arrived(nonce, place, id) {
      doubtful.delete(nonce);
      places.add(place);
      sent.set(nonce, id);
      const [oldest] = sent.keys();
      if (sent.size > remembered && oldest !== undefined) sent.delete(oldest);
    },
    doubt: (nonce) => void doubtful.add(nonce),
    isDoubtful: (nonce) => doubtful.has(nonce),
    mayStand: (nonce, place) => doubtful.has(nonce) || !places.has(place),
  };
}

import { Pool } from 'undici';

/** One request that is ready to be sent. */
export interface Ready {
  readonly body: string;
  readonly headers: Readonly<Record<string, string>>;
}

/** A way to a bot: sends one update and resolves with what it was answered, when it was answered. */
export interface Line {
  send(ready: Ready): Promise<string>;
  close(): Promise<void>;
}

/** A line of as many connections as are in flight to a path of a server on this machine. */
export function httpLine(port: number, path: string, connections: number): Line {
  const pool = new Pool(`http://127.0.0.1:${port}`, { connections });
  return {
    async send({ body, headers }) {
      const { statusCode, body: answer } = await pool.request({ path, method: 'POST', body, headers });
      const text = await answer.text();
      if (statusCode !== 200) throw new Error(`Cannot measure, expected 200, got ${statusCode} ${text}`);
      return text;
    },
    close: () => pool.close(),
  };
}

/** How one round went. */
export interface Round {
  /** Answers a second. */
  readonly rate: number;
  /** Milliseconds until each answer. */
  readonly waits: readonly number[];
}

/** Sends all requests with so many in flight at once; `check` throws for an answer that isn't the one hoped for. */
export async function sendAll(
  line: Line,
  requests: readonly Ready[],
  inFlight: number,
  check: (answer: string) => void,
): Promise<Round> {
  const waits: number[] = [];
  let next = 0;
  const sender = async (): Promise<void> => {
    for (let one = requests[next++]; one !== undefined; one = requests[next++]) {
      const from = performance.now();
      check(await line.send(one));
      waits.push(performance.now() - from);
    }
  };
  const from = performance.now();
  await Promise.all(Array.from({ length: inFlight }, sender));
  return { rate: (requests.length / (performance.now() - from)) * 1000, waits };
}

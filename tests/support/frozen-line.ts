import { createServer, connect, type AddressInfo, type Socket } from 'node:net';

/** A line to a server of this machine that can freeze: what is sent on the lines that are open then goes nowhere, and nobody is told. */
export interface FrozenLine {
  readonly port: number;
  freeze(): void;
  stop(): Promise<void>;
}

/** Opens a line to a port; lines that are opened after it froze work. */
export async function frozenLine(to: number): Promise<FrozenLine> {
  const ends = new Set<Socket>();
  let dead = new Set<Socket>();
  const server = createServer((near) => {
    const far = connect(to, '127.0.0.1');
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      ends.add(one);
      one.on('error', () => undefined);
      one.on('close', () => {
        ends.delete(one);
        other.destroy();
      });
      one.on('data', (data) => {
        if (!dead.has(one)) other.write(data);
      });
    }
  });
  await new Promise<void>((settle) => server.listen(0, '127.0.0.1', settle));
  return {
    port: (server.address() as AddressInfo).port,
    freeze() {
      dead = new Set(ends);
    },
    async stop() {
      for (const one of ends) one.destroy();
      await new Promise((settle) => server.close(settle));
    },
  };
}

import { parentPort, workerData } from 'node:worker_threads';
import { Fault } from '../../../shared/fault.js';
import { evaluations } from './registry.js';
import type { Row } from './row.js';

/** What a thread that measures is asked to do: evaluations by name, the next as each is done. */
export interface MeasureData {
  readonly data: string;
}

/** What it says back. */
export type Measured =
  | { readonly name: string; readonly share: number }
  | { readonly name: string; readonly rows: readonly Row[] }
  | { readonly name: string; readonly fault: PlainFault };

/** A fault as it crosses from thread to thread. */
export type PlainFault = Pick<Fault, 'code' | 'message' | 'remedy'>;

function plainFault(why: unknown): PlainFault {
  if (why instanceof Fault) return { code: why.code, message: why.message, remedy: why.remedy };
  throw why;
}

/** Measures what it is told, one judge after another, in a thread of its own. */
function listen(): void {
  const port = parentPort;
  if (port === null) return;
  const { data } = workerData as MeasureData;
  port.on('message', (name: string) => {
    const evaluation = evaluations.find((one) => one.name === name);
    const show = (share: number): void => port.postMessage({ name, share } satisfies Measured);
    void (async () => evaluation?.run(data, show) ?? [])().then(
      (rows) => port.postMessage({ name, rows } satisfies Measured),
      (why: unknown) => port.postMessage({ name, fault: plainFault(why) } satisfies Measured),
    );
  });
}

listen();

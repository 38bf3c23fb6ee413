/** A figure measured on labelled data, beside what simpler methods reach on the same data in the same run. */
export interface Row {
  readonly judge: string;
  readonly figure: string;
  /** Null where it can't be computed, such as kappa where only one label occurs. */
  readonly value: number | null;
  /** 95 % interval of `value`, null where there is none. */
  readonly interval: readonly [number, number] | null;
  readonly baselines: readonly { readonly name: string; readonly value: number | null }[];
  /** What two people reach with each other on the same data, null where nobody compared them. */
  readonly ceiling: number | null;
  /** Cases measured. */
  readonly n: number;
  /** False where a smaller value is the better one (an error), true else; `--floor` needs to know. */
  readonly more: boolean;
}

/** Measures one judge on the data of a folder (and on our own sets); `progress` is told the share done, 0..1. */
export interface Evaluation {
  readonly name: string;
  run(dir: string, progress: (share: number) => void): readonly Row[] | Promise<readonly Row[]>;
}

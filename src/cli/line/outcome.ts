// What a verb answers: nothing is written before it is whole.

/** 0 meets or done, 1 falls short or not shown, 2 bad input or a wrong command line, 3 a fault of the program. */
export type ExitCode = 0 | 1 | 2 | 3;

export interface Outcome {
  readonly code: ExitCode;
  /** Pieces for standard output, in order. */
  readonly out: readonly string[];
  readonly err: string;
}

export const done = (...out: readonly string[]): Outcome => ({ code: 0, out, err: '' });

export const refused = (says: string): Outcome => ({ code: 2, out: [], err: `${says}\n` });

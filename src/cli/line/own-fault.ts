// A fault of the program itself, told in one sentence on one line: what was being done, and what broke. Never a stack trace.

import { printable } from '#words/text/printable.ts';
import type { Outcome } from './outcome.ts';

const LONGEST = 160;

/** `doing`: a verb or a file. */
export function ownFault(doing: string, error: unknown): string {
  const [what = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
  const short = what.length > LONGEST ? `${what.slice(0, LONGEST - 1)}…` : what;
  return `${printable(doing)}: a fault of the program, not of the file: ${printable(short)}.`;
}

export const broken = (doing: string, error: unknown): Outcome => ({
  code: 3,
  out: [],
  err: `${ownFault(doing, error)}\n`,
});

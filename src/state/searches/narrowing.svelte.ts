// How a judgement narrows while facts come in: after each one how much is still unknown, and what each pair reaches at worst
// and at best.

import type { Grade, Verdict } from '#state/judging/judged.ts';

export interface Narrowed {
  /** The fact that came in. */
  readonly says: string;
  readonly unknown: number;
  readonly deciding: number;
  /** Pairs whose verdict is still open. */
  readonly open: number;
}

export interface PairReach {
  readonly between: readonly [string, string];
  readonly needed: Grade;
  readonly worst: Grade;
  readonly best: Grade;
  readonly verdict: Verdict['verdict'];
}

const MOST = 6;

export class Narrowing {
  /** The newest first. */
  steps: readonly Narrowed[] = $state.raw([]);

  note(says: string, verdict: Verdict): void {
    const now = { says, ...countOf(verdict) };
    const last = this.steps[0];
    if (last !== undefined && last.says === says && sameCount(last, now)) return;
    this.steps = [now, ...this.steps].slice(0, MOST);
  }
}

const sameCount = (a: Narrowed, b: Narrowed): boolean =>
  a.unknown === b.unknown && a.deciding === b.deciding && a.open === b.open;

function countOf({ assumptions, pairs }: Verdict): Omit<Narrowed, 'says'> {
  const open = assumptions.filter(({ kind }) => kind === 'unknown' || kind === 'interval');
  return {
    unknown: open.length,
    deciding: open.filter(({ decides }) => decides).length,
    open: pairs.filter(({ verdict }) => verdict === 'not-shown').length,
  };
}

/** Pairs that ask for a barrier, as far as they reach now. */
export const reachOf = ({ pairs }: Verdict): readonly PairReach[] =>
  pairs
    .filter(({ required }) => required !== null)
    .map(({ between, needed, achieved, achievedAtBest, verdict }) => ({
      between,
      needed,
      worst: achieved,
      best: achievedAtBest,
      verdict,
    }));

// How a judgement narrows while facts come in, step by step: what each brought to be found out and what was found, how much is
// still unknown after it, and what each pair reaches at worst and at best.

import type { Grade, Verdict } from '#state/judging/judged.ts';

export interface Narrowed {
  /** Id of the step at which the facts came in; empty for how it lay there at first. */
  readonly step: string;
  /** Unknowns that it brought: a layer that comes off has its own. */
  readonly brought: number;
  /** Unknowns that it settled. */
  readonly found: number;
  /** Pairs that it settled; below zero where it opened some. */
  readonly settled: number;
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

export class Narrowing {
  /** The newest first; a step that is looked at again later stands there again. */
  steps: readonly Narrowed[] = $state.raw([]);

  /** The first note is how it lay here, and gained nothing. */
  note(step: string, verdict: Verdict): void {
    const now = countOf(verdict);
    const [last, ...before] = this.steps;
    if (last === undefined) {
      this.steps = [{ step: '', brought: 0, found: 0, settled: 0, ...now }];
      return;
    }
    const less = last.unknown - now.unknown;
    const gained = { found: Math.max(less, 0), brought: Math.max(-less, 0), settled: last.open - now.open };
    const isSame = less === 0 && gained.settled === 0 && last.deciding === now.deciding;
    if (isSame) return;
    if (last.step !== step) this.steps = [{ step, ...gained, ...now }, ...this.steps];
    else this.steps = [{ step, ...sum(last, gained), ...now }, ...before];
  }

  /** What all visits of a step gained together; null where nothing came in there. */
  gainOf(step: string): Gain | null {
    const visits = this.steps.filter((each) => each.step === step);
    return visits.length === 0 ? null : visits.reduce<Gain>(sum, { found: 0, brought: 0, settled: 0 });
  }
}

export type Gain = Pick<Narrowed, 'found' | 'brought' | 'settled'>;

const sum = (a: Gain, b: Gain): Gain => ({
  found: a.found + b.found,
  brought: a.brought + b.brought,
  settled: a.settled + b.settled,
});

function countOf({ assumptions, pairs }: Verdict): Pick<Narrowed, 'unknown' | 'deciding' | 'open'> {
  const open = assumptions.filter(({ kind }) => kind === 'unknown' || kind === 'interval');
  return {
    unknown: open.length,
    deciding: open.filter(({ decides }) => decides).length,
    open: pairs.filter(({ verdict }) => verdict === 'not-shown').length,
  };
}

/** Pairs that ask for a barrier, as far as they reach now. */
export const reachOf = ({ pairs }: Pick<Verdict, 'pairs'>): readonly PairReach[] =>
  pairs
    .filter(({ required }) => required !== null)
    .map(({ between, needed, achieved, achievedAtBest, verdict }) => ({
      between,
      needed,
      worst: achieved,
      best: achievedAtBest,
      verdict,
    }));

// The proving test of one pair: how much, how long, from where to where, what to take off first, what is done in
// production; and whether the build would probably pass it, which is another question than whether it meets.

import type { Circuit, Design } from '#model/design.ts';
import type { Bridge } from '#model/design/outside.ts';
import type { Because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import {
  voltsDc,
  voltsPeak,
  voltsRms,
  type Seconds,
  type VoltsDc,
  type VoltsPeak,
  type VoltsRms,
} from '#units/quantity.ts';

import type { ExpectedBreakdown } from './expected-breakdown.ts';

export interface TestPlan {
  readonly between: readonly [string, string];
  readonly type: TestLevel & { readonly seconds: Seconds };
  /** In production, every piece; null where the book asks none. */
  readonly routine: (TestLevel & { readonly seconds: readonly [least: Seconds, most: Seconds] }) | null;
  /** Circuits to be joined on each side: those of the pair, with the others on their side of the barrier. */
  readonly connect: readonly [readonly string[], readonly string[]];
  /** A core bound to nothing, or nobody knows: test with it joined to either side in turn. */
  readonly core: 'either-side' | 'first' | 'second' | 'left';
  /** Ids of the parts that would carry the test current or be harmed. */
  readonly disconnect: readonly string[];
  readonly expected: ExpectedBreakdown | null;
  readonly outcome: TestOutcome;
  /** Why, for every figure of the plan. */
  readonly because: readonly Because[];
}

export interface TestLevel {
  readonly peak: VoltsPeak;
  readonly rms: VoltsRms;
  /** A direct voltage stresses as the peak of the alternating one. */
  readonly dc: VoltsDc;
}

/** `unknown`: what holds it there is not known. */
export type TestOutcome = 'likely-passes' | 'may-pass' | 'likely-fails' | 'unknown';

export interface Tested {
  readonly a: Circuit;
  readonly b: Circuit;
  /** Level of the grade that is needed, and the derivation of it. */
  readonly peak: VoltsPeak;
  readonly because: Because;
  readonly expected: ExpectedBreakdown | null;
}

export function testPlan(design: Design, book: Book, { a, b, peak, because, expected }: Tested): TestPlan {
  const { testSeconds, routineTest } = book;
  const connect = sidesOf(design, a, b);
  return {
    between: [a.id, b.id],
    type: { ...levelOf(peak), seconds: testSeconds.value },
    routine: routineTest && routineOf(peak, routineTest.value),
    connect,
    core: coreOf(design, connect),
    disconnect: design.bridges.filter((bridge) => isAcross(bridge, connect)).map(({ id }) => id),
    expected,
    outcome: outcomeOf(peak, expected),
    because: [
      because,
      testSeconds.because,
      ...(routineTest === null ? [] : [routineTest.because]),
      ...(expected === null ? [] : [expected.because]),
    ],
  };
}

function routineOf(
  peak: VoltsPeak,
  { levelShare, secondsLeast, secondsMost }: NonNullable<Book['routineTest']>['value'],
): TestPlan['routine'] {
  return { ...levelOf(voltsPeak(peak * levelShare)), seconds: [secondsLeast, secondsMost] };
}

const levelOf = (peak: VoltsPeak): TestLevel => ({
  peak,
  rms: voltsRms(peak / Math.SQRT2),
  dc: voltsDc(peak),
});

/** Circuits of one role hang together in use, so they are joined: then no part between them is stressed by chance. */
function sidesOf({ circuits }: Design, a: Circuit, b: Circuit): TestPlan['connect'] {
  const alike = (own: Circuit, other: Circuit) =>
    circuits
      .filter(
        ({ id, role }) => id === own.id || (role === own.role && role !== 'isolated' && role !== other.role),
      )
      .map(({ id }) => id);
  return [alike(a, b), alike(b, a)];
}

function coreOf({ core }: Design, [first, second]: TestPlan['connect']): TestPlan['core'] {
  if (typeof core.bond !== 'string' || core.bond === 'floating') return 'either-side';
  return first.includes(core.bond) ? 'first' : second.includes(core.bond) ? 'second' : 'left';
}

function isAcross({ between: [from, to] }: Bridge, [first, second]: TestPlan['connect']): boolean {
  const side = (id: string) => (first.includes(id) ? 1 : second.includes(id) ? 2 : 0);
  return side(from) !== side(to);
}

export function outcomeOf(peak: VoltsPeak, expected: ExpectedBreakdown | null): TestOutcome {
  if (expected === null) return 'unknown';
  if (expected.least >= peak) return 'likely-passes';
  return expected.most < peak ? 'likely-fails' : 'may-pass';
}

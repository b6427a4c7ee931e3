// Everything that was counted without being known: unknowns, defaults that shape the verdict, house rules, intervals.

import type { Design } from '#model/design.ts';
import { openBridgeFields } from '#judge/fill/open-bridges.ts';
import type { Counted } from '#judge/fill/filling.ts';
import type { Deciders } from '#judge/cases/deciders.ts';
import { openFrequency } from '#judge/cases/judge-once.ts';
import type { PairOutcome } from '#judge/paths/outcome.ts';
import type { Answer, Assumption } from './verdict.ts';

export function assumptionsOf(
  design: Design,
  counted: readonly Counted[],
  intervals: readonly string[],
  deciders: Deciders,
  pairs: readonly PairOutcome[],
  verdictWith: (reached: ReadonlySet<number>) => Answer,
): readonly Assumption[] {
  const none: ReadonlySet<number> = new Set();
  const told = counted.filter(({ field, kind }) => kind !== 'seldom-stated' || deciders.deciding.has(field));
  const unknowns = told.map(({ field, counted: words, kind }): Assumption => ({
    field,
    between: null,
    counted: words,
    decides: deciders.deciding.has(field),
    atBest: kind === 'default' ? null : verdictWith(deciders.reached.get(field) ?? none),
    kind: kind === 'seldom-stated' ? 'unknown' : kind,
  }));
  return [
    ...floors(pairs),
    ...unproven(design),
    ...unknowns,
    ...unknownBridges(design, deciders),
    ...openFrequencies(pairs).map(({ field, between, frequency }): Assumption => ({
      field,
      between,
      counted: `as high as ${frequency / 1000} kHz`,
      decides: deciders.deciding.has(field),
      atBest: verdictWith(deciders.reached.get(field) ?? none),
      kind: 'unknown',
    })),
    ...intervals.map((field): Assumption => ({
      field,
      between: null,
      counted: 'at the end of its interval that is worse',
      decides: false,
      atBest: null,
      kind: 'interval',
    })),
    ...design.defaulted.map((field): Assumption => ({
      field,
      between: null,
      counted: valueWords(design, field),
      decides: false,
      atBest: null,
      kind: 'default',
    })),
    ...ratings(design),
  ];
}

/** Pollution degree 1 wants a proof as potting does. */
const unproven = ({ surroundings }: Design): readonly Assumption[] =>
  surroundings.pollutionDegree === 1 && surroundings.proof !== 'tested'
    ? [
        {
          field: 'surroundings.proof',
          between: null,
          counted: 'pollution degree 1, though no test proves it',
          decides: false,
          atBest: null,
          kind: 'unknown',
        },
      ]
    : [];

interface OpenFrequency {
  readonly field: string;
  readonly between: readonly [string, string];
  /** What it was counted as, Hz. */
  readonly frequency: number;
}

/** Fields that would give a frequency, once each, of pairs that ask for a barrier. */
export function openFrequencies(pairs: readonly PairOutcome[]): readonly OpenFrequency[] {
  const found = new Map<string, OpenFrequency>();
  for (const { between, needed, stress } of pairs) {
    const field = needed === null ? null : openFrequency(stress);
    if (field !== null && !found.has(field))
      found.set(field, { field, between, frequency: stress.frequency });
  }
  return [...found.values()];
}

/** Without a stated or computed voltage the rated mains is the floor, and nothing is shown above it. */
function floors(pairs: readonly PairOutcome[]): readonly Assumption[] {
  return pairs
    .filter(({ needed, stress }) => needed !== null && stress.basis === 'floor')
    .map(({ between, stress }) => ({
      field: 'workingVoltages',
      between,
      counted: floorWords(stress),
      decides: true,
      atBest: null,
      kind: 'unknown',
    }));
}

/** Each figure by itself: a peak may be missing beside an rms that is known. */
function floorWords({ from, rms, peak }: PairOutcome['stress']): string {
  if (from.rms === 'floor') return `at the floor, ${Math.round(rms)} V rms`;
  return `at a peak of ${Math.ceil(peak)} V, the least it can be`;
}

const unknownBridges = (design: Design, deciders: Deciders): readonly Assumption[] =>
  design.bridges.flatMap(openBridgeFields).map(({ field, counted }) => ({
    field,
    between: null,
    counted,
    decides: deciders.deciding.has(field),
    atBest: null,
    kind: 'unknown',
  }));

const ratings = (design: Design): readonly Assumption[] =>
  design.bridges.flatMap((bridge, i): readonly Assumption[] =>
    bridge.rated === null
      ? [
          {
            field: `bridges[${i}].rated`,
            between: null,
            counted: 'rated high enough',
            decides: false,
            atBest: null,
            kind: 'default',
          },
        ]
      : [],
  );

function valueWords(design: Design, field: string): string {
  const keys = field.split(/[.[\]]/).filter((key) => key !== '');
  const value = keys.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? (at as Record<string, unknown>)[key] : undefined),
    design,
  );
  if (value !== null && typeof value === 'object' && 'value' in value) return String(value.value);
  return value === null || value === undefined ? 'left out' : String(value);
}

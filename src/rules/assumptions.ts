// Everything that was counted without being known: unknowns, defaults that shape the verdict, house rules, intervals.

import type { Design } from '#model/design.ts';
import type { Counted } from './filling.ts';
import type { Deciders } from './deciders.ts';
import type { PairOutcome } from './outcome.ts';
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
  const unknowns = counted.map(({ field, counted: words, kind }): Assumption => ({
    field,
    counted: words,
    decides: deciders.deciding.has(field),
    atBest: verdictWith(deciders.reached.get(field) ?? none),
    kind,
  }));
  return [
    ...floors(pairs),
    ...unproven(design),
    ...unknowns,
    ...unknownBridges(design, deciders),
    ...intervals.map((field): Assumption => ({
      field,
      counted: 'at the end of its interval that is worse',
      decides: false,
      atBest: null,
      kind: 'interval',
    })),
    ...design.defaulted.map((field): Assumption => ({
      field,
      counted: valueWords(design, field),
      decides: false,
      atBest: null,
      kind: 'default',
    })),
    ...frequencies(pairs),
    ...ratings(design),
  ];
}

/** Pollution degree 1 wants a proof as potting does. */
const unproven = ({ surroundings }: Design): readonly Assumption[] =>
  surroundings.pollutionDegree === 1 && surroundings.proof !== 'tested'
    ? [
        {
          field: 'surroundings.proof',
          counted: 'pollution degree 1, though no test proves it',
          decides: false,
          atBest: null,
          kind: 'unknown',
        },
      ]
    : [];

/** A voltage stated without its frequency is taken as the mains'. */
const frequencies = (pairs: readonly PairOutcome[]): readonly Assumption[] =>
  pairs.flatMap(({ between, needed, stress }): readonly Assumption[] =>
    needed !== null && stress.notes.some(({ kind }) => kind === 'frequency-not-given')
      ? [
          {
            field: 'workingVoltages',
            counted: `between ${between.join(' and ')} at ${stress.frequency} Hz, the frequency of the mains`,
            decides: false,
            atBest: null,
            kind: 'default',
          },
        ]
      : [],
  );

/** Without a stated or computed voltage the rated mains is the floor, and nothing is shown above it. */
function floors(pairs: readonly PairOutcome[]): readonly Assumption[] {
  return pairs
    .filter(({ needed, stress }) => needed !== null && stress.basis === 'floor')
    .map(({ between, stress }) => ({
      field: 'workingVoltages',
      counted: `between ${between.join(' and ')} at the floor, ${stress.rms} V rms`,
      decides: true,
      atBest: null,
      kind: 'unknown',
    }));
}

function unknownBridges(design: Design, deciders: Deciders): readonly Assumption[] {
  return design.bridges.flatMap((bridge, i) =>
    unknownBridgeFields(bridge, i).map((field): Assumption => ({
      field,
      counted: field.endsWith('approval') ? 'without approval' : 'no safety part',
      decides: deciders.deciding.has(field),
      atBest: null,
      kind: 'unknown',
    })),
  );
}

export function unknownBridgeFields(bridge: Design['bridges'][number], index: number): readonly string[] {
  const open: string[] = [];
  if (bridge.kind === 'capacitor' && typeof bridge.safetyClass !== 'string')
    open.push(`bridges[${index}].safetyClass`);
  if (bridge.kind !== 'capacitor' && typeof bridge.approval !== 'string')
    open.push(`bridges[${index}].approval`);
  return open;
}

const ratings = (design: Design): readonly Assumption[] =>
  design.bridges.flatMap((bridge, i): readonly Assumption[] =>
    bridge.rated === null
      ? [
          {
            field: `bridges[${i}].rated`,
            counted: 'rated high enough',
            decides: false,
            atBest: null,
            kind: 'unknown',
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

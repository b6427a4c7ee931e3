// Everything that was counted without being known: unknowns, defaults that shape the verdict, house rules, intervals.

import type { Design } from '#model/design.ts';
import { openBridgeFields } from '#judge/conductors/open-bridges.ts';
import type { Counted } from '#judge/assume/fill-context.ts';
import type { Deciders } from '#judge/cases/deciders.ts';
import { openFrequency } from '#judge/assume/counted-stress.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import { unplacedParts } from '#judge/conductors/unplaced.ts';
import type { BestFigures } from './best-figures.ts';
import type { National } from '#books/questions/national.ts';
import { ofMarket } from './of-market.ts';
import { plainly, type CountedAs, type TurningFigure } from '#judge/verdict/assumed.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';

export interface Assumed {
  /** What the market that the file names lays down; null: no market. */
  readonly national: National | null;
  readonly counted: readonly Counted[];
  readonly intervals: readonly string[];
  readonly deciders: Deciders;
  readonly pairs: readonly PairOutcome[];
  /** Places of the pairs that are not shown only because nothing is known of their voltage. */
  readonly byVoltage: ReadonlySet<number>;
  /** Places of the pairs that are not shown only because nobody knows where one part lies, by its id. */
  readonly byPart: ReadonlyMap<string, ReadonlySet<number>>;
  readonly figureAtBest: BestFigures;
  /** The whole with some pairs meeting. */
  readonly verdictWith: (reached: ReadonlySet<number>) => Answer;
}

type Bare = Omit<Assumption, 'figure'>;

export const assumptionsOf = (design: Design, assumed: Assumed): readonly Assumption[] =>
  listed(design, assumed).map((each) => ({ ...each, figure: figureOf(each, assumed) }));

/** Only what decides has a figure that turns the verdict. */
function figureOf(
  { field, between, decides }: Bare,
  { deciders, figureAtBest, pairs }: Assumed,
): TurningFigure | null {
  if (!decides) return null;
  if (field === 'workingVoltages') {
    const pair = pairs.find((each) => each.between.every((id) => between?.includes(id)));
    return pair ? { at: { as: 'voltage', volts: pair.stress.rms }, together: false } : null;
  }
  const alone = (deciders.reached.get(field)?.size ?? 1) > 0;
  return { at: figureAtBest(field), together: !alone };
}

const NONE: ReadonlySet<number> = new Set();

function listed(design: Design, assumed: Assumed): readonly Bare[] {
  const { counted, intervals, deciders, pairs, national, byVoltage } = assumed;
  const told = counted.filter(({ field, kind }) => kind !== 'seldom-stated' || deciders.deciding.has(field));
  return [
    ...floors(pairs, byVoltage),
    ...directTransient(design),
    ...looseParts(design, assumed),
    ...told.map((each) => ofCounted(each, assumed)),
    ...unknownBridges(design, deciders),
    ...openFrequencies(pairs).map(({ field, between, frequency }) =>
      openField({ field, between, counted: { as: 'frequency', hertz: frequency } }, assumed),
    ),
    ...openVoltages(pairs).map((open) => openField(open, assumed)),
    ...intervals.map((field) => undecided(field, plainly('worse-end'), 'interval')),
    ...design.defaulted.map((field) =>
      undecided(field, ofMarket(national, field) ?? valueOf(design, field), 'default'),
    ),
    ...ratings(design),
  ];
}

function ofCounted({ field, counted, kind }: Counted, { deciders, verdictWith }: Assumed): Bare {
  return {
    field,
    between: null,
    counted,
    decides: deciders.deciding.has(field),
    atBest: kind === 'default' ? null : verdictWith(deciders.reached.get(field) ?? NONE),
    kind: kind === 'seldom-stated' ? 'unknown' : kind,
  };
}

const looseParts = (design: Design, { byPart, verdictWith }: Assumed): readonly Bare[] =>
  unplacedParts(design).map(({ id }) => ({
    field: `parts[${design.parts.findIndex((part) => part.id === id)}].touches`,
    between: null,
    counted: plainly('anywhere'),
    decides: (byPart.get(id)?.size ?? 0) > 0,
    atBest: verdictWith(byPart.get(id) ?? NONE),
    kind: 'unknown',
  }));

const openField = ({ field, between, counted }: OpenField, { deciders, verdictWith }: Assumed): Bare => ({
  field,
  between,
  counted,
  decides: deciders.deciding.has(field),
  atBest: verdictWith(deciders.reached.get(field) ?? NONE),
  kind: 'unknown',
});

const undecided = (field: string, counted: CountedAs, kind: 'interval' | 'default'): Bare => ({
  field,
  between: null,
  counted,
  decides: false,
  atBest: null,
  kind,
});

/** A direct supply that states no transient is held to that of the mains of the same peak, from which it may come. */
const directTransient = ({ supply }: Design): readonly Bare[] =>
  supply.kind === 'dc' && supply.transient === null
    ? [undecided('supply.transient', plainly('as-the-mains'), 'default')]
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

interface OpenField {
  readonly field: string;
  /** The pair whose voltage it is; null where it is of them all. */
  readonly between: readonly [string, string] | null;
  readonly counted: CountedAs;
}

/** Fields that would settle the voltages better, once each, of pairs that ask for a barrier. */
export function openVoltages(pairs: readonly PairOutcome[]): readonly OpenField[] {
  const found = new Map<string, OpenField>();
  for (const { between, needed, stress } of pairs) {
    if (needed === null) continue;
    for (const open of stress.open) {
      const of = open.counted.as === 'computed' ? between : null;
      if (!found.has(open.field))
        found.set(open.field, { field: open.field, between: of, counted: open.counted });
    }
  }
  return [...found.values()];
}

/** Without a stated or computed voltage the rated mains is the floor, and nothing is shown above it. */
function floors(pairs: readonly PairOutcome[], byVoltage: ReadonlySet<number>): readonly Bare[] {
  return pairs.flatMap(({ between, needed, stress }, i): readonly Bare[] => {
    if (needed === null || stress.basis !== 'floor') return [];
    const counted = floorOf(stress);
    // what falls short at the least voltage falls short at any
    const decides = byVoltage.has(i);
    return [{ field: 'workingVoltages', between, counted, decides, atBest: null, kind: 'unknown' }];
  });
}

/** Each figure by itself: a peak may be missing beside an rms that is known. */
const floorOf = ({ from, rms, peak }: PairOutcome['stress']): CountedAs =>
  from.rms === 'floor'
    ? { as: 'floor', quantity: 'rms', value: rms }
    : { as: 'floor', quantity: 'peak', value: peak };

const unknownBridges = (design: Design, deciders: Deciders): readonly Bare[] =>
  design.bridges
    .flatMap(openBridgeFields)
    // hardly any file states what stands at a part: told where it decides
    .filter(({ field }) => !field.endsWith('.working') || deciders.deciding.has(field))
    .map(({ field, counted }) => ({
      field,
      between: null,
      counted,
      decides: deciders.deciding.has(field),
      atBest: null,
      kind: 'unknown',
    }));

/** Records that are named in `defaulted` because they are stated in part only. */
const IN_PART: readonly string[] = ['converter', 'converter.bulk', 'former.tube'];

const ratings = (design: Design): readonly Bare[] =>
  design.bridges.flatMap((bridge, i): readonly Bare[] =>
    bridge.rated === null ? [undecided(`bridges[${i}].rated`, plainly('rated-enough'), 'default')] : [],
  );

function valueOf(design: Design, field: string): CountedAs {
  if (IN_PART.includes(field)) return plainly('in-part');
  const keys = field.split(/[.[\]]/).filter((key) => key !== '');
  const value = keys.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? (at as Record<string, unknown>)[key] : undefined),
    design,
  );
  if (value !== null && typeof value === 'object' && 'value' in value)
    return { as: 'value', value: String(value.value) };
  return value === null || value === undefined ? plainly('left-out') : { as: 'value', value: String(value) };
}

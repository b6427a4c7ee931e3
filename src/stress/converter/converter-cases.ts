// The ways in which a converter runs that the working voltage is searched over: every mode that it may run in, every
// variant of its outputs, the high and the low line, and for a direct supply either pole tied to the output.

import type {
  Converter,
  ConverterMode,
  ConverterOutput,
  ConverterVariant,
  Rail,
} from '#model/design/voltages.ts';
import type { Supply } from '#model/design/supply.ts';
import { isKnown } from '#model/quantity/reading.ts';

import { bulkValley } from './bulk-valley.ts';
import type { SwitchingState } from '#stress/pair/pair-stress.ts';

export interface OperatingCase {
  readonly mode: ConverterMode;
  readonly variant: string | null;
  /** Turns of windings that differ from the file's layers, by the winding's id. */
  readonly turns: ConverterVariant['turns'];
  readonly line: 'high' | 'low';
  readonly frequency: number;
  readonly bulk: number;
  readonly reflected: number;
  readonly overshoot: number;
  readonly shares: readonly { readonly state: SwitchingState; readonly share: number }[];
  /** Volts of the outputs, by circuit. */
  readonly outputs: ReadonlyMap<string, number>;
  readonly rails: Rails;
}

/**
 * The rails against the neutral: `plus` and `minus` and, for a mains, a sine of amplitude `swing` on both. Between two
 * conductions of the bridge their middle follows half the mains, that of a boosted rail too.
 */
export interface Rails {
  readonly plus: number;
  readonly minus: number;
  readonly swing: number;
}

/** Reflected voltage of a variant by its own turns; null where they tell nothing. */
export type ReflectedByTurns = (variant: ConverterVariant) => number | null;

export function operatingCases(
  converter: Converter,
  supply: Supply,
  byTurns: ReflectedByTurns = () => null,
): readonly OperatingCase[] {
  const lines = linesOf(converter, supply);
  const low = Math.min(...lines.map(({ bulk }) => bulk));
  return modesOf(converter).flatMap((mode) =>
    runsOf(converter, byTurns).flatMap((run) =>
      lines.flatMap(({ line, bulk, crest }) => {
        const shares = sharesOf(mode, converter.duty, run.reflected, bulk, low);
        return railsOf(supply, bulk, crest).map((rails) => ({ ...run, mode, line, bulk, shares, rails }));
      }),
    ),
  );
}

/** A mode that nobody knows may be either. */
export const modesOf = ({ mode }: Converter): readonly ConverterMode[] =>
  typeof mode === 'string' ? [mode] : ['continuous', 'discontinuous'];

interface Line {
  readonly line: 'high' | 'low';
  readonly bulk: number;
  /** Of the mains. */
  readonly crest: number;
}

/** A boosted rail stands at its own voltage whatever the line; a rail that nobody knows is counted as the mains'. */
function linesOf(converter: Converter, supply: Supply): readonly Line[] {
  const crest = supply.voltage.value * crestFactor(supply);
  const boosted = boostedTo(converter.rail);
  if (boosted !== null) return [{ line: 'high', bulk: boosted, crest }];
  const lowest = bulkValley(converter, supply) ?? lowestMains(converter, supply) * crestFactor(supply);
  return [
    { line: 'high', bulk: crest, crest },
    { line: 'low', bulk: lowest, crest: lowest },
  ];
}

const boostedTo = (rail: Converter['rail']): number | null => (isBoosted(rail) ? rail.voltage.value : null);

const isBoosted = (rail: Converter['rail']): rail is Extract<Rail, { kind: 'boosted' }> =>
  rail.kind === 'boosted';

const crestFactor = ({ kind }: Supply): number => (kind === 'dc' ? 1 : Math.SQRT2);

/** The marked voltage where the file does not say how far the range goes down. */
function lowestMains({ bulk }: Converter, { lowest, voltage }: Supply): number {
  if (bulk !== null) return bulk.lowestMains.value;
  return isKnown(lowest) ? lowest.value : voltage.value;
}

type Run = Pick<OperatingCase, 'variant' | 'turns' | 'frequency' | 'reflected' | 'overshoot' | 'outputs'>;

/** The converter's own outputs, then its variants. A variant reflects what the converter does unless it says otherwise. */
function runsOf(converter: Converter, byTurns: ReflectedByTurns): readonly Run[] {
  const { outputs, variants, switchingFrequency, reflectedVoltage, clampOvershoot } = converter;
  const own: Run = {
    variant: null,
    turns: {},
    frequency: switchingFrequency.value,
    reflected: reflectedVoltage.value,
    overshoot: clampOvershoot.value,
    outputs: voltsBy(outputs),
  };
  const runs = variants.map((variant): Run => ({
    variant: variant.name,
    turns: variant.turns,
    frequency: (variant.switchingFrequency ?? switchingFrequency).value,
    reflected: variant.reflectedVoltage?.value ?? byTurns(variant) ?? reflectedVoltage.value,
    overshoot: (variant.clampOvershoot ?? clampOvershoot).value,
    outputs: voltsBy(variant.outputs),
  }));
  return outputs.length === 0 && runs.length > 0 ? runs : [own, ...runs];
}

/** A circuit with several outputs, one stacked on the other, reaches to the highest. */
function voltsBy(outputs: readonly ConverterOutput[]): ReadonlyMap<string, number> {
  const volts = new Map<string, number>();
  for (const { circuit, voltage } of outputs) {
    volts.set(circuit, Math.max(volts.get(circuit) ?? 0, voltage.value));
  }
  return volts;
}

/** Parts of the switching period by volt-second balance, where the file states no duty. The spike takes no time. */
function sharesOf(
  mode: ConverterMode,
  duty: number | null,
  reflected: number,
  bulk: number,
  low: number,
): OperatingCase['shares'] {
  const balanced = part(reflected, bulk + reflected);
  const spike = { state: 'spike', share: 0 } as const;
  if (mode === 'continuous') {
    const on = duty ?? balanced;
    return [{ state: 'on', share: on }, { state: 'off', share: 1 - on }, spike];
  }
  // At the boundary at the low line; above it the same current is reached sooner.
  const on = duty ?? Math.min(balanced, part(reflected, low + reflected) * part(low, bulk));
  const off = Math.min(1 - on, reflected > 0 ? (on * bulk) / reflected : 1 - on);
  return [
    { state: 'on', share: on },
    { state: 'off', share: off },
    spike,
    { state: 'idle', share: 1 - on - off },
  ];
}

const part = (of: number, whole: number): number => (whole > 0 ? of / whole : 0);

function railsOf({ kind }: Supply, bulk: number, crest: number): readonly Rails[] {
  if (kind === 'ac') return [{ plus: bulk / 2, minus: -bulk / 2, swing: crest / 2 }];
  return [
    { plus: bulk, minus: 0, swing: 0 },
    { plus: 0, minus: -bulk, swing: 0 },
  ];
}

// The ways in which a converter runs that the working voltage is searched over: every variant of its outputs, at the
// high and at the low line, and for a direct supply with either pole tied to the output.

import type { Converter, ConverterOutput, Supply } from '#model/design.ts';

import { bulkValley } from './bulk-valley.ts';
import type { SwitchingState } from './pair-stress.ts';

export interface OperatingCase {
  readonly variant: string | null;
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
 * The bulk rails against the neutral: `plus` and `minus` and, for a mains, a sine of amplitude `swing` on both. Between
 * two conductions of the bridge the middle of the bulk follows half the mains.
 */
export interface Rails {
  readonly plus: number;
  readonly minus: number;
  readonly swing: number;
}

export function operatingCases(converter: Converter, supply: Supply): readonly OperatingCase[] {
  const rated = supply.voltage.value * (supply.kind === 'dc' ? 1 : Math.SQRT2);
  const low = bulkValley(converter, supply) ?? rated * (1 - supply.tolerance);
  return runsOf(converter).flatMap((run) =>
    [
      { line: 'high' as const, bulk: rated },
      { line: 'low' as const, bulk: low },
    ].flatMap(({ line, bulk }) => {
      const shares = sharesOf(converter, run.reflected, bulk, low);
      return railsOf(supply, bulk).map((rails) => ({
        ...run,
        line,
        bulk,
        overshoot: converter.clampOvershoot.value,
        shares,
        rails,
      }));
    }),
  );
}

type Run = Pick<OperatingCase, 'variant' | 'frequency' | 'reflected' | 'outputs'>;

/** The converter's own outputs, then its variants. Reflected voltage goes with the output voltage. */
function runsOf({ outputs, variants, switchingFrequency, reflectedVoltage }: Converter): readonly Run[] {
  const own: Run = {
    variant: null,
    frequency: switchingFrequency.value,
    reflected: reflectedVoltage.value,
    outputs: voltsBy(outputs),
  };
  const runs = variants.map((variant): Run => {
    const by = voltsBy(variant.outputs);
    return {
      variant: variant.name,
      frequency: (variant.switchingFrequency ?? switchingFrequency).value,
      reflected: reflectedVoltage.value * comparedWith(by, referenceOf(own.outputs, variants)),
      outputs: by,
    };
  });
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

/** Output voltage that the stated reflected voltage belongs to: the converter's own, else the highest of the variants. */
function referenceOf(
  own: ReadonlyMap<string, number>,
  variants: Converter['variants'],
): ReadonlyMap<string, number> {
  return new Map([...voltsBy(variants.flatMap(({ outputs }) => outputs)), ...own]);
}

function comparedWith(volts: ReadonlyMap<string, number>, reference: ReadonlyMap<string, number>): number {
  const ratios = [...volts].flatMap(([circuit, value]) => {
    const at = reference.get(circuit) ?? 0;
    return at > 0 ? [value / at] : [];
  });
  return ratios.length === 0 ? 1 : Math.max(...ratios);
}

/** Parts of the switching period by volt-second balance, where the file states no duty. The spike takes no time. */
function sharesOf(
  { mode, duty }: Converter,
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

function railsOf({ kind }: Supply, bulk: number): readonly Rails[] {
  if (kind === 'ac') return [{ plus: bulk / 2, minus: -bulk / 2, swing: bulk / 2 }];
  return [
    { plus: bulk, minus: 0, swing: 0 },
    { plus: 0, minus: -bulk, swing: 0 },
  ];
}

// The working voltage at one place outside the window, a row of pins or a bridging part: what the file gives of it wins
// there over the pair's, higher or lower; what it does not give is the pair's. Stated lower than computed is not believed
// until it is measured, and the floor of the mains holds there too.

import type { Design } from '#model/design.ts';
import type { GivenVoltage } from '#model/design/voltages.ts';
import { because, type Because } from '#standards/because.ts';
import { voltsPeak, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';

import { estimateWithin, openConverter } from '#stress/converter/estimate-width.ts';
import type { Basis, BestFields, OpenVoltage, PairStressResult } from '#stress/pair/pair-stress.ts';
import { voltageFloor } from './voltage-floor.ts';

interface Place {
  readonly design: Design;
  /** Of the field that gives the voltage, such as `outside[0].working`. */
  readonly field: string;
  readonly working: GivenVoltage;
  readonly isBest: BestFields;
}

interface Figure<Q> {
  readonly value: Q;
  readonly basis: Basis;
  readonly within: number;
  readonly open: readonly OpenVoltage[];
  readonly because: Because;
}

/** `pair`: as it is counted, so that what the place takes over from it is an estimate no longer. */
export function placeVoltages<P extends PairStressResult>(pair: P, place: Place): P {
  const { working, field } = place;
  const rms = figureAt<VoltsRms>(pair, place, 'rms', pair.rms, floorOf(pair, place)?.rms ?? null);
  const peak = figureAt<VoltsPeak>(pair, place, 'peak', pair.peak, floorOf(pair, place)?.peak ?? null);
  const frequency = working.frequency?.value ?? pair.frequency;
  const values = { field, rms: rms.value, peak: peak.value, frequency };
  return {
    ...pair,
    rms: rms.value,
    peak: voltsPeak(Math.max(peak.value, rms.value)),
    frequency,
    from: {
      rms: rms.basis,
      peak: peak.basis,
      frequency: working.frequency ? working.basis : pair.from.frequency,
    },
    basis: rms.basis,
    within: { rms: rms.within, peak: peak.within },
    open: [...rms.open, ...peak.open],
    because: because('place-voltage', values, [], [rms.because, peak.because]),
  };
}

/** Nothing between the mains and anything else is taken to be lower; null where the pair is on one side. */
function floorOf({ between }: PairStressResult, { design }: Place) {
  const isMains = (id: string) =>
    design.circuits.some((circuit) => circuit.id === id && circuit.role === 'mains');
  const [a, b] = between.map(isMains);
  return a === b ? null : voltageFloor(design.supply);
}

function figureAt<Q extends number>(
  pair: PairStressResult,
  { design, field, working, isBest }: Place,
  quantity: 'rms' | 'peak',
  inherited: Q,
  floor: Q | null,
): Figure<Q> {
  const given = working[quantity]?.value as Q | undefined;
  if (given === undefined)
    return { value: inherited, basis: pair.from[quantity], within: 0, open: [], because: pair.because };
  const { basis } = working;
  const computed = pair.from[quantity] === 'measured' ? null : (pair.computed?.[quantity] ?? null);
  const path = `${field}.${quantity}`;
  if (basis === 'stated' && computed !== null && computed.value > given && !isBest(path)) {
    const open = openConverter(design, isBest);
    const stated: OpenVoltage = {
      field: path,
      counted: { as: 'computed', quantity, value: computed.value },
    };
    return {
      value: Math.max(computed.value, floor ?? 0) as Q,
      basis: 'computed',
      within: estimateWithin(open),
      open: [...open, stated],
      because: computed.because,
    };
  }
  const value = Math.max(given, floor ?? 0) as Q;
  return {
    value,
    basis,
    within: 0,
    open: [],
    because: because('given-at-place', { field: path, basis, value }),
  };
}

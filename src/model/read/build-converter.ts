// The converter of a file, where it is stated in full: one of its figures missing, nothing can be computed from it, and it
// counts as not given. The same of its bulk capacitor, its rail and each of its outputs; `inPart` names what counts so.

import type { BulkCapacitor, Converter, ConverterOutput, ConverterVariant } from '#model/design/voltages.ts';
import type { FileRead } from '#model/schema/schema.ts';
import { leftOut } from '#model/quantity/reading.ts';
import { orOpen } from './build-solid.ts';

type Read = NonNullable<FileRead['converter']>;

export function buildConverter(read: Read | undefined): Converter | null {
  if (read === undefined) return null;
  const { switchingFrequency, reflectedVoltage, clampOvershoot } = read;
  if (switchingFrequency === undefined || reflectedVoltage === undefined || clampOvershoot === undefined)
    return null;
  return {
    mode: orOpen(read.mode),
    switchingFrequency,
    reflectedVoltage,
    clampOvershoot,
    rail: railOf(read.rail),
    duty: read.duty ?? null,
    bulk: bulkOf(read.bulk),
    outputs: outputsOf(read.outputs),
    variants: (read.variants ?? []).map(variantOf),
  };
}

/** Paths of what is stated in part only: once, not figure by figure. */
export function inPart({ converter, former: { tube } }: FileRead): readonly string[] {
  const isHalf = converter !== undefined && buildConverter(converter) === null;
  return [
    ...(isHalf ? ['converter'] : []),
    ...(!isHalf && converter?.bulk !== undefined && bulkOf(converter.bulk) === null
      ? ['converter.bulk']
      : []),
    ...(tube !== undefined && (tube.width === undefined || tube.depth === undefined) ? ['former.tube'] : []),
  ];
}

function railOf(rail: Read['rail']): Converter['rail'] {
  if (rail === undefined || rail === 'unknown') return leftOut;
  if (rail.kind === 'mains') return rail;
  return rail.voltage === undefined ? leftOut : { kind: 'boosted', voltage: rail.voltage };
}

function bulkOf(read: Read['bulk']): BulkCapacitor | null {
  const { lowestMains, capacitance, power, efficiency, chargingTime } = read ?? {};
  if (lowestMains === undefined || capacitance === undefined || power === undefined) return null;
  if (efficiency === undefined || chargingTime === undefined) return null;
  return { lowestMains, capacitance, power, efficiency, chargingTime };
}

const outputsOf = (read: Read['outputs']): readonly ConverterOutput[] =>
  read.flatMap(({ circuit, voltage }) => (voltage === undefined ? [] : [{ circuit, voltage }]));

const variantOf = (read: NonNullable<Read['variants']>[number]): ConverterVariant => ({
  ...read,
  outputs: outputsOf(read.outputs),
  switchingFrequency: read.switchingFrequency ?? null,
  reflectedVoltage: read.reflectedVoltage ?? null,
  clampOvershoot: read.clampOvershoot ?? null,
  turns: read.turns ?? {},
});

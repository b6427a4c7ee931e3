// What a pair of circuits is judged at: its working voltage with what is not known for sure counted as chosen. An
// estimate counts as the upper end of what it may be, a frequency that nobody gave as the highest that the tables know.

import type { Book } from '#books/questions/book.ts';
import type { Design } from '#model/design.ts';
import type { GivenVoltage } from '#model/design/voltages.ts';
import { because, type Because } from '#standards/because.ts';
import type { PairStressResult } from '#stress/pair/pair-stress.ts';
import { placeVoltages } from '#stress/voltages/place-voltages.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';
import { hertz, voltsPeak, voltsRms, type VoltsPeak, type VoltsRms } from '#units/quantity.ts';
import { isBest, type Choice } from './assumption.ts';

export interface CountedStress extends PairStressResult {
  /** Without what an estimate may be off: as it is printed. */
  readonly nominal: { readonly rms: VoltsRms; readonly peak: VoltsPeak };
}

export const voltagesAs = (design: Design, choice: Choice): readonly PairStressResult[] =>
  workingVoltages(design, (field) => isBest(choice, field));

export function countedStress(book: Book, stress: PairStressResult, choice: Choice): CountedStress {
  const { rms, peak } = stress;
  return atAnyFrequency(book, estimated({ ...stress, nominal: { rms, peak } }, choice), choice);
}

/** The same at one place, whose own voltage wins; `field` is that of the voltage, such as `outside[0].working`. */
export function stressAtPlace(
  design: Design,
  pair: CountedStress,
  working: GivenVoltage | null,
  field: string,
  choice: Choice,
): CountedStress {
  if (working === null) return pair;
  const found = placeVoltages(pair, { design, field, working, isBest: (each) => isBest(choice, each) });
  const { rms, peak } = found;
  return estimated({ ...found, nominal: { rms, peak } }, choice);
}

/** A computed figure holds within some percent: at worst it is that much higher. */
function estimated(stress: CountedStress, choice: Choice): CountedStress {
  const { within } = stress;
  if ((within.rms === 0 && within.peak === 0) || choice.at === 'best') return stress;
  const rms = voltsRms(stress.rms * (1 + within.rms));
  const peak = voltsPeak(stress.peak * (1 + within.peak));
  const why = because('estimate-width', { within: Math.max(within.rms, within.peak), rms, peak });
  return { ...stress, rms, peak, because: after(stress.because, why) };
}

/** A derivation with one step more at its end. */
const after = (why: Because, step: Because): Because => ({ ...why, from: [...why.from, step] });

/** A frequency that nobody gave is at worst the highest that the tables know, at best that of the supply. */
function atAnyFrequency(book: Book, stress: CountedStress, choice: Choice): CountedStress {
  const field = openFrequency(stress);
  if (field === null || isBest(choice, field)) return stress;
  const frequency = hertz(Math.max(stress.frequency, book.highestFrequency));
  const why = because('frequency-not-given', { from: stress.frequency, value: frequency });
  return { ...stress, frequency, because: after(stress.because, why) };
}

/** The field that would give the frequency; null where it is known, or no voltage is either. */
export function openFrequency({ basis, notes }: PairStressResult): string | null {
  const note = notes.find(({ kind }) => kind === 'frequency-not-given');
  return note?.kind === 'frequency-not-given' && basis !== 'floor'
    ? `workingVoltages[${note.entry}].frequency`
    : null;
}

// The voltage with which a book's tables of the mains are entered: a direct supply counts as the mains of the same peak
// that it may come from.

import type { Supply } from '#model/design/supply.ts';
import { because, judged, type Judged } from '#standards/because.ts';
import { voltsRms, type VoltsRms } from '#units/quantity.ts';

export function mainsOf({ kind, voltage: { value: voltage } }: Supply): Judged<VoltsRms> {
  const mains = kind === 'dc' ? voltsRms(voltage / Math.SQRT2) : voltage;
  return judged(mains, because('supply-as-mains', { supply: kind, voltage, mains }));
}

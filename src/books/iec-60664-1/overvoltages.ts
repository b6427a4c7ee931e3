// What the mains brings by IEC 60664-1: the rated impulse of table F.1, and for a short time the row of the mains in that
// table and 1 200 V more. Reinforced insulation is held to the next step of the impulse series.

import { transientIn, type MainsTables } from '#books/shared/transients.ts';
import { because, type Because, type Cite, judged, type Judged } from '#standards/because.ts';
import { cellFor, lookUp } from '#standards/tables/look-up.ts';
import { peakOfSine, voltsPeak, voltsRms, type VoltsPeak } from '#units/quantity.ts';
import type { Tables } from './tables.ts';

export function mainsTables({ files, rules }: Tables): MainsTables {
  const rule = rules('temporary-overvoltage');
  return {
    mainsTransient: transientIn(files.mainsTransient),
    markets: files.markets,
    temporaryOvervoltage: (mains) => {
      const cell = cellFor(files.mainsTransient, mains, 'category 1');
      if (cell === undefined) {
        const refused = lookUp(files.mainsTransient, mains, 'category 1');
        if (refused.kind === 'out-of-range') return refused;
        throw new Error('a row that is found and is not there');
      }
      const [row, add] = [Number(cell.at), rule.figure('add')];
      const value = peakOfSine(voltsRms(row + add));
      const why = rule.because(['add', 'sizesClearance']);
      return judged(value, because('short-overvoltage', { row, add, value }, why.cites));
    },
  };
}

/** The next higher step of the series of rated impulses; an impulse that has none is raised by the factor. */
export function reinforcedImpulse({ files, rules }: Tables, withstand: Judged<VoltsPeak>): Judged<VoltsPeak> {
  const rule = rules('reinforced-clearance');
  const series = seriesOf(files.mainsTransient, rule.figure('seriesMost'));
  const next = series.find((step) => step > withstand.value);
  if (series.includes(withstand.value) && next !== undefined) {
    const values = { from: withstand.value, to: next };
    const why = because('impulse-step', values, rule.because(['stepsUp', 'seriesMost']).cites, [
      withstand.because,
    ]);
    return judged(voltsPeak(next), why);
  }
  return timesPeak(
    rule.figure('factor'),
    withstand.value,
    [withstand.because],
    rule.because(['factor']).cites,
  );
}

/** Every impulse that table F.1 names for mains up to so much. */
function seriesOf({ lines }: Tables['files']['mainsTransient'], most: number): readonly number[] {
  const rows = [...lines.values()].flat().filter(({ at }) => Number(at) <= most);
  const all = rows.flatMap(({ value }) => (value === null ? [] : [value]));
  return [...new Set(all)].sort((a, b) => a - b);
}

export function timesPeak(
  factor: number,
  peak: VoltsPeak,
  from: readonly Because[],
  cites: readonly Cite[],
): Judged<VoltsPeak> {
  const value = voltsPeak(Number((peak * factor).toPrecision(12)));
  return judged(value, because('peak-raised', { peak, factor, value }, cites, from));
}

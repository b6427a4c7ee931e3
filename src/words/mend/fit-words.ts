// The fit and the copper of a build, in words and rows of figures.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { CopperReport, LayerRows, WindingCopper } from '#judge/study/copper.ts';
import type { Fit } from '#judge/verdict/verdict.ts';
import { lengthNear, lengthTaken } from '#words/text/number-words.ts';

export const COPPER_SOURCE =
  'Copper after IEC 60028:1925: 1/58 ohm mm²/m at 20 °C, 0.00393 a kelvin, 8.89 g/cm³ (memory). Leads outside the former are not counted.';

export const windowWords = ({ height }: Fit, { left, fill }: CopperReport): string =>
  `Height ${lengthTaken(height.used)} of ${lengthNear(height.available)} ${lengthUnit()}, ${Math.round(fill * 100)} % full, ${lengthNear(left)} ${lengthUnit()} to a full window${left < 0 ? ': it does not fit' : ''}.`;

/** `layer 3: 20 turns of S in 2 rows of 11, 9 in the last; 2 more find room`. */
export function rowsWords({
  layer,
  winding,
  turns,
  rows,
  turnsPerRow,
  lastRow,
  spare,
  isFull,
  doubtful,
}: LayerRows): string {
  const room = isFull
    ? 'the next turn starts a row'
    : `${spare} more ${spare === 1 ? 'finds' : 'find'} room before another row`;
  const doubt = doubtful ? '; a row is full to the last turn and the wire has no width to return' : '';
  return `layer ${layer + 1}: ${turns} turns of ${winding} in ${rows} ${rows === 1 ? 'row' : 'rows'} of up to ${turnsPerRow}, ${lastRow} in the last; ${room}${doubt}`;
}

export const meanTurnWords = (mm: number): string =>
  lengthUnit() === 'mm' ? `${mm.toFixed(1)} mm` : `${lengthNear(mm)} ${lengthUnit()}`;

export function copperWords(copper: WindingCopper): string {
  const { winding, turns, meanTurn, meanTurnFrom, length } = copper;
  const mean = `mean turn ${meanTurnWords(meanTurn)}${meanTurnFrom === 'estimate' ? ' (estimated: the file has no tube)' : ''}`;
  return `${winding}: ${turns} turns, ${mean}, ${length.toFixed(2)} m of wire, ${ohmsWords(copper)}`;
}

function ohmsWords({ ohmsCold, ohmsHot, hotAt, weight }: WindingCopper): string {
  if (ohmsCold === null || weight === null) return 'resistance unknown: the conductor is';
  const hot =
    ohmsHot === null || hotAt === null
      ? 'hot unknown: no temperature is stated'
      : `${ohms(ohmsHot)} at ${hotAt} °C`;
  return `${ohms(ohmsCold)} at 20 °C, ${hot}, ${weight.toFixed(2)} g of copper`;
}

/** Three digits, in ohms or milliohms. */
export const ohms = (value: number): string =>
  value < 1 ? `${Number((value * 1000).toPrecision(3))} mΩ` : `${Number(value.toPrecision(3))} Ω`;

export const fitLines = (fit: Fit, report: CopperReport): readonly string[] => [
  windowWords(fit, report),
  ...report.rows.map(rowsWords),
  ...report.windings.map(copperWords),
  COPPER_SOURCE,
];

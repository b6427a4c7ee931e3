// How every winding fits and what copper it takes: mean turn, length of wire, resistance cold and hot, weight; how full each
// row is, and where one turn more would start another. Taken from the fit as it was judged, every figure nominal.
//
// Copper: IEC 60028:1925, "International standard of resistance for copper": 1/58 ohm mm2/m at 20 degC, 0.00393 a kelvin,
// 8.89 g/cm3 (memory). No layer of insulation and no lead outside the former is counted in the length.

import type { Design } from '#model/design.ts';
import type { WindingLayer } from '#model/design/layer.ts';
import type { Winding } from '#model/design/winding.ts';
import { isKnown } from '#model/quantity/reading.ts';
import { inMm, nm } from '#units/quantity.ts';
import { meanTurn, type MeanTurn } from '#judge/drawn-field/mean-turn.ts';
import type { Fit } from '#judge/verdict/verdict.ts';

/** ohm mm2/m at 20 degC. */
const RESISTIVITY = 1 / 58;
const PER_KELVIN = 0.00393;
const COLD = 20;
/** g/cm3. */
const DENSITY = 8.89;

export interface WindingCopper {
  readonly winding: string;
  readonly turns: number;
  /** Of all its layers, mm. */
  readonly meanTurn: number;
  readonly meanTurnFrom: MeanTurn['from'];
  /** Of one strand, m. */
  readonly length: number;
  /** Null where the conductor is not known. */
  readonly ohmsCold: number | null;
  readonly ohmsHot: number | null;
  /** Temperature of the hot resistance, degC; null where none is known. */
  readonly hotAt: number | null;
  /** Grams. */
  readonly weight: number | null;
}

export interface LayerRows {
  readonly layer: number;
  readonly winding: string;
  readonly turns: number;
  readonly rows: number;
  readonly turnsPerRow: number;
  /** Turns in the last row. */
  readonly lastRow: number;
  /** Turns that still find room before another row starts. */
  readonly spare: number;
  readonly height: number;
  /** The next turn starts a row. */
  readonly isFull: boolean;
  readonly doubtful: boolean;
}

export interface CopperReport {
  readonly windings: readonly WindingCopper[];
  readonly rows: readonly LayerRows[];
  /** mm left of the window's height, less the file's tolerance of it. */
  readonly left: number;
  readonly fill: number;
}

export function copperReport(design: Design, fit: Fit): CopperReport {
  const rows = rowsOf(design, fit);
  const heightTolerance = inMm(design.former.height.plusMinus);
  const { used, available } = fit.height;
  return {
    rows,
    windings: design.windings.flatMap((winding) => copperOf(design, winding, fit)),
    left: round(available - heightTolerance - used),
    fill: available > 0 ? round(used / available) : 1,
  };
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

function rowsOf(design: Design, { chambers }: Fit): readonly LayerRows[] {
  return chambers.flatMap(({ layers }) =>
    layers.flatMap(({ layer, rows, turnsPerRow, height, doubtful }): readonly LayerRows[] => {
      const found = design.layers[layer];
      if (found?.kind !== 'winding' || typeof found.turns !== 'number' || rows === 0) return [];
      const lastRow = found.turns - (rows - 1) * turnsPerRow;
      const spare = turnsPerRow - lastRow;
      const { winding, turns } = found;
      return [
        { layer, winding, turns, rows, turnsPerRow, lastRow, spare, height, isFull: spare === 0, doubtful },
      ];
    }),
  );
}

/** Nothing where a number of turns is not known. */
function copperOf(design: Design, winding: Winding, { chambers }: Fit): readonly WindingCopper[] {
  const parts = chambers.flatMap(({ layers }) => {
    let top = 0;
    return layers.flatMap(({ layer, height }) => {
      top += height;
      const found = design.layers[layer];
      return found?.kind === 'winding' && found.winding === winding.id
        ? [{ found, middle: top - height / 2 }]
        : [];
    });
  });
  if (parts.length === 0 || parts.some(({ found }) => typeof found.turns !== 'number')) return [];
  const turns = parts.reduce((sum, { found }) => sum + turnsIn(found), 0);
  if (turns === 0) return [];
  const means = parts.map(({ found, middle }) => ({
    turns: turnsIn(found),
    mean: meanTurn(design, nm(Math.round(middle * 1e6))),
  }));
  const length = means.reduce((sum, one) => sum + one.turns * one.mean.millimetres, 0) / 1000;
  const strands = Math.max(...parts.map(({ found }) => found.strands));
  const section = sectionOf(winding, strands);
  const hottest = design.surroundings.hottestInsulation;
  const hotAt = isKnown(hottest) ? hottest.value : null;
  const ohmsCold = section === null ? null : (RESISTIVITY * length) / section;
  return [
    {
      winding: winding.id,
      turns,
      meanTurn: round((length * 1000) / turns),
      meanTurnFrom: means[0]!.mean.from,
      length: round(length),
      ohmsCold,
      ohmsHot: ohmsCold === null || hotAt === null ? null : ohmsCold * (1 + PER_KELVIN * (hotAt - COLD)),
      hotAt,
      weight: section === null ? null : round(section * length * DENSITY),
    },
  ];
}

const turnsIn = ({ turns }: WindingLayer): number => (typeof turns === 'number' ? turns : 0);

/** Of all strands, mm2. */
function sectionOf({ wire }: Winding, strands: number): number | null {
  const { conductor, litzStrands } = wire;
  if (conductor === null || !isKnown(conductor)) return null;
  const area = (Math.PI / 4) * inMm(conductor.value) ** 2;
  return area * strands * (wire.kind === 'litz' ? (litzStrands ?? 1) : 1);
}

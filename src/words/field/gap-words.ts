// The gaps of air in words: where each is, what it carries and holds.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Design } from '#model/design.ts';
import type { DividedPart, FieldGap, FieldReport, GapEnd } from '#judge/field/field-report.ts';
import { times, within } from './field-headline.ts';
import { dimension, volts } from '#words/text/number-words.ts';

export function gapLines(design: Design, report: FieldReport): readonly string[] {
  const gaps = report.gaps.map(
    (gap, i) =>
      `${i + 1}  ${gapPlace(design, gap)}: ${microns(gap.length)}, carries ${volts(gap.peak)}${within(gap.error)}, holds ${volts(gap.holds)}, ${times(gap.margin)}; starts at ${volts(gap.startsAt)} across its pair`,
  );
  const division = report.division.length === 0 ? [] : [`gap 1 divides: ${divisionWords(report.division)}`];
  return [...gaps, ...division];
}

/** What the gap carries at work, or at the proving test of its pair where one is asked. */
export const carried = (gap: FieldGap, atTest: boolean): number => gap.holds / marginOf(gap, atTest);

export const marginOf = ({ margin, startsAt, test }: FieldGap, atTest: boolean): number =>
  atTest && test !== null ? startsAt / test : margin;

export function gapSentence(design: Design, gap: FieldGap, atTest: boolean): string {
  const margin = marginOf(gap, atTest);
  const answer = margin > 1 ? `it would hold ${volts(gap.holds)}` : `it holds ${volts(gap.holds)} only`;
  const when = atTest && gap.test !== null ? 'At the test, the' : 'The';
  const strength = (carried(gap, atTest) / gap.length / 1000).toFixed(1);
  return `${when} air ${gapPlace(design, gap)} carries ${volts(carried(gap, atTest))} over ${microns(gap.length)}, ${strength} kV/mm; ${answer}.`;
}

export const microns = (millimetres: number): string => {
  if (lengthUnit() !== 'mm') return `${dimension(millimetres)} ${lengthUnit()}`;
  const um = millimetres * 1000;
  return um < 1000 ? `${um < 10 ? um.toFixed(1) : Math.round(um)} µm` : `${millimetres.toFixed(2)} mm`;
};

export function gapPlace(design: Design, { ends, layers }: FieldGap): string {
  const [a, b] = ends.map((end, i) => endWords(design, end, layers[i]!));
  return a === b ? `between two of ${a}` : `between ${a} and ${b}`;
}

function endWords(design: Design, end: GapEnd, layer: number | null): string {
  const drawn = layer === null ? null : design.layers[layer];
  const number = layer === null ? '' : ` (layer ${layer + 1})`;
  switch (end) {
    case 'turn':
      return `winding ${drawn?.kind === 'winding' ? drawn.winding : ''}${number}`;
    case 'ply':
      return layer === null ? 'the wall of the former' : `the tape${number}`;
    case 'block':
      return `the margin${number}`;
    case 'former':
      return 'the former';
    case 'wrap':
      return 'the tape on the core';
    case 'screen':
      return `the screen${number}`;
    case 'core':
      return 'the core';
    case 'frame':
      return 'the edge of the picture';
  }
}

export const divisionWords = (parts: readonly DividedPart[]): string =>
  parts.map((part) => `${partWords(part)} ${volts(part.volts)}`).join(', ');

export function partWords({ what, ply }: DividedPart): string {
  if (what === 'ply') return ply === null ? 'ply' : `ply ${ply + 1}`;
  if (what === 'block') return 'margin';
  return what;
}

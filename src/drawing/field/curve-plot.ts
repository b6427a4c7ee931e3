// The first gaps in a plot of volts over length, both by their logarithms, with what air holds: places in pixels.

import type { FieldPicture } from '#judge/field/field-picture.ts';

export interface CurvePlot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly ticksX: readonly Tick[];
  readonly ticksY: readonly Tick[];
  readonly curve: string;
  /** The region over the curve. */
  readonly above: string;
  readonly gaps: readonly {
    readonly number: number;
    readonly x: number;
    readonly work: number;
    readonly test: number | null;
  }[];
}

interface Tick {
  readonly at: number;
  readonly words: string;
}

const SIZE = { width: 420, height: 320, left: 44, right: 410, top: 8, bottom: 280 } as const;
const MICROMETRES = { from: 5, to: 2000 } as const;
const VOLTS = { from: 20, to: 10_000 } as const;
const MOST = 8;

export function curvePlot({ report, curve }: FieldPicture): CurvePlot {
  const x = (mm: number) => along(mm * 1000, MICROMETRES, SIZE.left, SIZE.right);
  const y = (volts: number) => along(volts, VOLTS, SIZE.bottom, SIZE.top);
  const line = curve.map(([length, holds]) => `${x(length).toFixed(1)} ${y(holds).toFixed(1)}`).join('L');
  const words = (value: number) => `${value}`;
  return {
    ...SIZE,
    ticksX: [5, 10, 20, 50, 100, 200, 500, 1000].map((um) => ({ at: x(um / 1000), words: words(um) })),
    ticksY: [20, 50, 100, 200, 500, 1000, 2000, 5000].map((volts) => ({ at: y(volts), words: words(volts) })),
    curve: `M${line}`,
    above: `M${line}L${SIZE.right} ${SIZE.top}L${SIZE.left} ${SIZE.top}Z`,
    gaps: report.gaps.slice(0, MOST).map((gap, i) => ({
      number: i + 1,
      x: x(gap.length),
      work: y(gap.peak),
      test: gap.test === null ? null : y((gap.holds * gap.test) / gap.startsAt),
    })),
  };
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/** By the logarithm, kept within the plot. */
function along(value: number, { from, to }: Span, low: number, high: number): number {
  const share = Math.log(Math.max(value, from) / from) / Math.log(to / from);
  return low + (high - low) * Math.min(1, Math.max(0, share));
}

// Where an interval is judged: at both ends, and on both sides of every place between where the build changes its kind (turns
// take another number of rows, a solid becomes strong), for there a distance jumps and neither end need be the worse.

import type { Design } from '#model/design.ts';
import type { Build } from '#solver/section/build.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { Nm } from '#units/quantity.ts';
import { WORST, settled, withEnds } from '#judge/assume/assumption.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import type { Judging } from '#judge/once/judging.ts';

export interface IntervalPoint {
  /** Part of the half-width from the nominal value, -1 to 1. */
  readonly end: number;
  /** The build is of the kind that it is at the nominal value. */
  readonly keepsKind: boolean;
}

/** How finely a change is looked for: 2^-20 of the half-width is a nanometre in a millimetre. */
const FINEST = 2 ** -20;

export function pointsOf({ book }: Judging, design: Design, path: string): readonly IntervalPoint[] {
  const least = book.leastThickness().value;
  const kind = (end: number): string => {
    const choice = end === 0 ? WORST : withEnds(new Map([[path, end]]));
    const { drawn } = fillBuild(settled(design, choice.ends), book, choice);
    return drawn.map((build) => kindOf(build, least)).join();
  };
  const nominal = kind(0);
  const between = (low: number, high: number): readonly number[] => {
    if (kind(low) === kind(high)) return [];
    if (high - low <= FINEST) return [low, high];
    const middle = (low + high) / 2;
    return [...between(low, middle), ...between(middle, high)];
  };
  const ends = [-1, ...between(-1, 0), ...between(0, 1), 1].filter((end) => end !== 0);
  return [...new Set(ends)].map((end) => ({ end, keepsKind: kind(end) === nominal }));
}

/** Rows of every layer, and which solids are as thick as the rule book asks of one alone. */
function kindOf(build: Build, least: Nm): string {
  const { lays, wall, flange, dividers, wrap, layers } = build;
  const rows = chamberFits(build).flatMap((fit) => fit.layers.map((layer) => layer.rows));
  const thick = [
    ...lays.map(({ sleeve }) => sleeve?.wall ?? 0),
    wall.kind === 'moulded' ? wall.thickness : wall.plyThickness,
    flange,
    ...dividers,
    wrap?.plyThickness ?? 0,
    ...layers.map((layer) => (layer.kind === 'tape' ? layer.plyThickness : 0)),
  ];
  return [...rows, ...thick.map((thickness) => Number(thickness >= least))].join(' ');
}

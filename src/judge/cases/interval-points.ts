// Where an interval is judged: at both ends, and on both sides of every place between where the build changes its kind (turns
// take another number of rows, a solid becomes strong), for there a distance jumps and neither end need be the worse.

import type { Design } from '#model/design.ts';
import type { Build, StuffId } from '#solver/section/build.ts';
import type { RunStep } from '#solver/network/pieces.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { Nm } from '#units/quantity.ts';
import { WORST, settled, withEnds } from '#judge/assume/assumption.ts';
import { StuffNumbers } from '#judge/assume/stuff.ts';
import { fillBuild } from '#judge/fill/fill-build.ts';
import { askedOf } from '#judge/grade/path-requirement.ts';
import { solidRuns } from '#judge/grade/solid-runs.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';
import type { Judging } from '#judge/once/judging.ts';

export interface IntervalPoint {
  /** Part of the half-width from the nominal value, -1 to 1. */
  readonly end: number;
  /** The build is of the kind that it is at the nominal value. */
  readonly keepsKind: boolean;
}

/** How finely a change is looked for: 2^-20 of the half-width is a nanometre in a millimetre. */
const FINEST = 2 ** -20;

/** `pairs`: as judged with all intervals nominal, which says what their solids have to show. */
export function pointsOf(
  { book, rules }: Judging,
  design: Design,
  path: string,
  pairs: readonly PairOutcome[],
): readonly IntervalPoint[] {
  const questions = pairs.map((pair) => ({ ...pair, asked: askedOf(pair.required, true) }));
  const numbers = new StuffNumbers();
  const kind = (end: number): string => {
    const choice = end === 0 ? WORST : withEnds(new Map([[path, end]]));
    const { drawn, stuffs } = fillBuild(settled(design, choice.ends), book, choice, numbers);
    const { runs } = solidRuns(questions, stuffs, rules, numbers);
    return drawn.map((build) => kindOf(build, runs)).join();
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

/** Rows of every layer, and what every solid is worth across: as thick as it takes to be strong, or to show so much. */
function kindOf(build: Build, runs: readonly (readonly RunStep[])[]): string {
  const rows = chamberFits(build).flatMap((fit) => fit.layers.map((layer) => layer.rows));
  const worth = solidsOf(build).map(
    ([stuff, thickness]) => runs[stuff]!.filter(({ below }) => thickness >= below).length,
  );
  return [...rows, ...worth].join(' ');
}

type Thick = readonly [StuffId, thickness: Nm];

function solidsOf({ lays, wall, flange, dividers, moulding, wrap, layers }: Build): readonly Thick[] {
  const tapes = layers.map((layer) => (layer.kind === 'tape' ? layer : null));
  const sheets = [wrap, wall.kind === 'plies' ? wall : null, ...tapes];
  const covers = layers.map((layer) => (layer.kind === 'winding' ? layer.wire.cover : null));
  const moulded = [flange, ...dividers, ...(wall.kind === 'moulded' ? [wall.thickness] : [])];
  return [
    ...moulded.map((thickness): Thick => [moulding, thickness]),
    ...lays.flatMap(({ sleeve }): readonly Thick[] => (sleeve ? [[sleeve.stuff, sleeve.wall]] : [])),
    ...sheets.flatMap((sheet): readonly Thick[] => (sheet ? [[sheet.stuff, sheet.plyThickness]] : [])),
    ...covers.flatMap((cover): readonly Thick[] => (cover ? [[cover.stuff, cover.thickness]] : [])),
  ];
}

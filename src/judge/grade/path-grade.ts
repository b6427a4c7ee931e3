// Grades one whole path: each piece by its distance and its solids, and the sum of distances over floating conductors.

import { type Insulation, worthOf } from '#books/questions/insulation.ts';
import type { LevelsOf } from '#books/questions/solid.ts';
import type { SolidsById } from '#judge/assume/stuff.ts';
import { because, type Because, judgedLater, type Judged } from '#standards/because.ts';
import { type Chain, type ChainPiece, chainLength, chainPlies, chainRank, countedLength } from './chain.ts';
import { distanceInsulation, highest, inSeries } from './grade.ts';
import type { Grade } from '#units/terms.ts';
import { solidInsulations, type SolidRules } from './solid-rules.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

/** What one pair asks along one metric, ready for grading many paths. */
export interface Asked {
  /** Required distances by tracking rank of the path; null where the book has no figure. */
  readonly distance: (rank: number) => { readonly basic: Nm | null; readonly reinforced: Nm | null };
  readonly levels: LevelsOf;
  readonly x: Nm;
  /** What is asked of the file's distances outside that have a voltage of their own; null where the pair's holds. */
  readonly places: readonly (Asked | null)[];
}

/** What is asked of one piece: a place outside may have a voltage of its own. */
export const askedOfPiece = (piece: ChainPiece, asked: Asked): Asked =>
  piece.kind === 'outside' && piece.entry !== null ? (asked.places[piece.entry] ?? asked) : asked;

export interface GradingTools {
  readonly stuffs: SolidsById;
  readonly rules: SolidRules;
}

/** Lowest grade of the ladder that a path can be: contact of bare metal is told apart by the caller. */
export function gradeOfPath(chain: Chain, asked: Asked, tools: GradingTools): Judged<Grade> {
  const inTurn = chain.pieces.flatMap((piece) =>
    insulationsOf(piece, countedLength(chain, piece, asked.x), asked, tools),
  );
  const grade = gradeInSeries(inTurn);
  if (chain.pieces.length === 1) return judgedLater(grade, () => pathGrade(chain, asked, grade, inTurn));
  // the rule for floating parts: the lengths, never the plies, are summed and graded like one piece
  const together = [distanceWorth(chainLength(chain, asked.x), asked, chainRank(chain))];
  const better = highest(grade, gradeInSeries(together));
  return judgedLater(better, () => pathGrade(chain, asked, better, better === grade ? inTurn : together));
}

const gradeInSeries = (insulations: readonly Judged<Insulation>[]): Grade =>
  inSeries(insulations.map(({ value }) => value));

function pathGrade(
  chain: Chain,
  { x }: Asked,
  grade: Grade,
  insulations: readonly Judged<Insulation>[],
): Because {
  const length = inMm(nm(Math.round(chainLength(chain, x))));
  const uncounted = chain.pieces.flatMap((piece) =>
    piece.length > 0 && countedLength(chain, piece, x) === 0 ? [inMm(piece.length)] : [],
  );
  const values = { length, uncounted, plies: chainPlies(chain), insulations: insulations.length, grade };
  return because(
    'path-grade',
    values,
    [],
    insulations.map((one) => one.because),
  );
}

/** What a piece of a chain over conductors is worth in series: how many insulations of each kind it holds. */
export function seriesWeights(piece: ChainPiece, asked: Asked, tools: GradingTools): readonly number[] {
  const counted = piece.length < asked.x ? 0 : piece.length;
  const insulations = insulationsOf(piece, counted, asked, tools);
  const count = (kind: keyof Insulation): number => insulations.filter(({ value }) => value[kind]).length;
  return [count('basic'), count('supplementary'), count('reinforced')];
}

function insulationsOf(
  piece: ChainPiece,
  length: number,
  asked: Asked,
  tools: GradingTools,
): readonly Judged<Insulation>[] {
  const distance = distanceWorth(length, askedOfPiece(piece, asked), piece.rank);
  if (piece.kind === 'outside') return [distance];
  return [distance, ...solidInsulations(piece.piece.punctured, tools.stuffs, asked.levels, tools.rules)];
}

function distanceWorth(length: number, asked: Asked, rank: number): Judged<Insulation> {
  const { basic, reinforced } = asked.distance(rank);
  const value = distanceInsulation(length, basic, reinforced);
  return judgedLater(value, () =>
    because('distance-worth', {
      length: inMm(nm(Math.round(length))),
      basic: basic === null ? null : inMm(basic),
      reinforced: reinforced === null ? null : inMm(reinforced),
      worth: worthOf(value),
    }),
  );
}

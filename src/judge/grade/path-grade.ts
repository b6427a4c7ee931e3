// Grades one whole path: each piece by its distance and its solids, and the sum of distances over floating conductors.

import type { Stuff } from './stuff.ts';
import type { Chain, ChainPiece } from './chain.ts';
import { chainLength, chainRank, countedLength } from './chain.ts';
import { distanceInsulation, highest, inSeries, type Insulation } from './grade.ts';
import type { Grade } from '#standards/grade.ts';
import { type LevelsOf, solidInsulations, type SolidRules } from './solid-grade.ts';
import type { Nm } from '#units/quantity.ts';

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
  readonly stuffs: readonly Stuff[];
  readonly rules: SolidRules;
}

/** Lowest figure of the ladder that a path can be: contact of bare metal is told apart by the caller. */
export function gradeOfChain(chain: Chain, asked: Asked, tools: GradingTools): Grade {
  const single = chain.pieces.length === 1;
  const inTurn = inSeries(
    chain.pieces.flatMap((piece) => insulationsOf(piece, countedLength(chain, piece, asked.x), asked, tools)),
  );
  if (single) return inTurn;
  // the rule for floating parts: the lengths, never the plies, are summed and graded like one piece
  const limits = asked.distance(chainRank(chain));
  const together = inSeries([
    distanceInsulation(chainLength(chain, asked.x), limits.basic, limits.reinforced),
  ]);
  return highest(inTurn, together);
}

/** What a piece of a chain over conductors is worth in series: how many insulations of each kind it holds. */
export function seriesWeights(piece: ChainPiece, asked: Asked, tools: GradingTools): readonly number[] {
  const counted = piece.length < asked.x ? 0 : piece.length;
  const insulations = insulationsOf(piece, counted, asked, tools);
  const count = (kind: keyof Insulation): number => insulations.filter((one) => one[kind]).length;
  return [count('basic'), count('supplementary'), count('reinforced')];
}

function insulationsOf(
  piece: ChainPiece,
  length: number,
  asked: Asked,
  tools: GradingTools,
): readonly Insulation[] {
  const limits = askedOfPiece(piece, asked).distance(piece.rank);
  const distance = distanceInsulation(length, limits.basic, limits.reinforced);
  if (piece.kind === 'outside') return [distance];
  return [distance, ...solidInsulations(piece.piece.punctured, tools.stuffs, asked.levels, tools.rules)];
}

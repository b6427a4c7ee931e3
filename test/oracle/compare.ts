// The solver held against the oracle on random builds: every section that both lay out, every two conductors in it, every
// number of plies punctured.

import * as fc from 'fast-check';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import type { Metric } from '#units/terms.ts';
import type { Build } from '#solver/section/build.ts';
import { sectionsMovedAlone, sectionsOf } from '#solver/placing/lay-out.ts';
import type { Section } from '#solver/section/section.ts';
import { mm } from '#units/quantity.ts';
import { arbitraryDesign } from './arbitrary-build.ts';
import { fillKnown } from './fill-known.ts';
import { oraclePaths, type OraclePiece } from './oracle-paths.ts';
import { oracleSections, oracleSectionsMovedAlone, type OracleSection } from './oracle-section.ts';

const LEAST = mm(0.4);
const MOST_PLIES = 3;

export interface Comparison {
  readonly metric: Metric;
  readonly builds: number;
  readonly seed: number;
  /** Lengths nearer than this are the same, nanometres. */
  readonly tolerance: number;
  /** Of the extra lines that straight lines through air may bend at; left out: 0.1 mm. */
  readonly spacing?: number;
  /** Of these builds only those at these places; left out: all. */
  readonly only?: readonly number[];
  /** The build to compare in place of a random one; null: none. */
  readonly change?: (file: object) => object | null;
}

/** Two lengths that are not the same. */
export interface Difference {
  readonly file: object;
  readonly section: string;
  readonly plies: number;
  readonly ours: number;
  readonly theirs: number;
  readonly piece: OraclePiece;
  readonly sections: readonly [ours: Section, theirs: OracleSection];
}

export interface Compared {
  readonly compared: number;
  readonly differences: readonly Difference[];
}

export function compare({ metric, tolerance, spacing = mm(0.1), ...builds }: Comparison): Compared {
  const options = { metric, x: mm(1), leastThickness: LEAST, trackingRank: [] };
  let compared = 0;
  const differences: Difference[] = [];
  for (const { file, build } of randomBuilds(builds)) {
    for (const sections of bothOf(build)) {
      const [mine, oracle] = sections;
      const pieces = shortestPieces(mine, options, build.closedJoint, MOST_PLIES);
      for (const piece of oraclePaths(oracle, options, spacing)) {
        piece.lengths.forEach((theirs, plies) => {
          const reach = pieces.filter(
            (each) => each.plies <= plies && piece.between.every((end) => each.between.includes(end)),
          );
          const ours = Math.min(Infinity, ...reach.map(({ length }) => length));
          compared++;
          if (ours === theirs || Math.abs(ours - theirs) <= tolerance) return;
          differences.push({ file, section: mine.name, plies, ours, theirs, piece, sections });
        });
      }
    }
  }
  return { compared, differences };
}

/** Every section of a build with the oracle's: all moved that can, and what belongs to one pair alone. */
function bothOf(build: Build): readonly (readonly [Section, OracleSection])[] {
  const options = { leastThickness: LEAST };
  const pair = ['pri', 'out'] as const;
  const alone = sectionsMovedAlone(build, pair, options);
  return [
    ...matched(sectionsOf(build, options), oracleSections(build, LEAST)),
    ...(alone.length === 0 ? [] : matched(alone, oracleSectionsMovedAlone(build, pair, LEAST))),
  ];
}

function matched(
  ours: readonly Section[],
  theirs: readonly OracleSection[],
): readonly (readonly [Section, OracleSection])[] {
  const named = new Map(ours.map((section) => [keyOf(section), section]));
  return theirs.flatMap((section) => {
    // one that equals the section as drawn is left out
    const mine = named.get(keyOf(section)) ?? named.get(keyOf({ ...section, slumped: null }));
    return mine ? [[mine, section] as const] : [];
  });
}

const keyOf = ({ lays, slumped }: Pick<Section, 'lays' | 'slumped'>): string =>
  `${lays.join(' + ')}|${slumped}`;

type RandomBuilds = Pick<Comparison, 'builds' | 'seed' | 'only' | 'change'>;

interface Made {
  readonly file: object;
  readonly build: Build;
}

function randomBuilds({ builds, seed, only, change = (file) => file }: RandomBuilds): readonly Made[] {
  return fc.sample(arbitraryDesign, { numRuns: builds, seed }).flatMap((json, i) => {
    const file = only && !only.includes(i) ? null : change(json);
    if (file === null) return [];
    const read = readDesign(JSON.parse(JSON.stringify(file)), knownIds);
    return read.kind === 'bad' ? [] : [{ file, build: fillKnown(read.design) }];
  });
}

// Lay-out and path finder against a second, slow implementation written from the specification alone (test/oracle):
// dividers and third parts included, closed joints left out. Puncturing a solid at its very edge is allowed here and not there, so
// that with plies punctured our length may be the smaller one.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/fill/known-ids.ts';
import type { Build } from '#solver/section/build.ts';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import { sectionsOf } from '#solver/section/lay-out.ts';
import type { Metric } from '#solver/paths/pieces.ts';
import type { Section } from '#solver/section/section.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import { fillKnown } from '#test/oracle/fill-known.ts';
import { oraclePaths } from '#test/oracle/oracle-paths.ts';
import { oracleSections } from '#test/oracle/oracle-section.ts';
import { mm } from '#units/quantity.ts';

const LEAST = mm(0.4);
const SEED = Number(process.env['ORACLE_SEED'] ?? 20261125);
/** How many times as many builds; more than one where there is time. */
const TIMES = Number(process.env['ORACLE_TIMES'] ?? 1);
const MOST_PLIES = 3;

describe('path finder against the oracle', () => {
  it('should find the same surface paths in random builds', () => {
    const found = compare('creepage', 120 * TIMES, mm(0.001));
    expect(found.longer, `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(1000);
    expect(found.differing / found.compared).toBeLessThan(0.01);
  });

  it('should find the same ways through air in random builds', () => {
    const found = compare('clearance', 10 * TIMES, mm(0.02));
    expect(found.longer, `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(100);
    expect(found.differing / found.compared).toBeLessThan(0.03);
  });
});

interface Compared {
  readonly compared: number;
  readonly differing: number;
  /** Where ours is longer without a ply punctured: a path was missed. */
  readonly longer: readonly string[];
}

function compare(metric: Metric, builds: number, tolerance: number): Compared {
  const options = { metric, x: mm(1), leastThickness: LEAST, trackingRank: [] };
  let compared = 0;
  let differing = 0;
  const longer: string[] = [];
  for (const build of randomBuilds(builds)) {
    const ours = new Map(
      sectionsOf(build, { leastThickness: LEAST }).map((section) => [keyOf(section), section]),
    );
    for (const theirs of oracleSections(build, LEAST)) {
      const section = ours.get(keyOf(theirs)) ?? ours.get(keyOf({ ...theirs, slumped: null }));
      if (!section) continue;
      const pieces = shortestPieces(section, options, build.closedJoint, MOST_PLIES);
      for (const { between, lengths } of oraclePaths(theirs, options, mm(0.1))) {
        lengths.forEach((theirLength, plies) => {
          const mine = pieces.filter(
            (piece) => piece.plies <= plies && between.every((end) => piece.between.includes(end)),
          );
          const ourLength = Math.min(Infinity, ...mine.map((piece) => piece.length));
          compared++;
          if (ourLength === theirLength || Math.abs(ourLength - theirLength) <= tolerance) return;
          differing++;
          if (ourLength > theirLength && plies === 0) longer.push(`${keyOf(theirs)} ${between.join(' to ')}`);
        });
      }
    }
  }
  return { compared, differing, longer };
}

function randomBuilds(count: number): readonly Build[] {
  return fc.sample(arbitraryDesign, { numRuns: count, seed: SEED }).flatMap((json) => {
    const read = readDesign(JSON.parse(JSON.stringify(json)), knownIds);
    if (read.kind === 'bad') return [];
    const build = fillKnown(read.design);
    const closed = build.potted || build.layers.some((layer) => layer.kind === 'tape' && layer.cemented);
    return closed ? [] : [build];
  });
}

const keyOf = ({ lays, slumped }: Pick<Section, 'lays' | 'slumped'>): string =>
  `${lays.join(' + ')}|${slumped}`;

// Lay-out and path finder against a second, slow implementation written from the specification alone (test/oracle):
// dividers and third parts included, closed joints left out. Puncturing a solid at its very edge is allowed here and not there, so
// that with plies punctured our length may be the smaller one.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Build } from '#solver/section/build.ts';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import { sectionsMovedAlone, sectionsOf } from '#solver/placing/lay-out.ts';
import type { Metric } from '#units/terms.ts';
import type { Section } from '#solver/section/section.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import { fillKnown } from '#test/oracle/fill-known.ts';
import { oraclePaths } from '#test/oracle/oracle-paths.ts';
import { oracleSections, oracleSectionsMovedAlone, type OracleSection } from '#test/oracle/oracle-section.ts';
import { sideBySide } from '#test/oracle/side-by-side.ts';
import { mm } from '#units/quantity.ts';

const LEAST = mm(0.4);
const SEED = Number(process.env['ORACLE_SEED'] ?? 20261125);
/** How many times as many builds; more than one where there is time. */
const TIMES = Number(process.env['ORACLE_TIMES'] ?? 1);
const MOST_PLIES = 3;

describe('path finder against the oracle', () => {
  it('should find the same surface paths in random builds', () => {
    const found = compare('creepage', 40 * TIMES, mm(0.001));
    expect(found.longer, `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(1000);
    expect(found.differing / found.compared).toBeLessThan(0.005);
  });

  it('should find the same surface paths past windings side by side', () => {
    const found = compare('creepage', 40 * TIMES, mm(0.001), sideBySide);
    expect(found.longer, `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(300);
    expect(found.differing / found.compared).toBeLessThan(0.005);
  });

  it('should find the same ways through air in random builds', () => {
    const found = compare('clearance', 4 * TIMES, mm(0.02));
    expect(found.longer, `seed ${SEED}`).toEqual([]);
    expect(found.compared).toBeGreaterThan(100);
    expect(found.differing / found.compared).toBeLessThan(0.03);
  });
});

interface Compared {
  readonly compared: number;
  readonly differing: number;
  /** Where ours is longer: a path was missed. */
  readonly longer: readonly string[];
}

function compare(
  metric: Metric,
  builds: number,
  tolerance: number,
  change: (file: object) => object | null = (file) => file,
): Compared {
  const options = { metric, x: mm(1), leastThickness: LEAST, trackingRank: [] };
  let compared = 0;
  let differing = 0;
  const longer: string[] = [];
  for (const build of randomBuilds(builds, change)) {
    for (const [ours, theirs] of bothOf(build)) {
      const pieces = shortestPieces(ours, options, build.closedJoint, MOST_PLIES);
      for (const { between, lengths } of oraclePaths(theirs, options, mm(0.1))) {
        lengths.forEach((theirLength, plies) => {
          const mine = pieces.filter(
            (piece) => piece.plies <= plies && between.every((end) => piece.between.includes(end)),
          );
          const ourLength = Math.min(Infinity, ...mine.map((piece) => piece.length));
          compared++;
          if (ourLength === theirLength || Math.abs(ourLength - theirLength) <= tolerance) return;
          differing++;
          if (ourLength > theirLength) longer.push(`${ours.name}: ${between.join(' to ')}, ${plies} plies`);
        });
      }
    }
  }
  return { compared, differing, longer };
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

function randomBuilds(count: number, change: (file: object) => object | null): readonly Build[] {
  return fc.sample(arbitraryDesign, { numRuns: count, seed: SEED }).flatMap((json) => {
    const file = change(json);
    if (file === null) return [];
    const read = readDesign(JSON.parse(JSON.stringify(file)), knownIds);
    if (read.kind === 'bad') return [];
    const build = fillKnown(read.design);
    const closed = build.potted || build.layers.some((layer) => layer.kind === 'tape' && layer.cemented);
    return closed ? [] : [build];
  });
}

const keyOf = ({ lays, slumped }: Pick<Section, 'lays' | 'slumped'>): string =>
  `${lays.join(' + ')}|${slumped}`;

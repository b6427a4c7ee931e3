// All lengths times k, those of the options too: every measured length comes out k times as long. The width under which a gap
// counts as bridged is such a length: left as it was, the law must not hold. Ways through air to the core are left out:
// it is drawn half a millimetre deep whatever its build measures.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Build } from '#solver/section/build.ts';
import type { Piece } from '#solver/network/pieces.ts';
import type { Metric } from '#units/terms.ts';
import { shortestPieces } from '#solver/paths/find-pieces.ts';
import { sectionsOf } from '#solver/placing/lay-out.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import { fillKnown } from '#test/oracle/fill-known.ts';
import { mm, nm, type Nm } from '#units/quantity.ts';

const SEED = 20261130;
const RUNS = Number(process.env['LAW_RUNS'] ?? 12);
const X = mm(1);
const LEAST = mm(0.4);
const MOST_PLIES = 2;
/** The search through air costs much more. */
const MOST_SECTIONS = { creepage: 5, clearance: 1 } as const;
/** Past a conductor a way runs one nanometre off its edges, whatever the scale; and a length is a whole nanometre. */
const TOLERANCE = 40;

describe('all lengths times k', () => {
  it.each([2, 3])('should make every measured length as many times as long: %i', (k) => {
    const { compared, differing } = compare(k, nm(k * X));
    expect(differing, `seed ${SEED}`).toEqual([]);
    expect(compared).toBeGreaterThan(10 * RUNS);
  });

  it('should not, where the width of a bridged gap stays as it was', () => {
    expect(compare(3, X).differing).not.toEqual([]);
  });
});

interface Compared {
  readonly compared: number;
  readonly differing: readonly string[];
}

/** `x`: the width of a bridged gap in the build that is k times as large. */
function compare(k: number, x: Nm): Compared {
  let compared = 0;
  const differing: string[] = [];
  for (const file of fc.sample(arbitraryDesign, { numRuns: RUNS, seed: SEED })) {
    const [small, large] = [buildOf(file), buildOf(scaled(file, k))];
    for (const metric of ['creepage', 'clearance'] as const) {
      const before = lengthsOf(small, metric, X, LEAST);
      const after = lengthsOf(large, metric, x, nm(k * LEAST));
      compared += before.size;
      for (const name of new Set([...before.keys(), ...after.keys()])) {
        const [was, is] = [before.get(name) ?? Infinity, after.get(name) ?? Infinity];
        if (Math.abs(is - k * was) > TOLERANCE) differing.push(`${name}: ${was} to ${is}`);
      }
    }
  }
  return { compared, differing };
}

function lengthsOf(build: Build, metric: Metric, x: Nm, leastThickness: Nm): ReadonlyMap<string, number> {
  const options = { metric, x, leastThickness, trackingRank: [] };
  const named = ({ between, plies }: Piece): string => `${metric}, ${between.join(' to ')}, ${plies} plies`;
  return new Map(
    sectionsOf(build, { leastThickness })
      .slice(0, MOST_SECTIONS[metric])
      .flatMap((section) =>
        shortestPieces(section, options, build.closedJoint, MOST_PLIES)
          .filter(({ between }) => metric === 'creepage' || !between.includes('core'))
          .map((piece) => [`${section.name}: ${named(piece)}`, piece.length] as const),
      ),
  );
}

function buildOf(file: object): Build {
  const read = readDesign(JSON.parse(JSON.stringify(file)), knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return fillKnown(read.design);
}

/** Numbers of a file that are no length. */
const COUNTS: ReadonlySet<string> = new Set([
  'chamber',
  'crossTape',
  'grade',
  'insulationLayers',
  'plies',
  'strands',
  'turns',
]);

const scaled = (file: object, k: number): object =>
  JSON.parse(JSON.stringify(file), (key, value: unknown) =>
    typeof value === 'number' && !COUNTS.has(key) ? Number((value * k).toFixed(6)) : value,
  ) as object;

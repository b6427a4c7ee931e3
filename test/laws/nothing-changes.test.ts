// What must change nothing: mirror images, one layer of tape wound as two, other names and another order.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { copyOf, mirrored, renamed, renamedCircuit, split, verdictOf, type File } from './change-design.ts';
import { check, type Complain } from './check-law.ts';

describe('nothing changes', () => {
  it('should hold for a build and its mirror image', () => {
    check(
      (file) => [mirrored(file)],
      same,
      (file) =>
        copyOf(file, (copy) => {
          // windings that are not spread begin at their start lead; without one, always at the left
          for (const layer of copy.layers) if (layer.kind === 'winding') layer.spread = true;
        }),
    );
  });

  it('should hold for a build whose line through air starts along the end of a ply, and its mirror image', () => {
    const file = JSON.parse(
      readFileSync(new URL('./line-along-ply-end.json', import.meta.url), 'utf8'),
    ) as File;
    expect(same(verdictOf(file)!, verdictOf(mirrored(file))!)).toEqual([]);
  });

  it('should hold for a tape layer wound as two', () => {
    const each = (file: File) =>
      file.layers.flatMap((layer: File, at: number) =>
        layer.kind === 'tape' && layer.plies > 1 ? [split(file, at)] : [],
      );
    // plies that cannot be parted, closed joints and blocks beside the plies belong to one layer
    check(each, same, (file) =>
      copyOf(file, (copy) => {
        for (const layer of copy.layers)
          if (layer.kind === 'tape')
            Object.assign(layer, { bonded: false, cemented: false, margins: undefined });
      }),
    );
  });

  it('should hold for other names and another order of circuits and windings', () => {
    check(
      (file) => [renamed(file)],
      (before, after) => same(asRenamed(before), after),
    );
  });

  it('should hold for another order of the distances outside', () => {
    check(
      (file) => [copyOf(file, (copy) => copy.outside.reverse())],
      same,
      (file) =>
        copyOf(file, (copy) => {
          copy.outside = [
            ['pri', 'core', 0.5],
            ['out', 'core', 2],
            ['pri', 'out', 5.5],
            ['core', 'gnd', 1],
          ].map(([a, b, length]) => ({ between: [a, b], what: 'pins', clearance: length, creepage: length }));
        }),
    );
  });
});

const same: Complain = (before, after) => {
  const [was, now] = [factsOf(before), factsOf(after)];
  return now.flatMap((fact, i) => (fact === was[i] ? [] : [`${was[i]} became ${fact}`]));
};

function factsOf({ pairs, verdict }: Verdict): readonly string[] {
  const facts = pairs.map((pair) => {
    const name = pair.between.toSorted().join('-');
    const lengths = pair.paths.map(
      ({ metric, plies, length }) => `${metric} ${plies}: ${length?.toFixed(4)}`,
    );
    return `${name} ${pair.achieved} ${pair.achievedAtBest} ${pair.verdict} ${lengths.join(' ')}`;
  });
  return [verdict, ...facts.sort()];
}

const asRenamed = (verdict: Verdict): Verdict => ({
  ...verdict,
  pairs: verdict.pairs.map((pair) => {
    const [a, b] = pair.between;
    return { ...pair, between: [renamedCircuit(a), renamedCircuit(b)] as const };
  }),
});

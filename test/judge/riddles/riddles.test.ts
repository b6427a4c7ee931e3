// Builds of which two differ only in what must not matter, or not that way, and which were once judged apart.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';

function judged(name: string) {
  const read = readDesign(
    JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8')),
    knownIds,
  );
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return judge(read.design).verdict;
}

const pairOf = (name: string) => judged(name).pairs.find(({ between }) => between.join() === 'pri,out')!;

describe('riddles', () => {
  it('should not call for certain what one margin of two that are unknown could mend', () => {
    expect(pairOf('one-margin-known')).toMatchObject({ verdict: 'meets', achieved: 'double' });
    expect(pairOf('both-margins-unknown')).toMatchObject({ verdict: 'not-shown', achievedAtBest: 'double' });
  });

  it('should count every ply on a path, however many other solids the build holds', () => {
    const [enamelled, covered] = [pairOf('enamelled-far-below'), pairOf('covered-far-below')];
    expect([enamelled.achieved, covered.achieved]).toEqual(['double', 'double']);
    expect(covered.paths.map(({ length }) => length)).toEqual(enamelled.paths.map(({ length }) => length));
  });

  it('should end the plies of one layer at a riser as those of two', () => {
    const facts = (name: string) =>
      judged(name).pairs.map(({ between, achieved, achievedAtBest, paths }) => [
        between,
        achieved,
        achievedAtBest,
        paths.map(({ length }) => length),
      ]);
    expect(facts('tape-in-one-layer')).toEqual(facts('tape-in-two-layers'));
  });
});

// Builds of which two differ only in what must not matter, or not that way, and which were once judged apart.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import { graded } from '#test/laws/graded.ts';

type Margins = { layers: { margins: Record<'left' | 'right', { width: unknown }> }[] };
type File = { windings: { leads: unknown }[] };

const read = (name: string) => readFileSync(new URL(`./${name}.json`, import.meta.url), 'utf8');

function judged(name: string) {
  const design = readDesign(JSON.parse(read(name)), knownIds);
  if (design.kind === 'bad') throw new Error(JSON.stringify(design.faults));
  return judge(design.design).verdict;
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

  // the auxiliary winding's bare lead stands before the primary's, whose sleeve of 0.5 mm shows no strength: through five
  // turns of the margin block, 1.15 mm of flange, then 3 mm in the sleeve as one ply of nothing shown
  it('should not reach more past leads of which nothing is known than along a sleeve that shows nothing', () => {
    const leads = JSON.parse(read('sleeved-lead-of-a-third')) as File;
    const reached = (sleeved: unknown) => {
      leads.windings[0]!.leads = sleeved;
      return graded(leads)!.pairs.find(({ name }) => name === 'aux-gnd')!.atWorst;
    };
    expect(reached(leads.windings[0]!.leads)).toBe('basic');
    expect(reached('unknown')).toBe('basic');
  });

  // two margins of 6.5 and 5 mm reach it; so do two of 7.4, the half of what the turns leave, but not all at one side
  it('should not call short for certain what two unknown margins alike would mend', () => {
    const file = JSON.parse(read('margins-of-a-winding-unknown')) as Margins;
    for (const side of ['left', 'right'] as const) file.layers[0]!.margins[side].width = 'unknown';
    const pair = graded(file)!.pairs.find(({ name }) => name === 'out-aux');
    expect(pair).toMatchObject({ atWorst: 'basic', atBest: 'reinforced' });
  });

  // along the cover of the primary's wire, one ply however long, the auxiliary is 0.15 + 1.65 mm from earth on the other side
  it('should not reach more past a wire of which nothing is known than past one whose cover shuts no way', () => {
    const file = JSON.parse(read('wire-that-others-pass')) as { windings: { wire: { kind: string } }[] };
    const reached = () => graded(file)!.pairs.find(({ name }) => name === 'aux-gnd')!.atWorst;
    expect(reached()).toBe('basic');
    file.windings[0]!.wire.kind = 'unknown';
    expect(reached()).toBe('basic');
  });
});

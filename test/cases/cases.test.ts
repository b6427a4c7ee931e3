import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { told } from '#words/told.ts';
import { headline } from '#words/verdict/pair-words.ts';
import { complaints, isAt, mustBeRefused, refusalOf } from './complaints.ts';
import { cases } from './read-cases.ts';

describe('known answers', () => {
  it('should be there, each with its arithmetic', () => {
    expect(cases.length).toBeGreaterThanOrEqual(140);
    for (const { as, says } of cases) expect(as.length * says.length).toBeGreaterThan(0);
  });

  it.each(cases)('should hold for $id', (known) => {
    const read = readDesign(known.design, knownIds);
    const refusal = refusalOf(known);
    if (read.kind === 'bad') {
      expect(read.faults.filter(({ field }) => !isAt(refusal ?? [], field))).toEqual([]);
      return;
    }
    expect(mustBeRefused(known)).toBe(false);
    const { verdict } = judge(read.design);
    const words = headline(verdict, circuitLooks(read.design.circuits));
    expect(complaints(known, told(verdict), words)).toEqual([]);
  });
});

describe('complaints', () => {
  const [known] = cases;
  if (known === undefined) throw new Error('there are no cases');
  const read = readDesign(known.design, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  const { verdict } = judge(read.design);
  const [pair] = verdict.pairs;
  if (pair === undefined) throw new Error('a case without a pair');

  it('should notice every kind of difference', () => {
    const between = pair.between;
    const wrong = [
      { overall: verdict.verdict === 'meets' ? 'falls-short' : 'meets' },
      { fitHeight: verdict.fit.height.used + 1, tol: 0.1 },
      { pair: between, achieved: 'nothing of the kind' },
      { pair: between, verdict: 'nothing of the kind' },
      { pair: between, metric: 'creepage', plies: 0, length: -1, tol: 0.5 },
      { pair: between, clearance: { basic: -1 } },
      { pair: between, weakSpot: 'nothing of the kind' },
      { pair: ['no', 'pair'] },
      { pair: between, testPeak: -1 },
      { pair: between, highFrequencyPeak: -1 },
      { pair: between, stress: { rms: [-2, -1] } },
      { pair: between, firstSpot: 'nothing of the kind' },
      { assumption: 'nothing.of.the.kind' },
      { remark: 'nothing of the kind' },
      { headlineNot: 'wall|tube' },
    ];
    for (const expected of wrong)
      expect(
        complaints({ ...known, expect: [expected as never] }, told(verdict), 'the wall'),
        JSON.stringify(expected),
      ).toHaveLength(1);
  });
});

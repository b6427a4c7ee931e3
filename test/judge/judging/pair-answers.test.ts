import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { type PairAnswer, pairAnswers } from '#judge/judging/pair-answers.ts';
import { judgeShort } from '#judge/judging/short-judgement.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';

/** Each asks for another part of the judgement to be told whole, or for none of it. */
const CASES = [
  'core-unknown',
  'dc-supply-beyond-the-tables',
  'floating-screen-1-1',
  'frequency-beyond-the-tables',
  'interval-worst-inside',
  'isolated-behind-reinforced',
  'low-line-not-known',
  'margins-unequal',
];

function designOf(name: string): Design {
  const { design, ...file } = JSON.parse(readFileSync(`test/cases/${name}.json`, 'utf8'));
  const read = readDesign(design ?? file, knownIds);
  if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
  return read.design;
}

const told = (pairs: readonly PairAnswer[]) => pairs.map(({ between, verdict }) => ({ between, verdict }));

describe('pair answers', () => {
  // of the drill nothing reaches what it needs at any end; of the timer some pairs do, and intervals decide the rest
  it.each(['flea-market-drill', 'greenhouse-timer'])(
    'should be those of the whole judgement where figures are intervals: %s',
    (name) => {
      const file = JSON.parse(readFileSync(`static/demos/${name}.json`, 'utf8'));
      file.windings[1].leads = 'not-judged';
      for (const width of ['1 mm', '5 mm']) {
        file.layers[2].margins.left.width = { value: width, plusMinus: '0.2 mm' };
        const read = readDesign(file, knownIds);
        if (read.kind === 'bad') throw new Error(read.faults[0]?.says);
        const { pairs, verdict } = judge(read.design).verdict;
        expect(pairAnswers(read.design, new PathCache())).toEqual(told(pairs));
        expect(judgeShort(read.design, new PathCache(), 'reach').meets).toBe(verdict === 'meets');
      }
    },
    60_000,
  );

  it.each(CASES)('should be those of the whole judgement: %s', (name) => {
    const design = designOf(name);
    const whole = told(judge(design).verdict.pairs);
    expect(pairAnswers(design, new PathCache())).toEqual(whole);
  });
});

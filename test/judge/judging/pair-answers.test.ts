import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judge } from '#judge/judging/judge.ts';
import { pairAnswers } from '#judge/judging/pair-answers.ts';
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

describe('pair answers', () => {
  it.each(CASES)('should be those of the whole judgement: %s', (name) => {
    const design = designOf(name);
    const whole = judge(design).verdict.pairs.map(({ between, verdict }) => ({ between, verdict }));
    expect(pairAnswers(design, new PathCache())).toEqual(whole);
  });
});

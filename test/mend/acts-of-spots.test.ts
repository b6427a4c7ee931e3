import { describe, expect, it } from 'vitest';
import { applyActs, changesOf } from '#mend/acts/act.ts';
import { actsOfSpots } from '#mend/acts/acts-of-spots.ts';
import { actsOfSpot } from '#mend/acts/acts-of-spot.ts';
import { actWords } from '#words/mend/mend-words.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';

function spotsOf(doc: DesignFile) {
  const read = readDesign(doc, knownIds);
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return judge(read.design).verdict.weakSpots;
}

const weakSpots = spotsOf(firstBuild);
const gathered = actsOfSpots(firstBuild, weakSpots);

describe('actsOfSpots', () => {
  it('should name each act once with all its spots, those of most spots first', () => {
    const keys = gathered.map(({ act }) => `${act.kind} ${act.on}`);
    expect(new Set(keys).size).toBe(keys.length);
    const counts = gathered.map(({ spots }) => spots.length);
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    expect(counts[0]).toBe(weakSpots.length);
  });

  it('should leave out no act that any spot names', () => {
    const named = weakSpots.flatMap((spot) =>
      actsOfSpot(firstBuild, spot).map(({ kind, on }) => `${kind} ${on}`),
    );
    expect(new Set(gathered.map(({ act }) => `${act.kind} ${act.on}`))).toEqual(new Set(named));
  });

  it('should begin with the smallest act, said with its target, and mend the margin by it', () => {
    const [{ act }] = gathered as [(typeof gathered)[number]];
    expect(actWords(changesOf(firstBuild, [act]), firstBuild)).toBe(
      'left margin, layer 3 to 2.45 mm (now 1.65 mm)',
    );
    const after = spotsOf(applyActs(firstBuild, [act]));
    expect(after.map(({ kind }) => kind)).not.toContain('narrow-margin');
    expect(after.length).toBeLessThan(weakSpots.length);
  });
});

describe('actWords', () => {
  it('should say both margins at once where they change alike', () => {
    const change = (side: string, from: string) => ({
      field: `layers[0].margins.${side}.width`,
      from,
      to: '3.8 mm',
    });
    expect(actWords([change('left', '3 mm'), change('right', '3 mm')], firstBuild)).toBe(
      'both margins, layer 1 to 3.8 mm (now 3 mm)',
    );
  });
});

// Intervals: each alone at either end, the others nominal, then all at the ends found worse; the lowest holds.
// Nominal are 3 + 3 x 0.06 + 3 = 6.18 mm where 5 mm of creepage and 3 mm of clearance are asked.

import { describe, expect, it } from 'vitest';
import { intervalsOf, settled } from '#judge/assume/assumption.ts';
import { ruleBook } from '#books/shelf.ts';
import { pointsOf } from '#judge/cases/interval-points.ts';
import { PathCache } from '#judge/paths/path-cache.ts';
import { judge } from '#judge/judging/judge.ts';
import { judgeWorst } from '#judge/cases/worst-case.ts';
import { judgingOf } from '#judge/once/judging.ts';
import type { Changes } from '#test/designs.ts';
import { barrierWith, designWith, pairOf, PLIES, verdictWith } from '#test/judge/margin-build.ts';

const interval = (value: string, plusMinus: string) => ({ value, plusMinus });
const width = (layer: number, plusMinus: string): Changes => ({
  [`layers[${layer}].margins.left.width`]: interval('3 mm', plusMinus),
});

const endsOf = (changes: Changes) => {
  const judging = judgingOf(ruleBook('iec-62368-1')!, new PathCache(), { printed: false, reachOnly: false });
  const [ends = new Map<string, -1 | 1>()] = judgeWorst(judging, designWith(changes)).ends;
  return Object.fromEntries(ends);
};

describe('intervals of a design', () => {
  it('should be found by their paths, wherever they stand; a half-width of 0 is none', () => {
    const design = designWith({
      ...width(2, '0.1 mm'),
      'former.height': interval('5 mm', '0 mm'),
      'supply.voltage': interval('240 V', '5 V'),
      'workingVoltages[0].peak': interval('500 V', '10 V'),
    });
    expect(intervalsOf(design)).toEqual(['workingVoltages[0].peak', 'layers[2].margins.left.width']);
  });

  it('should count the supply at the upper end of its interval, and say so', () => {
    const at = (voltage: unknown) => designWith({ 'supply.voltage': voltage });
    const open = at(interval('240 V', '5 V'));
    expect(open.supply.voltage).toEqual(at('245 V').supply.voltage);
    expect(judge(open).verdict.pairs).toEqual(judge(at('245 V')).verdict.pairs);
    expect(judge(open).verdict.assumptions.map(({ field }) => field)).toContain('supply.voltage');
    expect(judge(at('245 V')).verdict.assumptions.map(({ field }) => field)).not.toContain('supply.voltage');
  });

  it('should be settled at one end, the file left as it was', () => {
    const design = designWith(width(2, '0.1 mm'));
    const path = 'layers[2].margins.left.width';
    for (const [end, value] of [
      [-1, 2_900_000],
      [1, 3_100_000],
    ] as const) {
      const { layers } = settled(design, new Map([[path, end]]));
      expect(layers[2]!.margins.left.width).toEqual({ kind: 'known', value, plusMinus: 0 });
    }
    expect(design.layers[2]!.margins.left.width).toMatchObject({ value: 3_000_000 });
  });
});

describe('an isolated circuit that counts as mains at one end of an interval', () => {
  // P begins 1.6 +- 1.2 mm from the flange, the isolated winding I 1 mm: at the lower end 0.4 + 0.18 + 1 = 1.58 mm stand
  // where basic insulation asks 2.5, so that I counts as mains, and so does J, which touches it: both then need reinforced
  // towards S instead of supplementary. J begins 3 mm from the flange: 3 + 0.18 + 3 = 6.18 of 5 mm, which reaches that.
  const winding = (id: string, circuit: string) => ({
    id,
    circuit,
    wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.23 mm' },
    leads: 'not-judged',
  });
  const ids = ['pri', 'iso', 'iso2', 'out'];
  const pairs = ids.flatMap((a, i) => ids.slice(i + 1).map((b) => [a, b]));
  const layer = (id: string, left: unknown) => ({
    kind: 'winding',
    winding: id,
    turns: 20,
    margins: { left: { width: left, filled: true }, right: { width: '3 mm', filled: true } },
  });
  const build = (left: unknown): Changes => ({
    'former.height': '10 mm',
    circuits: ids.map((id, i) => ({ id, role: ['mains', 'isolated', 'isolated', 'touchable'][i] })),
    windings: [winding('P', 'pri'), winding('I', 'iso'), winding('J', 'iso2'), winding('S', 'out')],
    workingVoltages: pairs.map((between) => ({ between, rms: '250 V', peak: '500 V', frequency: '65 kHz' })),
    layers: [layer('P', left), PLIES, layer('I', '1 mm'), layer('J', '3 mm'), PLIES, layer('S', '3 mm')],
  });

  it('should ask there what it asks at that end', () => {
    const towardsOutput = (left: unknown, from: string) => {
      const { needed, verdict } = pairOf(verdictWith(build(left)), from, 'out');
      return [needed, verdict];
    };
    const open = interval('1.6 mm', '1.2 mm');
    expect(towardsOutput('1.6 mm', 'iso')).toEqual(['supplementary', 'meets']);
    expect(towardsOutput('0.4 mm', 'iso')).toEqual(['reinforced', 'falls-short']);
    expect(towardsOutput(open, 'iso')).toEqual(['reinforced', 'not-shown']);
    expect(towardsOutput('1.6 mm', 'iso2')).toEqual(['supplementary', 'meets']);
    expect(towardsOutput('0.4 mm', 'iso2')).toEqual(['reinforced', 'meets']);
    expect(towardsOutput(open, 'iso2')).toEqual(['reinforced', 'meets']);
  });
});

describe('where turns change their rows inside an interval', () => {
  // P begins 0.84 +- 0.04 mm, S 3.82 +- 0.04 mm from the left flange, a strong sheet of 0.4 mm lies between them:
  // 0.84 + 0.4 + 3.82 = 5.06, 4.98 at worst.
  // From 3.84 on S has no room for 8 turns of 0.55 mm in one row, and two rows reach up to 3.01 mm under the core, which
  // belongs to the primary: nearer to falling short alone (3 mm), though it is the other end that does with P at its own.
  const left = (value: string, plusMinus: string) => ({ width: interval(value, plusMinus), filled: true });
  const right = { width: '3.76 mm', filled: true };
  const build = (plusMinus: string): Changes => ({
    'core.bond': 'pri',
    'former.height': '4.24 mm',
    'layers[1]': { ...PLIES, plies: 1, plyThickness: '0.4 mm', film: '0.4 mm' },
    'layers[0].margins': { left: left('0.84 mm', plusMinus), right },
    'layers[2].margins': { left: left('3.82 mm', plusMinus), right },
  });

  it('should judge all at the ends that keep the rows as well', () => {
    const answers = ['0.02 mm', '0.04 mm'].map((plusMinus) => barrierWith(build(plusMinus))[1]);
    expect(answers).toEqual(['meets', 'not-shown']);
  });

  it('should look at both sides of the place where they change', () => {
    const judging = judgingOf(ruleBook('iec-62368-1')!, new PathCache(), {
      printed: false,
      reachOnly: false,
    });
    const design = designWith(build('0.04 mm'));
    const points = pointsOf(judging, design, 'layers[2].margins.left.width', []);
    expect(points.map(({ end }) => end)).toEqual([-1, expect.closeTo(0.5, 4), expect.closeTo(0.5, 4), 1]);
    expect(points.map(({ keepsKind }) => keepsKind)).toEqual([true, true, false, false]);
  });
});

describe('where a solid becomes strong inside an interval', () => {
  // A riser of 0.23 mm wire in a sleeve of wall W is 0.23 + 2 W wide and lies on the way from S's end to the flange:
  // 5.52 - 2 W mm. At 0.4 mm the sleeve is strong and nothing leads past it, just under that 4.72 of 5 mm are left.
  const lead = (way: string, wall: unknown) => ({
    at: 'left',
    exit: 'left',
    way,
    sleeve: { material: 'ptfe', wall, into: '8 mm' },
    bareFrom: '0 mm',
  });
  const build = (wall: unknown): Changes => ({
    'former.chambers[0].width': '16 mm',
    'layers[0].turns': 40,
    'layers[2].margins.left.width': '5.75 mm',
    'windings[0].leads': { start: lead('riser', wall), finish: lead('slot', '0.5 mm') },
  });

  it('should look just under the thickness from which it is', () => {
    const answers = [
      '0 mm',
      '0.2 mm',
      '0.39 mm',
      '0.4 mm',
      interval('0.2 mm', '0.19 mm'),
      interval('0.2 mm', '0.2 mm'),
    ];
    expect(answers.map((wall) => barrierWith(build(wall))[1])).toEqual([
      'meets',
      'meets',
      'not-shown',
      'meets',
      'not-shown',
      'not-shown',
    ]);
  });
});

describe('where a solid becomes strong by what it shows', () => {
  // Category IV asks 8.0 kV peak. A moulding shows 60 % of 17 kV peak a millimetre, with 0.1 % of slack: from
  // 8.0 x 0.999 / 10.2 = 0.783530 mm up it is strong; basic asks 6.0 kV: from 0.587648. By thickness alone from 0.4.
  const build: Changes = {
    supply: { kind: 'ac', voltage: '240 V', overvoltageCategory: 4 },
    'former.wall': interval('0.7 mm', '0.2 mm'),
  };

  it('should look on both sides of every thickness that shows one test more', () => {
    const design = designWith(build);
    const judging = judgingOf(ruleBook('iec-62368-1')!, new PathCache(), {
      printed: false,
      reachOnly: false,
    });
    const points = pointsOf(
      judging,
      design,
      'former.wall.thickness',
      judgeWorst(judging, design).nominal.pairs,
    );
    const walls = points.map(({ end }) => Number((0.7 + 0.2 * end).toFixed(5)));
    expect(walls).toEqual([0.5, 0.58765, 0.58765, 0.78353, 0.78353, 0.9]);
  });
});

describe('judging of intervals', () => {
  it.each([
    ['a margin that holds at both ends', width(2, '1.18 mm'), 'meets'],
    ['a margin that falls short at its lower end: 1.81 + 0.18 + 3', width(2, '1.19 mm'), 'not-shown'],
    [
      'two margins that hold alone, not both at once: 2.4 + 0.18 + 2.4',
      { ...width(0, '0.6 mm'), ...width(2, '0.6 mm') },
      'not-shown',
    ],
    ['two margins that hold at both ends at once', { ...width(0, '0.5 mm'), ...width(2, '0.5 mm') }, 'meets'],
    [
      'a margin that falls short at its nominal value',
      { 'layers[2].margins.left.width': interval('1.8 mm', '1 mm') },
      'falls-short',
    ],
    [
      'a voltage that is too high at its upper end',
      { 'workingVoltages[0].rms': interval('290 V', '11 V') },
      'not-shown',
    ],
    [
      'a voltage that holds at its upper end',
      { 'workingVoltages[0].rms': interval('290 V', '10 V') },
      'meets',
    ],
    [
      'a margin and a voltage that hold alone: 2.7 + 0.18 + 3 at 280 V asks 5.8, at 300 V 6.0',
      { ...width(0, '0.3 mm'), 'workingVoltages[0].rms': interval('280 V', '20 V') },
      'not-shown',
    ],
    [
      'an altitude and a margin that hold alone: 5.3 mm of clearance at 6000 m',
      { ...width(0, '1.1 mm'), 'surroundings.altitude': interval('5000 m', '1000 m') },
      'not-shown',
    ],
    [
      'an altitude that asks 7.4 mm at its upper end',
      { 'surroundings.altitude': interval('6000 m', '3000 m') },
      'not-shown',
    ],
  ])('should find %s', (_, changes, verdict) => {
    expect(barrierWith(changes)[1]).toBe(verdict);
  });

  it('should name the worse end of each', () => {
    const changes = {
      ...width(2, '0.2 mm'),
      'workingVoltages[0].rms': interval('250 V', '10 V'),
      'surroundings.altitude': interval('4000 m', '1000 m'),
    };
    expect(endsOf(changes)).toMatchObject({
      'layers[2].margins.left.width': -1,
      'workingVoltages[0].rms': 1,
    });
  });

  it('should list each as an assumption and draw the build at its nominal figures', () => {
    const verdict = verdictWith(width(2, '1.19 mm'));
    const counted = verdict.assumptions.filter(({ kind }) => kind === 'interval');
    expect(counted.map(({ field }) => field)).toEqual(['layers[2].margins.left.width']);
    expect(pairOf(verdict)).toMatchObject({ achieved: 'basic', achievedAtBest: 'reinforced' });
  });
});

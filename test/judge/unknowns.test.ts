// How each unknown is counted at worst and at best: one row of the table of unknowns a test.
// A star in a name says that the field counts as unknown where the file is silent, too.

import { notJudgedWords } from '#words/unknowns/not-judged-words.ts';
import { describe, expect, it } from 'vitest';
import { BEST, withBest, WORST } from '#judge/assume/assumption.ts';
import { fillBuild, type Filled } from '#judge/fill/fill-build.ts';
import { ruleBook } from '#books/shelf.ts';
import type { Build, BuildLayer, Lay } from '#solver/section/build.ts';
import { inMm } from '#units/quantity.ts';
import type { Changes } from '#test/designs.ts';
import { barrierWith, designWith, MARGINS, PLIES, toldWith, verdictWith } from './margin-build.ts';

const BOOK = ruleBook('iec-62368-1')!;
const LEAST = 0.4;

const fill = (changes: Changes, choice = WORST): Filled => fillBuild(designWith(changes), BOOK, choice);
const [worst, best] = [fill, (changes: Changes) => fill(changes, BEST)];

const buildOf = ({ builds }: Filled): Build => builds[0]![0]!;
const notJudged = (changes: Changes) => worst(changes).notJudged.map(notJudgedWords);
const fields = ({ counted }: Filled) => counted.map(({ field }) => field);

const wireOf = (filled: Filled) => layerOf(filled, 0, 'winding').wire;
const laysOf = (filled: Filled) => buildOf(filled).lays;
const lay = ({ name, at, exit, way, sleeve }: Lay) => ({ name, at, exit, way, sleeved: sleeve !== null });

function layerOf<K extends BuildLayer['kind']>(filled: Filled, index: number, kind: K) {
  const layer = buildOf(filled).layers[index]!;
  if (layer.kind !== kind) throw new Error(`layer ${index} is ${layer.kind}`);
  return layer as Extract<BuildLayer, { kind: K }>;
}

/** Strength of the stuff that a tape layer's plies are of. */
const strengthOf = (filled: Filled, index: number) =>
  filled.stuffs.get(layerOf(filled, index, 'tape').stuff)!.strength;

const lead = (more: Changes = {}) => ({ at: 'left', exit: 'left', way: 'slot', sleeve: null, ...more });
const leads = (more: Changes): Changes => ({
  'windings[0].leads': { start: lead(more), finish: lead() },
});
const start = (filled: Filled) => laysOf(filled).filter(({ name }) => name.startsWith('P start'));

describe('unknown height of a layer', () => {
  // P one row of 0.23 mm, 26 of them in 6 mm; three plies of 0.06; S one row of 0.55, in 5 mm
  const grown = (filled: Filled) => filled.builds[0]!.slice(1);

  it('should count turns that nobody counted as one full row, and as so many that the stack reaches the rim', () => {
    const changes = { 'layers[0].turns': 'unknown' };
    expect(layerOf(worst(changes), 0, 'winding').turns).toBe(26);
    expect(fields(worst(changes))).toContain('layers[0].turns');
    // 0.23 + 0.18 + 0.55 = 0.96 drawn, so 4.04 mm more: 18 rows of 0.23 are the first to reach that
    const [high, ...more] = grown(worst(changes));
    expect(more).toEqual([]);
    expect(high!.layers[0]).toMatchObject({ turns: 26 * 19 });
  });

  it('should count a wire of no known size as 0.1 mm over all, and as high as the rim', () => {
    const changes = {
      'windings[0].wire.overallDiameter': undefined,
      'windings[0].wire.conductor': 'unknown',
    };
    expect(wireOf(worst(changes)).overall).toBe(100_000);
    expect(fields(worst(changes))).toContain('windings[0].wire.conductor');
    expect(grown(worst(changes))).toHaveLength(1);
  });

  it('should count a ply of no known size and material as 0.02 mm without strength, and as high as the rim', () => {
    const changes = {
      'layers[1].material': undefined,
      'layers[1].plyThickness': 'unknown',
      'layers[1].plyWithstand': undefined,
    };
    expect(layerOf(worst(changes), 1, 'tape').plyThickness).toBe(20_000);
    expect(strengthOf(worst(changes), 1)).toBeNull();
    const [high] = grown(worst(changes));
    const { plyThickness } = high!.layers[1] as Extract<BuildLayer, { kind: 'tape' }>;
    // 0.23 + 3 x 0.02 + 0.55 = 0.84 drawn: 4.16 mm more over three plies, rounded up to a nanometre
    expect(plyThickness).toBe(20_000 + 1_386_667);
  });

  it('should bring the rim down to the stack in one run, where several layers may be higher', () => {
    const changes = { 'layers[0].turns': 'unknown', 'layers[2].turns': 'unknown' };
    const [low, ...more] = grown(worst(changes));
    expect(more).toEqual([]);
    // 0.23 + 0.18 + 0.55
    expect(inMm(low!.height)).toBeCloseTo(0.96, 9);
    expect(low!.layers).toEqual(buildOf(worst(changes)).layers);
  });

  it('should leave the stack as drawn at best, the core out of reach', () => {
    const changes = { 'layers[0].turns': 'unknown' };
    expect(grown(best(changes))).toEqual([]);
    expect(inMm(buildOf(best(changes)).outerGap)).toBe(100);
    const alone = fill(changes, withBest('layers[0].turns'));
    expect(inMm(buildOf(alone).outerGap)).toBe(100);
    const one = fill({ ...changes, 'layers[2].turns': 'unknown' }, withBest('layers[0].turns'));
    expect(grown(one)).toHaveLength(1);
    expect(inMm(buildOf(one).outerGap)).toBeLessThan(1);
  });

  it('should bring the core near enough to decide, where only the turns are unknown', () => {
    // 0.5 mm over the rim: less than X, so that the core bridges primary and output as soon as the stack reaches up
    const judged = verdictWith({ 'layers[2].turns': 'unknown' });
    expect(judged.pairs[0]).toMatchObject({ verdict: 'not-shown' });
    expect(judged.assumptions.find(({ field }) => field === 'layers[2].turns')).toMatchObject({
      decides: true,
    });
  });
});

describe('an unopened stack', () => {
  it('should be no better than not shown, and say what was not looked at', () => {
    expect(verdictWith({}).verdict).toBe('meets');
    const judged = toldWith({ unopened: true });
    expect(judged.verdict).toBe('not-shown');
    expect(judged.notJudged).toContain('what lies below the innermost layer listed');
  });

  it('should fall short all the same where it does', () => {
    expect(verdictWith({ unopened: true, 'layers[1].plies': 1 }).verdict).toBe('falls-short');
  });
});

describe('unknown wire', () => {
  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count a kind that is %s as enamelled, at best as certified and as thick', (_, kind) => {
    const changes = { 'windings[0].wire.kind': kind };
    expect(wireOf(worst(changes))).toMatchObject({ overall: 230_000, cover: null, slumps: true });
    expect(wireOf(best(changes))).toMatchObject({ overall: 230_000, cover: { plies: null }, slumps: false });
    expect(fields(worst(changes))).toContain('windings[0].wire.kind');
  });

  it('should count a grade that is left out * as 1', () => {
    const without = { 'windings[0].wire.overallDiameter': undefined, 'windings[0].wire.grade': undefined };
    const grade = (of: number) => wireOf(worst({ ...without, 'windings[0].wire.grade': of })).overall;
    expect(wireOf(worst(without)).overall).toBe(grade(1));
    expect(grade(1)).toBeLessThan(grade(2));
    expect(fields(worst(without))).toContain('windings[0].wire.grade');
  });

  it('should count fully insulated wire of unknown grade as the lowest, at best as standing the test', () => {
    const changes = {
      'windings[0].wire': { kind: 'fully-insulated', conductor: '0.1 mm', overallDiameter: '0.2 mm' },
    };
    const graded = (grade: number) => ({ ...changes, 'windings[0].wire.grade': grade });
    const strength = (filled: Filled) => filled.stuffs.get(wireOf(filled).cover!.stuff)!.strength;
    expect(strength(worst(changes))).toBe(strength(worst(graded(3))));
    expect(strength(best(changes))).toBe('whatever');
    expect(strength(best(graded(3)))).toBe(strength(worst(graded(3))));
  });

  const covered = {
    'windings[0].wire': { kind: 'layer-insulated', conductor: '0.2 mm', insulationLayers: 2 },
  };

  it.each([
    ['proposed', { origin: 'proposed' }, 2],
    ['a lesson', { origin: 'lesson' }, 2],
    ['dissected', { origin: 'dissected' }, undefined],
    ['proposed but unknown', { 'windings[0].wire.approval': 'unknown' }, undefined],
    ['not approved', { 'windings[0].wire.approval': 'none' }, undefined],
  ])('should give a cover without approval its grade where the build is %s', (_, change, plies) => {
    expect(wireOf(worst({ ...covered, ...change })).cover?.plies).toBe(plies);
    const isNone = 'windings[0].wire.approval' in change && change['windings[0].wire.approval'] === 'none';
    expect(wireOf(best({ ...covered, ...change })).cover?.plies).toBe(isNone ? undefined : 2);
  });

  it('should give a cover of unknown layers nothing, at best three', () => {
    const changes = { ...covered, 'windings[0].wire.insulationLayers': 'unknown' };
    expect(wireOf(worst(changes)).cover).toBeNull();
    expect(wireOf(best(changes)).cover?.plies).toBeNull();
    expect(wireOf(best({ ...changes, 'windings[0].wire.approval': 'none' })).cover).toBeNull();
  });
});

describe('unknown tape', () => {
  it('should count plies as one, at best as many as any grade needs', () => {
    const changes = { 'layers[1].plies': 'unknown' };
    expect(layerOf(worst(changes), 1, 'tape').plies).toBe(1);
    expect(layerOf(best(changes), 1, 'tape').plies).toBe(3);
    expect(barrierWith(changes)[1]).toBe('not-shown');
  });

  it.each([
    ['unknown', 'unknown', 'unknown'],
    ['left out *', undefined, 'house-rule'],
  ])(
    'should count a strength that is %s as 0.6 x the table: 3.05 kV, at best as enough',
    (_, value, kind) => {
      const changes = { 'layers[1].plyWithstand': value };
      expect(strengthOf(worst(changes), 1)).toBeCloseTo(3600 * 0.6 * Math.SQRT2, 9);
      expect(strengthOf(best(changes), 1)).toBe('whatever');
      expect(worst(changes).counted).toContainEqual(
        expect.objectContaining({ field: 'layers[1].plyWithstand', kind }),
      );
    },
  );

  it('should show nothing of a material without a figure', () => {
    const changes = { 'layers[1].plyWithstand': undefined, 'layers[1].material': 'glass-tape' };
    expect(strengthOf(worst(changes), 1)).toBeNull();
    expect(strengthOf(best(changes), 1)).toBe('whatever');
  });
});

describe('unknown margins', () => {
  it('should count a width as 0, at best as the widest with which the turns keep their row', () => {
    // 20 turns of 0.23 are 4.6 of 12 mm; 3 mm lie at the other side
    const changes = { 'layers[0].margins.left.width': 'unknown' };
    expect(layerOf(worst(changes), 0, 'winding').margins.left.width).toBe(0);
    expect(inMm(layerOf(best(changes), 0, 'winding').margins.left.width)).toBeCloseTo(12 - 3 - 4.6, 9);
  });

  it('should share the room where both are unknown, in as many rows as without any', () => {
    // 100 turns of 0.23 in 12 mm are 52 a row, so two rows of 50
    const changes = {
      'layers[0].turns': 100,
      'layers[0].margins': {
        left: { width: 'unknown', filled: true },
        right: { width: 'unknown', filled: true },
      },
    };
    const widths = best(changes).builds.map(([build]) => {
      const { left, right } = build!.layers[0]!.margins;
      return [left.width, right.width].map(inMm);
    });
    expect(widths).toEqual([
      [0.5, 0],
      [0, 0.5],
      [0.25, 0.25],
    ]);
  });

  it('should take a moulded block or a turn of a wound one as standing nothing, at best as standing the test *', () => {
    const moulded = { 'layers[0].margins.left.moulded': true };
    const strength = (filled: Filled) =>
      filled.stuffs.get(layerOf(filled, 0, 'winding').margins.left.stuff)!.strength;
    expect([strength(worst(moulded)), strength(best(moulded))]).toEqual([null, 'whatever']);
    expect([strength(worst({})), strength(best({}))]).toEqual([null, 'whatever']);
  });
});

describe('unknown former and core', () => {
  const group = (filled: Filled) => filled.stuffs.get(buildOf(filled).moulding)!.group;

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count a material that is %s as of group IIIb, at best IIIa', (_, material) => {
    const changes = { 'former.material': material };
    expect([group(worst(changes)), group(best(changes))]).toEqual(['IIIb', 'IIIa']);
  });

  it.each([['wall'], ['flange']])(
    'should count the %s as one ply of unknown strength, at best as strong',
    (part) => {
      const thick = (filled: Filled) => {
        const { wall, flange } = buildOf(filled);
        return inMm(part === 'flange' ? flange : (wall as { thickness: typeof flange }).thickness);
      };
      const changes = { [`former.${part}`]: 'unknown' };
      expect(thick(worst(changes))).toBeLessThan(0.001);
      expect(thick(best(changes))).toBe(LEAST);
      expect(worst(changes).stuffs.get(buildOf(worst(changes)).moulding)!.strength).toBeNull();
    },
  );

  it('should count the gap to the core as 0, at best as so large that it never limits', () => {
    const changes = { 'core.outerGap': 'unknown' };
    expect(buildOf(worst(changes)).outerGap).toBe(0);
    expect(inMm(buildOf(best(changes)).outerGap)).toBeGreaterThan(50);
  });

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])(
    'should count a bond of the core that is %s as whichever is worst, at best as whichever is best',
    (_, bond) => {
      const changes = { 'core.bond': bond };
      expect(worst(changes).coreBonds).toEqual([null, 'pri', 'out']);
      expect(best(changes).coreBonds).toEqual([null, 'pri', 'out']);
      expect([worst(changes), best(changes)].map(({ bestBond }) => bestBond)).toEqual([false, true]);
    },
  );
});

describe('unknown leads', () => {
  it.each(['at', 'exit'] as const)(
    'should lay a lead at each side in turn where `%s` is unknown',
    (field) => {
      const changes = leads({ [field]: 'unknown' });
      const sides = (all: readonly Lay[]) => all.map((one) => one[field]);
      expect(sides(start(worst(changes)))).toEqual(['left', 'right']);
      expect(new Set(start(worst(changes)).map(({ group }) => group)).size).toBe(1);
      // at best each is a build of its own, of which the better counts
      expect(best(changes).builds.map(([build]) => sides(build!.lays.slice(0, 1)))).toEqual([
        ['left'],
        ['right'],
      ]);
    },
  );

  it('should count an unknown way as a riser, at best as a slot', () => {
    const changes = leads({ way: 'unknown' });
    expect([worst, best].map((filled) => start(filled(changes))[0]!.way)).toEqual(['riser', 'slot']);
  });

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count leads that are %s as unsleeved risers at both sides, at best as none', (_, value) => {
    const changes = { 'windings[0].leads': value };
    const bare = { way: 'riser', sleeved: false };
    expect(start(worst(changes)).map(lay)).toEqual([
      { name: 'P start left', at: 'left', exit: 'left', ...bare },
      { name: 'P start right', at: 'right', exit: 'right', ...bare },
    ]);
    expect(laysOf(worst(changes))).toHaveLength(4);
    expect(laysOf(best(changes))).toEqual([]);
    expect(notJudged(changes)).toEqual(['stripped ends of P', 'leads of S']);
  });

  it('should list leads that are left out on purpose', () => {
    expect(notJudged({})).toEqual(['leads of P', 'leads of S']);
    expect(laysOf(worst({}))).toEqual([]);
  });

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count a start that is %s alone, the finish as it is told', (_, value) => {
    const changes = { 'windings[0].leads': { start: value, finish: lead() } };
    expect(laysOf(worst(changes)).map(({ name }) => name)).toEqual([
      'P start left',
      'P start right',
      'P finish',
    ]);
    expect(laysOf(best(changes)).map(({ name }) => name)).toEqual(['P finish']);
  });

  it('should list a stripped end that nobody knows *', () => {
    const told = { bareFrom: '5 mm' };
    const changes = { 'windings[0].leads': { start: lead(told), finish: lead() } };
    expect(notJudged(changes)).toContain('stripped end of P finish');
    expect(notJudged(changes)).not.toContain('stripped end of P start');
  });

  const split: Changes = {
    layers: [
      { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS },
      PLIES,
      { kind: 'winding', winding: 'S', turns: 8, margins: MARGINS },
      PLIES,
      { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS },
    ],
  };

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count links that are %s as unsleeved risers at both sides, at best as none', (_, links) => {
    const changes = { ...split, 'windings[0].links': links };
    expect(laysOf(worst(changes)).map(lay)).toEqual([
      { name: 'P link 1 left', at: 'left', exit: 'left', way: 'riser', sleeved: false },
      { name: 'P link 1 right', at: 'right', exit: 'right', way: 'riser', sleeved: false },
    ]);
    expect(laysOf(best(changes))).toEqual([]);
  });

  it('should lay a link at each side in turn where its side is unknown', () => {
    const changes = { ...split, 'windings[0].links': [{ side: 'unknown', sleeve: null }] };
    expect(laysOf(worst(changes)).map(({ at }) => at)).toEqual(['left', 'right']);
    expect(best(changes).builds).toHaveLength(2);
  });
});

describe('unknown sleeves', () => {
  const sleeved = (sleeve: unknown) => leads({ sleeve });
  const sleeveOf = (filled: Filled) => start(filled)[0]?.sleeve;

  it('should count a sleeve as none, at best as strong and taking no room', () => {
    const changes = sleeved('unknown');
    expect(sleeveOf(worst(changes))).toBeNull();
    expect(start(best(changes))).toEqual([]);
  });

  it('should count a wall as 0, at best as strong', () => {
    const changes = sleeved({ wall: 'unknown', into: '2 mm' });
    expect(sleeveOf(worst(changes))).toBeNull();
    expect(inMm(sleeveOf(best(changes))!.wall)).toBe(LEAST);
    expect(inMm(sleeveOf(best(changes))!.into)).toBe(2);
  });

  it('should count its reach as 0, at best as flush with the winding, the wall as thin as it is told', () => {
    const changes = sleeved({ wall: '0.2 mm', into: 'unknown' });
    expect(sleeveOf(worst(changes))).toMatchObject({ into: 0 });
    expect(inMm(sleeveOf(best(changes))!.wall)).toBe(0.2);
    expect(inMm(sleeveOf(best(changes))!.into)).toBeGreaterThan(12);
  });

  it('should not let an unknown reach beat every reach that there could be', () => {
    const riser = (into: string) => ({
      'windings[0].leads': {
        start: lead({ way: 'riser', sleeve: { wall: '0.2 mm', into, withstand: '1 kV' } }),
        finish: lead(),
      },
    });
    expect(barrierWith(riser('8 mm'))[1]).not.toBe('meets');
    expect(barrierWith(riser('unknown'))[1]).toBe(barrierWith(riser('8 mm'))[1]);
  });

  it('should ask for the strength of a sleeve: a thin one shows nothing, a thick one its matter where that is named *', () => {
    const strength = (filled: Filled) => filled.stuffs.get(sleeveOf(filled)!.stuff)!.strength;
    const thin = sleeved({ wall: '0.2 mm', into: '5 mm' });
    expect([strength(worst(thin)), strength(best(thin))]).toEqual([null, 'whatever']);
    expect(fields(worst(thin))).toContain('windings[0].leads.start.sleeve.withstand');
    const perMm = (material: string | undefined, fill: typeof worst) => {
      const filled = fill(sleeved({ wall: '0.4 mm', into: '5 mm', material }));
      expect(fields(filled)).toContain('windings[0].leads.start.sleeve.withstand');
      return filled.stuffs.get(sleeveOf(filled)!.stuff)!.perMm;
    };
    expect(['ptfe', 'polyolefin', 'silicone-glass', undefined].map((id) => perMm(id, worst))).toEqual([
      expect.closeTo(16_200, 6),
      expect.closeTo(10_200, 6),
      0,
      0,
    ]);
    expect(perMm(undefined, best)).toBe(Infinity);
  });
});

describe('unknown surroundings and parts', () => {
  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should not judge heat where the temperature is %s', (_, temperature) => {
    const { verdict, notJudged } = toldWith({ 'surroundings.hottestInsulation': temperature });
    expect(verdict).toBe('meets');
    expect(notJudged).toContain('heat');
    expect(toldWith({ 'surroundings.hottestInsulation': '100 degC' }).notJudged).not.toContain('heat');
  });

  it.each([
    ['unknown', 'unknown'],
    ['left out *', undefined],
  ])('should count the group of an outside distance that is %s as IIIb, at best IIIa', (_, materialGroup) => {
    // above 630 V in degree 3 the worst group has no figure at all
    const changes = {
      'surroundings.pollutionDegree': 3,
      workingVoltages: [{ between: ['pri', 'out'], rms: '700 V', peak: '1000 V', frequency: '50 Hz' }],
      outside: [
        { between: ['pri', 'out'], what: 'pin rows', clearance: '30 mm', creepage: '30 mm', materialGroup },
      ],
    };
    const field = 'outside[0].materialGroup';
    expect(fields(worst(changes))).toContain(field);
    const groups = (filled: Filled) => filled.outside.map(({ group }) => group);
    expect([groups(worst(changes)), groups(best(changes))]).toEqual([['IIIb'], ['IIIa']]);
    // nothing inside the window is in the way of a wire that is reinforced by itself
    const covered = { kind: 'layer-insulated', conductor: '0.5 mm', insulationLayers: 3 };
    const { pairs, assumptions } = verdictWith({ ...changes, 'windings[1].wire': covered });
    expect(pairs[0]).toMatchObject({
      achieved: 'functional',
      achievedAtBest: 'reinforced',
      verdict: 'not-shown',
    });
    expect(assumptions).toContainEqual(expect.objectContaining({ field, decides: true, atBest: 'meets' }));
  });

  it('should set one field alone at its best', () => {
    const changes = { 'core.outerGap': 'unknown', 'layers[1].plies': 'unknown' };
    const filled = fill(changes, withBest('layers[1].plies'));
    expect(layerOf(filled, 1, 'tape').plies).toBe(3);
    expect(buildOf(filled).outerGap).toBe(0);
  });
});

// The verdict over all: of pairs, heat and fit; what is asked by roles; the floor of the voltage; isolated circuits.

import { describe, expect, it } from 'vitest';
import { ruleBook } from '#books/shelf.ts';
import type { Changes } from '#test/designs.ts';
import { barrierWith, designWith, NO_MARGINS, pairOf, PLIES, verdictWith } from '#test/judge/margin-build.ts';

const VOLTAGE = { rms: '250 V', peak: '500 V', frequency: '65 kHz' };
const wound = (id: string, circuit: string) => ({
  id,
  circuit,
  wire: { kind: 'enamelled', conductor: '0.5 mm', grade: 1, overallDiameter: '0.55 mm' },
  leads: 'not-judged',
});

/** A third circuit of this role with a winding `T` of its own. */
const third = (role: string): Changes => ({
  circuits: [
    { id: 'pri', role: 'mains' },
    { id: 'out', role: 'touchable' },
    { id: 'third', role },
  ],
  windings: [wound('P', 'pri'), wound('S', 'out'), wound('T', 'third')],
  workingVoltages: [
    ['pri', 'out'],
    ['pri', 'third'],
    ['third', 'out'],
  ].map((between) => ({ between, ...VOLTAGE })),
});

const margins = (width: string) => ({ left: { width, filled: true }, right: { width, filled: true } });

/** The third circuit lies outermost, under margins as wide as the others and over plies of its own. */
const withThird = (role: string): Changes => ({
  ...third(role),
  'layers[3]': PLIES,
  'layers[4]': { kind: 'winding', winding: 'T', turns: 8, margins: margins('3 mm') },
});

/** Isolated and basic towards the mains: 1.5 mm of margin on either and five plies of 0.06 mm make less than 5 mm. */
const basicThird: Changes = {
  ...withThird('isolated'),
  'layers[0].margins': margins('1.5 mm'),
  'layers[2].margins': margins('4 mm'),
  'layers[4]': { kind: 'winding', winding: 'T', turns: 8, margins: margins('1.5 mm') },
};

const touching: Changes = {
  layers: [
    { kind: 'winding', winding: 'P', turns: 8 },
    { kind: 'winding', winding: 'S', turns: 8 },
  ],
};

const foils = (count: number): Changes => ({
  layers: [
    { kind: 'winding', winding: 'P', turns: 8 },
    ...Array.from({ length: count }, () => [PLIES, { kind: 'screen', thickness: '0.05 mm' }]).flat(),
    PLIES,
    { kind: 'winding', winding: 'S', turns: 8 },
  ],
  'former.height': '30 mm',
});

describe('floating conductors', () => {
  for (const count of [1, 6, 12])
    it(`should be run over however many there are (${count})`, () => {
      // each reaches the flange, so that the way from one to the next is only the height of the plies: under X
      const { achieved, limiting } = pairOf(verdictWith(foils(count)));
      expect(achieved).toBe('functional');
      expect(limiting?.over).toHaveLength(count);
      expect(limiting?.length).toBe(0);
    });
});

describe('verdict over all', () => {
  it('should meet where every pair does', () => {
    expect(verdictWith().verdict).toBe('meets');
  });

  it('should fall short where one pair does, although another is not shown', () => {
    const { pairs, verdict } = verdictWith({
      ...withThird('mains'),
      'layers[0].margins': margins('1.2 mm'),
      'layers[3].plies': 'unknown',
    });
    // 1.2 + 0.18 + 3 are short; nothing is asked between mains; one ply or as many as it takes
    expect(pairs.map((pair) => pair.verdict)).toEqual(['falls-short', 'meets', 'not-shown']);
    expect(verdict).toBe('falls-short');
  });

  it('should not be shown where a pair is not', () => {
    expect(verdictWith({ 'layers[1].plies': 'unknown' }).verdict).toBe('not-shown');
  });

  it('should not be shown where the layers do not fit the former, and say so', () => {
    const far = { 'core.outerGap': '5 mm' };
    // 0.23 + 3 x 0.06 + 0.55 = 0.96 mm
    const { verdict, weakSpots, fit } = verdictWith({ ...far, 'former.height': '0.95 mm' });
    expect([fit.height.used, fit.height.available]).toEqual([0.96, 0.95]);
    expect(verdict).toBe('not-shown');
    expect(weakSpots).toContainEqual(expect.objectContaining({ kind: 'overfull', between: null }));
    expect(verdictWith({ ...far, 'former.height': '0.96 mm' }).verdict).toBe('meets');
  });

  it('should fall short where the insulation is hotter than its lowest class', () => {
    // polyester film is of class 130, which is allowed 120 degC, by thermocouple 110
    const at = (hottest: string, method: string) =>
      verdictWith({
        'surroundings.hottestInsulation': hottest,
        'surroundings.temperature.method': method,
      });
    const hot = at('121 degC', 'resistance');
    expect(hot.verdict).toBe('falls-short');
    expect(hot.weakSpots).toContainEqual(expect.objectContaining({ kind: 'hot', between: null }));
    const verdicts = (method: string) =>
      ['121 degC', '120 degC', '111 degC', '110 degC'].map((hottest) => at(hottest, method).verdict);
    expect(verdicts('resistance')).toEqual(['falls-short', 'meets', 'meets', 'meets']);
    expect(verdicts('thermocouple')).toEqual(['falls-short', 'falls-short', 'falls-short', 'meets']);
    expect(verdicts('unknown')).toEqual(['falls-short', 'not-shown', 'not-shown', 'meets']);
  });

  it('should meet with a remark where there is no barrier', () => {
    const changes = { ...touching, 'circuits[1].role': 'mains', workingVoltages: [] };
    const { pairs, verdict, remarks, weakSpots } = verdictWith(changes);
    expect(verdict).toBe('meets');
    expect(remarks.map(({ kind }) => kind)).toContain('no-barrier');
    expect(pairs[0]).toMatchObject({ needed: 'functional', verdict: 'meets', required: null });
    expect(weakSpots).toEqual([]);
  });

  it('should not be shown where no voltage is known, however good the build is', () => {
    const { verdict, pairs, assumptions } = verdictWith({ workingVoltages: [] });
    expect(pairs[0]).toMatchObject({
      achieved: 'reinforced',
      verdict: 'not-shown',
      stress: { basis: 'floor' },
    });
    expect(verdict).toBe('not-shown');
    expect(assumptions).toContainEqual(expect.objectContaining({ field: 'workingVoltages', decides: true }));
  });

  it('should fall short on a floor that is too much for the build', () => {
    expect(verdictWith({ ...touching, workingVoltages: [] }).verdict).toBe('falls-short');
  });

  it('should hold every distance that touches as none or functional', () => {
    expect(barrierWith(touching)).toEqual(['functional', 'falls-short']);
    const bare = { kind: 'bare', conductor: '0.55 mm' };
    expect(barrierWith({ ...touching, 'windings[0].wire': bare })).toEqual(['functional', 'falls-short']);
    const both = { 'windings[0].wire': bare, 'windings[1].wire': bare };
    expect(barrierWith({ ...touching, ...both })).toEqual(['none', 'falls-short']);
  });

  it('should rest on the weakest figure that it used', () => {
    // what two plies of three together stand is cited from memory
    expect(verdictWith().restsOn).toBe('memory');
    const at50Hz = { between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '50 Hz' };
    // wires that touch, held against the plain tables: the row of 250 V is of two sources, the grade asked of one
    expect(verdictWith({ ...touching, workingVoltages: [at50Hz] }).restsOn).toBe('published');
    expect(verdictWith().rules).toEqual({ id: 'iec-62368-1', edition: '2018' });
  });
});

describe('what is asked by the roles', () => {
  const book = ruleBook('iec-62368-1')!;
  const needed = (a: string, b: string) =>
    pairOf(verdictWith({ 'circuits[0].role': a, 'circuits[1].role': b })).needed;

  it.each([
    ['mains', 'touchable', 'reinforced'],
    ['mains', 'earth', 'basic'],
    ['mains', 'isolated', 'basic'],
    ['isolated', 'touchable', 'supplementary'],
    ['mains', 'mains', 'functional'],
    ['touchable', 'touchable', 'functional'],
    ['touchable', 'earth', 'functional'],
    ['isolated', 'earth', 'functional'],
    ['isolated', 'isolated', 'functional'],
  ] as const)('should be between %s and %s: %s', (a, b, grade) => {
    expect([needed(a, b), needed(b, a)]).toEqual([grade, grade]);
    expect(book.neededGrade(a, b).value ?? 'functional').toBe(grade);
  });

  it('should meet basic with less than reinforced takes', () => {
    // one margin of 2.4 mm: 2.58 mm where basic asks 2.5
    const changes = { 'layers[0].margins': NO_MARGINS, 'layers[2].margins': margins('2.4 mm') };
    expect(barrierWith(changes)).toEqual(['basic', 'falls-short']);
    expect(barrierWith({ ...changes, 'circuits[1].role': 'earth' })).toEqual(['basic', 'meets']);
    const isolated = { ...changes, 'circuits[0].role': 'isolated' };
    expect(barrierWith(isolated)).toEqual(['supplementary', 'meets']);
  });

  it('should not take one ply for supplementary', () => {
    const one = { 'layers[1].plies': 1, 'circuits[0].role': 'isolated' };
    expect(barrierWith(one)).toEqual(['basic', 'falls-short']);
    expect(barrierWith({ ...one, 'layers[1].plies': 2 })).toEqual(['reinforced', 'meets']);
  });
});

describe('isolated circuits', () => {
  it('should ask basic towards the mains and supplementary towards the touchable', () => {
    const verdict = verdictWith(basicThird);
    expect(pairOf(verdict, 'pri', 'third')).toMatchObject({ needed: 'basic', achieved: 'basic' });
    expect(pairOf(verdict, 'third', 'out').needed).toBe('supplementary');
    expect(verdict.verdict).toBe('meets');
  });

  it('should ask nothing more behind reinforced insulation towards the mains', () => {
    const verdict = verdictWith(withThird('isolated'));
    expect(pairOf(verdict, 'pri', 'third')).toMatchObject({ needed: 'basic', achieved: 'reinforced' });
    expect(pairOf(verdict, 'third', 'out')).toMatchObject({ needed: 'functional', required: null });
    expect(verdict.verdict).toBe('meets');
  });

  it('should ask the supplementary half at the transient and the voltage of the mains', () => {
    const low = { between: ['third', 'out'], rms: '12 V', peak: '17 V', frequency: '65 kHz' };
    const verdict = verdictWith({ ...basicThird, 'workingVoltages[2]': low });
    const { stress, required } = pairOf(verdict, 'third', 'out');
    expect(stress).toMatchObject({ rms: 250, peak: 500, withstand: 2500 });
    expect([required!.clearance.basic, required!.creepage.basic]).toEqual([1.5, 2.5]);
  });

  it('should count as mains everywhere once they fall below basic towards the mains', () => {
    // the third lies on the mains winding: enamel only
    const layers = [
      { kind: 'winding', winding: 'T', turns: 8, margins: margins('2.5 mm') },
      { kind: 'winding', winding: 'P', turns: 8, margins: margins('2.5 mm') },
      PLIES,
      { kind: 'winding', winding: 'S', turns: 8, margins: margins('2.5 mm') },
    ];
    const verdict = verdictWith({ ...third('isolated'), layers });
    expect(pairOf(verdict, 'pri', 'third')).toMatchObject({ needed: 'basic', achieved: 'functional' });
    expect(pairOf(verdict, 'third', 'out')).toMatchObject({ needed: 'reinforced' });
  });

  it('should stay what they are however little lies towards the touchable', () => {
    const layers = [
      { kind: 'winding', winding: 'P', turns: 8, margins: margins('2 mm') },
      PLIES,
      { kind: 'winding', winding: 'S', turns: 8, margins: margins('3 mm') },
      { kind: 'winding', winding: 'T', turns: 8, margins: margins('2 mm') },
    ];
    const pair = pairOf(verdictWith({ ...third('isolated'), layers }), 'third', 'out');
    expect(pair).toMatchObject({ needed: 'supplementary', achieved: 'functional' });
  });

  it('should stay what they are where basic is reached, by one ply of tape', () => {
    const layers = [
      { kind: 'winding', winding: 'T', turns: 8, margins: margins('3 mm') },
      {
        kind: 'tape',
        material: 'polyester-tape-25',
        plies: 1,
        plyThickness: '0.06 mm',
        plyWithstand: '5 kV',
      },
      { kind: 'winding', winding: 'P', turns: 8, margins: margins('3 mm') },
      PLIES,
      { kind: 'winding', winding: 'S', turns: 8, margins: margins('3 mm') },
    ];
    const verdict = verdictWith({ ...third('isolated'), layers });
    expect(pairOf(verdict, 'pri', 'third')).toMatchObject({ achieved: 'basic', verdict: 'meets' });
    expect(pairOf(verdict, 'third', 'out').needed).toBe('supplementary');
  });
});

describe('judging', () => {
  it('should throw where the rule book does not exist: reading has refused it', async () => {
    const { judge } = await import('#judge/judging/judge.ts');
    expect(() => judge({ ...designWith(), rules: 'none' })).toThrow(/rule book/);
  });
});

// What lies outside the window: stated distances, parts that touch the core, bridging parts, leads a stated way apart.
// Under a low former the output winding is 4.34 mm of creepage and 1.34 mm of clearance from the core.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { barrierWith, pairOf, toldWith, verdictWith } from './margin-build.ts';

const LOW: Changes = { 'former.height': '1.8 mm' };

const entry = (clearance: string, creepage: string, between = ['pri', 'out'], more: Changes = {}) => ({
  between,
  what: 'pin rows',
  clearance,
  creepage,
  materialGroup: 'IIIa',
  ...more,
});

const spots = (changes: Changes) =>
  verdictWith(changes).weakSpots.map(({ kind, section }) => [kind, section]);

describe('distances outside', () => {
  it.each([
    ['long enough for both', '3 mm', '5 mm', ['reinforced', 'meets']],
    ['short of creepage', '3 mm', '4.99 mm', ['basic', 'falls-short']],
    ['short of clearance', '2.99 mm', '5 mm', ['basic', 'falls-short']],
    ['short of basic creepage', '3 mm', '2.49 mm', ['functional', 'falls-short']],
  ])('should hold the barrier where they are %s', (_, clearance, creepage, barrier) => {
    expect(barrierWith({ outside: [entry(clearance, creepage)] })).toEqual(barrier);
  });

  it('should be told as weak spots by what they are short of', () => {
    expect(spots({ outside: [entry('3 mm', '4.99 mm')] })).toEqual([['short-creepage', 'outside']]);
    expect(spots({ outside: [entry('2.99 mm', '5 mm')] })).toEqual([['short-clearance', 'outside']]);
  });

  it.each([['clearance'], ['creepage']])('should count a %s that the file leaves out as none', (left) => {
    const one = { ...entry('3 mm', '5 mm'), [left]: undefined };
    const { pairs, assumptions } = toldWith({ outside: [one] });
    expect(pairs[0]).toMatchObject({
      achieved: 'functional',
      achievedAtBest: 'reinforced',
      verdict: 'not-shown',
    });
    const open = assumptions.filter(({ decides }) => decides).map(({ field, counted }) => [field, counted]);
    expect(open).toEqual([[`outside[0].${left}`, '0 mm']]);
  });

  it.each([['clearance'], ['creepage']])('should count a %s round an optocoupler so, too', (left) => {
    const part = { id: 'OK1', kind: 'optocoupler', between: ['pri', 'out'], approval: 'reinforced' };
    const known = { ...part, clearance: '8 mm', creepage: '8 mm' };
    expect(barrierWith({ bridges: [known] })).toEqual(['reinforced', 'meets']);
    const { pairs, assumptions } = verdictWith({ bridges: [{ ...known, [left]: undefined }] });
    expect(pairs[0]).toMatchObject({ achieved: 'functional', verdict: 'not-shown' });
    const open = assumptions.filter(({ decides }) => decides).map(({ field }) => field);
    expect(open).toEqual([`bridges[0].${left}`]);
  });

  it.each([
    ['on the output', 'out', 'not-shown'],
    ['that floats', 'floating', 'not-shown'],
    ['on a circuit that is no part of the pair', 'iso', 'meets'],
  ])('should not be shown past a band %s of which nobody knows where it lies', (_, bond, verdict) => {
    const circuits = [
      { id: 'pri', role: 'mains' },
      { id: 'out', role: 'touchable' },
      { id: 'iso', role: 'touchable' },
    ];
    const band = (touches: readonly string[]) => ({ circuits, parts: [{ id: 'band', bond, touches }] });
    expect(pairOf(verdictWith(band([]))).verdict).toBe(verdict);
    const placed = { ...band([]), outside: [entry('20 mm', '20 mm', ['pri', 'band'])] };
    expect(pairOf(verdictWith(placed))).toMatchObject({ verdict: 'meets', unplaced: [] });
  });

  it('should stop the pins being listed as not judged once every barrier has an entry', () => {
    const notJudged = (changes: Changes) => toldWith(changes).notJudged.includes('pins and wiring outside');
    expect(notJudged({})).toBe(true);
    expect(notJudged({ outside: [entry('8 mm', '8 mm')] })).toBe(false);
    expect(notJudged({ outside: [entry('8 mm', '8 mm', ['pri', 'core'])] })).toBe(true);
  });

  it.each([
    ['8 mm, which is far', '8 mm', ['reinforced', 'meets']],
    ['2 mm: 2 + 1.34 of clearance, 2 + 4.34 of creepage', '2 mm', ['reinforced', 'meets']],
    ['1.6 mm: 2.94 of clearance; alone 1.6 is basic, 1.34 is not', '1.6 mm', ['basic', 'falls-short']],
    ['0.9 mm, less than X: only 1.34 of clearance is left', '0.9 mm', ['functional', 'falls-short']],
  ])('should join in with a floating core: %s', (_, length, barrier) => {
    expect(barrierWith({ ...LOW, outside: [entry(length, length, ['pri', 'core'])] })).toEqual(barrier);
  });

  it('should join in over a part that touches the core', () => {
    const outside = [entry('0.9 mm', '0.9 mm', ['pri', 'band'])];
    const parts = (touches: readonly string[]) => [{ id: 'band', bond: 'floating', touches }];
    expect(barrierWith({ ...LOW, outside, parts: parts(['core']) })).toEqual(['functional', 'falls-short']);
    expect(barrierWith({ ...LOW, outside, parts: parts([]) })).toEqual(['reinforced', 'meets']);
    expect(spots({ ...LOW, outside, parts: parts(['core']) })[0]).toEqual(['core-bridge', 'plain']);
  });

  it('should reach a circuit over a part that is bound to it', () => {
    const outside = [entry('0.9 mm', '0.9 mm', ['out', 'band'])];
    const bound = (bond: string) => ({ outside, parts: [{ id: 'band', bond, touches: [] }] });
    expect(barrierWith(bound('pri'))).toEqual(['functional', 'falls-short']);
    expect(barrierWith(bound('floating'))).toEqual(['reinforced', 'meets']);
  });

  it('should bind the core where a part that touches it is bound', () => {
    const parts = [{ id: 'band', bond: 'pri', touches: ['core'] }];
    expect(barrierWith({ ...LOW, parts })).toEqual(['functional', 'falls-short']);
    expect(barrierWith({ ...LOW, parts: [{ ...parts[0], bond: 'out' }] })[0]).not.toBe('functional');
  });
});

describe('leads a stated way apart', () => {
  const lead = (apart: string | undefined, sleeve: unknown = null) => ({
    at: 'left',
    exit: 'left',
    way: 'slot',
    sleeve,
    ...(apart && { apart }),
  });
  const RIGHT = { at: 'right', exit: 'right', way: 'slot', sleeve: null, apart: '10 mm' };
  const strong = { material: 'ptfe', wall: '0.4 mm', into: '3 mm' };
  const leads = (a: unknown, b: unknown): Changes => ({
    'windings[0].leads': { start: a, finish: RIGHT },
    'windings[1].leads': { start: b, finish: RIGHT },
  });
  const outsidePaths = (changes: Changes) => spots(changes).filter(([, section]) => section === 'outside');

  it('should be held to that distance', () => {
    expect(outsidePaths(leads(lead('4.9 mm'), lead('9 mm')))).toHaveLength(1);
    expect(outsidePaths(leads(lead('10 mm'), lead('10 mm')))).toEqual([]);
  });

  it('should be no path where one of them is under a strong sleeve', () => {
    expect(outsidePaths(leads(lead('4.9 mm', strong), lead('4.9 mm')))).toEqual([]);
  });
});

describe('parts that bridge', () => {
  const capacitor = (safetyClass: string, more: Changes = {}) => ({
    bridges: [{ id: 'C1', kind: 'capacitor', between: ['pri', 'out'], safetyClass, rated: '300 V', ...more }],
  });

  it.each([
    ['Y1', {}, ['reinforced', 'meets']],
    ['Y2', {}, ['basic', 'falls-short']],
    ['Y2', { inSeries: 2 }, ['double', 'meets']],
    ['X1', {}, ['none', 'falls-short']],
    ['none', {}, ['none', 'falls-short']],
    ['Y1', { rated: '239 V' }, ['none', 'falls-short']],
  ] as const)('should hold the pair to the grade of a capacitor %s %j', (safetyClass, more, barrier) => {
    expect(barrierWith(capacitor(safetyClass, more))).toEqual(barrier);
  });

  it('should never lift a pair above what its paths reach', () => {
    expect(barrierWith({ ...capacitor('Y1'), 'layers[1].plies': 1 })).toEqual(['basic', 'falls-short']);
  });

  it('should be told as unsafe before all other weak spots, and as what limits', () => {
    const changes = { ...capacitor('X1'), 'layers[1].plies': 1 };
    const { weakSpots, pairs } = verdictWith(changes);
    expect(weakSpots[0]).toMatchObject({ kind: 'unsafe-bridge', between: ['pri', 'out'], achieved: 'none' });
    const kinds = weakSpots.map(({ kind }) => kind);
    expect(kinds[1]).toBe('few-plies');
    // its capacitance is not said, so neither is what it passes
    expect(kinds.at(-1)).toBe('touch-current');
    expect(pairs[0]!.limiting).toMatchObject({ metric: 'bridge', bridge: 'C1' });
  });

  it('should be held to the distances round an optocoupler', () => {
    const coupler = (creepage: string) => ({
      bridges: [
        {
          id: 'OK1',
          kind: 'optocoupler',
          between: ['pri', 'out'],
          clearance: '7 mm',
          creepage,
          approval: 'reinforced',
        },
      ],
    });
    expect(barrierWith(coupler('5 mm'))).toEqual(['reinforced', 'meets']);
    expect(barrierWith(coupler('4.9 mm'))).toEqual(['basic', 'falls-short']);
  });

  it('should ask nothing where no barrier is between', () => {
    const changes = { ...capacitor('X1'), 'circuits[1].role': 'mains' };
    const verdict = verdictWith(changes);
    expect(verdict).toMatchObject({ verdict: 'meets', weakSpots: [] });
    expect(verdict.pairs[0]!.achieved).toBe('functional');
  });
});

describe('the core', () => {
  it('should be counted with the mains beside a verdict for which it floats', () => {
    const { verdict, coreAsPrimary } = verdictWith(LOW);
    expect(verdict).toBe('meets');
    expect(coreAsPrimary).toMatchObject({ verdict: 'falls-short' });
    expect(coreAsPrimary!.pairs[0]).toMatchObject({
      achieved: 'functional',
      metric: 'clearance',
      required: 3,
    });
    expect(coreAsPrimary!.pairs[0]!.length).toBeCloseTo(1.34, 5);
    // the same as binding it
    expect(barrierWith({ ...LOW, 'core.bond': 'pri' })).toEqual(['functional', 'falls-short']);
  });

  it('should not be counted twice where it is bound, nor where nothing is mains', () => {
    expect(verdictWith({ 'core.bond': 'pri' }).coreAsPrimary).toBeNull();
    expect(verdictWith({ 'circuits[0].role': 'isolated' }).coreAsPrimary).toBeNull();
  });

  it('should be whichever is worst where nobody knows', () => {
    const grade = (bond: string) => barrierWith({ ...LOW, 'core.bond': bond })[0];
    // bound to the output it is 3 + 0.18 + 1.34 mm from the mains, through the output's margin
    expect([grade('floating'), grade('out'), grade('pri')]).toEqual(['reinforced', 'basic', 'functional']);
    const { pairs, coreAsPrimary } = verdictWith({ ...LOW, 'core.bond': 'unknown' });
    expect(pairs[0]).toMatchObject({
      achieved: 'functional',
      achievedAtBest: 'reinforced',
      verdict: 'not-shown',
    });
    expect(coreAsPrimary).toBeNull();
  });

  it('should end the search where it is bound to a third circuit', () => {
    const third = {
      circuits: [
        { id: 'pri', role: 'mains' },
        { id: 'out', role: 'touchable' },
        { id: 'pe', role: 'earth' },
      ],
      'core.bond': 'pe',
      outside: [entry('0.5 mm', '0.5 mm', ['pri', 'core'])],
    };
    const verdict = verdictWith({ ...LOW, ...third });
    expect(pairOf(verdict)).toMatchObject({ achieved: 'reinforced' });
    expect(pairOf(verdict, 'pri', 'pe')).toMatchObject({ needed: 'basic', achieved: 'functional' });
  });
});

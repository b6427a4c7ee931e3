// What is proven is told before what is assumed, what is assumed says so in the same sentence, and a field decides only
// where it changes the verdict.

import { describe, expect, it } from 'vitest';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { headline } from '#words/verdict/pair-words.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Changes } from '#test/designs.ts';
import { designWith, pairOf, PLIES, toldWith, verdictWith } from './margin-build.ts';

const margins = (width: string) => ({ left: { width, filled: true }, right: { width, filled: true } });

/** 2 + 0.18 + 2 mm of 5 beside a wall that nobody measured, towards a core on the output. */
const SHORT: Changes = {
  'former.wall': 'unknown',
  'core.bond': 'out',
  'layers[0].margins': margins('2 mm'),
  'layers[2].margins': margins('2 mm'),
};

const headlineOf = (changes: Changes): string => {
  const design = designWith(changes);
  return headline(judge(design).verdict, circuitLooks(design.circuits));
};

describe('a pair that falls short whatever the unknowns are', () => {
  it('should be proven by the path that limits at best', () => {
    const pair = pairOf(verdictWith(SHORT));
    expect(pair).toMatchObject({ verdict: 'falls-short', achieved: 'functional', achievedAtBest: 'basic' });
    expect(pair.proven).toMatchObject({ metric: 'creepage', length: 4.18, grade: 'basic', conditions: [] });
    expect(pair.limiting?.length).toBe(0);
  });

  it('should tell what was measured first, and the wall only as what it may be', () => {
    const { weakSpots } = toldWith(SHORT);
    expect(weakSpots.map(({ kind, proven, verdict }) => [kind, proven, verdict])).toEqual([
      ['narrow-margin', true, 'falls-short'],
      ['core-bridge', false, 'not-shown'],
    ]);
    expect(weakSpots[1]?.says).toContain('if the former’s wall is no more than a ply of unknown strength.');
    expect(headlineOf(SHORT)).toMatch(/begins 2\.00 mm.*[Ww]hatever the unknowns are, at most basic/);
  });

  it('should be drawn on a section of its own where it lies elsewhere than at worst', () => {
    const { verdict, sections, turns } = judge(designWith(SHORT));
    const { section } = pairOf(verdict).proven as { section: string };
    expect(sections.map(({ name }) => name)).toContain(section);
    expect(section).not.toBe('plain');
    expect(turns.get(section)?.length).toBe(turns.get('plain')?.length);
  });

  it('should be decided by nothing', () => {
    const none = { ...SHORT, workingVoltages: undefined };
    expect(verdictWith(none).assumptions.filter(({ decides }) => decides)).toEqual([]);
    expect(pairOf(verdictWith(none)).proven).not.toBeNull();
  });

  it('should name a part or a distance outside by itself', () => {
    const part = { id: 'CX1', kind: 'capacitor', between: ['pri', 'out'], safetyClass: 'X2' };
    expect(pairOf(verdictWith({ bridges: [part] })).proven).toMatchObject({ bridge: 'CX1', grade: 'none' });
    const pins = { between: ['pri', 'out'], what: 'pin rows', clearance: '2 mm', creepage: '3 mm' };
    expect(pairOf(verdictWith({ outside: [pins] })).proven).toMatchObject({ outside: 0 });
  });

  it('should name all that is missing: a margin widened leaves plies of unknown strength', () => {
    const plies = { ...PLIES, plies: 2, plyWithstand: undefined };
    const words = headlineOf({
      ...SHORT,
      'former.wall': '0.8 mm',
      'core.bond': 'floating',
      'layers[1]': plies,
    });
    expect(words).toContain('That alone will not do: take tape whose plies are shown to withstand the test');
  });
});

describe('what decides', () => {
  it('should be told with the figure that turns the verdict', () => {
    const voltage = toldWith({ workingVoltages: undefined }).assumptions;
    expect(voltage.filter(({ decides }) => decides)).toMatchObject([
      { field: 'workingVoltages', figure: '240 V' },
    ]);
    const plies = toldWith({ 'layers[1].plies': 'unknown' }).assumptions;
    expect(plies.filter(({ decides }) => decides)).toMatchObject([
      { field: 'layers[1].plies', figure: '3 plies' },
    ]);
    // 20 turns of 0.23 mm beside 3 mm leave 4.4 of 12 mm
    const margin = { left: { width: 'unknown', filled: true }, right: { width: '3 mm', filled: true } };
    const open = toldWith({ 'layers[0].margins': margin }).assumptions;
    expect(open.filter(({ decides }) => decides)).toMatchObject([
      { field: 'layers[0].margins.left.width', figure: '4.40 mm' },
    ]);
  });
});

describe('a way straight through plies', () => {
  const short = { 'layers[0].margins': margins('1 mm'), 'layers[2].margins': margins('1 mm') };

  it('should be proven where plies that are known are too few, beside a margin that is too short', () => {
    const known = { ...short, 'layers[1]': { ...PLIES, plies: 1 } };
    const told = [
      ['narrow-margin', true, 'falls-short'],
      ['few-plies', true, 'falls-short'],
    ];
    const spotsOf = (changes: Changes) =>
      verdictWith(changes).weakSpots.map(({ kind, proven, verdict }) => [kind, proven, verdict]);
    expect(spotsOf(known)).toEqual(told);
    expect(spotsOf({ ...known, 'former.wall': 'unknown' })).toEqual([
      ...told,
      ['core-bridge', false, 'not-shown'],
    ]);
  });

  it('should come after the path that the pair is told by, where both reach the same', () => {
    const weak = { ...short, 'layers[1]': { ...PLIES, plies: 2, plyWithstand: '1 kV' } };
    expect(verdictWith(weak).weakSpots.map(({ kind, achieved }) => [kind, achieved])).toEqual([
      ['narrow-margin', 'functional'],
      ['weak-ply', 'functional'],
    ]);
    expect(headlineOf(weak)).toMatch(/begins 1\.00 mm.*That alone will not do: take tape whose plies/);
  });

  it('should be told in the advice with all else that is missing', () => {
    const both = { ...short, 'layers[1]': { ...PLIES, plies: 1 }, 'former.wall': 'unknown' };
    expect(headlineOf(both)).toMatch(/That alone will not do: add two plies of tape; [\d.]+ mm more .*\.$/);
  });
});

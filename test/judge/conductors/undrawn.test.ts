// A circuit without any conductor in the window is nothing to judge, not good insulation.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { barrierWith, MARGINS, pairOf, verdictWith } from '#test/judge/margin-build.ts';

const P = { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS };
const onlyPrimary: Changes = { layers: [P] };

describe('a circuit that is not drawn', () => {
  it('should not be shown, with no grade reached', () => {
    const verdict = verdictWith(onlyPrimary);
    const { achieved, achievedAtBest, verdict: answer, undrawn, limiting } = pairOf(verdict);
    expect({ achieved, achievedAtBest, answer, undrawn, limiting }).toEqual({
      achieved: 'none',
      achievedAtBest: 'reinforced',
      answer: 'not-shown',
      undrawn: ['out'],
      limiting: null,
    });
    expect(verdict.verdict).toBe('not-shown');
    expect(verdict.coreAsPrimary).toMatchObject({ verdict: 'not-shown', pairs: [{ achieved: 'none' }] });
  });

  it('should not be judged by a distance outside the window alone', () => {
    const outside = [{ between: ['pri', 'out'], what: 'pin rows', clearance: '9 mm', creepage: '9 mm' }];
    const verdict = verdictWith({ ...onlyPrimary, outside });
    expect(pairOf(verdict)).toMatchObject({ verdict: 'not-shown', achieved: 'none', limiting: null });
    expect(verdict.coreAsPrimary?.pairs[0]).toMatchObject({ length: null, required: null, metric: null });
  });

  it('should name both where the window is empty', () => {
    expect(pairOf(verdictWith({ layers: [] })).undrawn).toEqual(['pri', 'out']);
  });

  it('should still fall short where a part bridges the two', () => {
    const bridges = [{ id: 'CX', kind: 'capacitor', between: ['pri', 'out'], safetyClass: 'X1' }];
    expect(barrierWith({ ...onlyPrimary, bridges })).toEqual(['none', 'falls-short']);
  });

  it('should be drawn by a screen or by a core that belongs to it', () => {
    const screen = { kind: 'screen', thickness: '0.05 mm', circuit: 'out' };
    expect(pairOf(verdictWith({ layers: [P, screen] })).undrawn).toEqual([]);
    expect(pairOf(verdictWith({ ...onlyPrimary, 'core.bond': 'out' })).undrawn).toEqual([]);
    expect(pairOf(verdictWith({ ...onlyPrimary, 'core.bond': 'unknown' })).undrawn).toEqual(['out']);
  });

  it('should not be drawn by a part near the coil, which lies in no section', () => {
    const part = { id: 'band', bond: 'out', touches: [] };
    expect(pairOf(verdictWith({ ...onlyPrimary, parts: [part] }))).toMatchObject({
      verdict: 'not-shown',
      undrawn: ['out'],
    });
    // unless it ties the core
    const tie = { ...part, touches: ['core'] };
    expect(pairOf(verdictWith({ ...onlyPrimary, parts: [tie] })).undrawn).toEqual([]);
  });

  it('should not ask for an earth that lies outside only', () => {
    const circuits = [
      { id: 'pri', role: 'mains' },
      { id: 'out', role: 'touchable' },
      { id: 'pe', role: 'earth' },
    ];
    const voltages = [
      { between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '65 kHz' },
      { between: ['pri', 'pe'], rms: '250 V', peak: '500 V', frequency: '65 kHz' },
    ];
    const verdict = verdictWith({ circuits, workingVoltages: voltages });
    expect(pairOf(verdict, 'pri', 'pe')).toMatchObject({ verdict: 'meets', undrawn: [] });
  });
});

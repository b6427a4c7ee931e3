// Plies are counted as far as the hardest of all pairs asks: where two are enough for one pair, no number may be for another.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { pairOf, PLIES, verdictWith } from './margin-build.ts';

const wide = { left: { width: '60 mm', filled: true }, right: { width: '60 mm', filled: true } };
const wire = { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.23 mm' };
const winding = (id: string, circuit: string) => ({ id, circuit, wire, leads: 'not-judged' });
const layer = (id: string) => ({ kind: 'winding', winding: id, turns: 20, margins: wide });

/** 2.9 kV rms are 4.1 kV peak: over the 4.0 of the first pair; two together are under what the second asks. */
const plies = { ...PLIES, plies: 4, plyWithstand: '2.9 kV' };

const BUILD: Changes = {
  circuits: [
    { id: 'pri', role: 'mains' },
    { id: 'out', role: 'touchable' },
    { id: 'aux', role: 'mains' },
  ],
  workingVoltages: [
    { between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '50 Hz' },
    { between: ['aux', 'out'], rms: '250 V', peak: '9000 V', frequency: '50 Hz' },
  ],
  'former.chambers[0].width': '130 mm',
  windings: [winding('P', 'pri'), winding('S', 'out'), winding('A', 'aux')],
  layers: [layer('P'), plies, layer('S'), plies, layer('A')],
};

describe('two pairs that ask different tests', () => {
  it('should not take plies that are enough for one as enough for the other', () => {
    const verdict = verdictWith(BUILD);
    const of = (id: string) => pairOf(verdict, id, 'out');
    const [low, high] = ['pri', 'aux'].map((id) => of(id).required?.test.peak ?? 0);
    expect(low).toBeLessThan(2900 * Math.SQRT2);
    expect(high).toBeGreaterThan(2 * 2900 * Math.SQRT2);
    // four plies are more than the printed paths go through
    expect(of('pri').verdict).toBe('meets');
    expect(of('aux')).toMatchObject({ achieved: 'functional', verdict: 'falls-short' });
  });
});

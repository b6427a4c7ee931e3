// Which unknowns decide: alone at their best they change a pair's verdict; where none alone does, the smallest set.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { PLIES, verdictWith } from '#test/judge/margin-build.ts';

const UNKNOWN = { width: 'unknown', filled: true };
const THREE = { width: '3 mm', filled: true };

function assumptions(changes: Changes) {
  const { verdict, assumptions: all } = verdictWith(changes);
  const open = all.filter(({ kind }) => kind === 'unknown');
  return {
    verdict,
    deciding: open.filter(({ decides }) => decides).map(({ field }) => field),
    atBest: Object.fromEntries(open.map(({ field, atBest }) => [field, atBest])),
  };
}

describe('deciders', () => {
  it('should be the one unknown that alone would make it meet', () => {
    const found = assumptions({ 'layers[1].plies': 'unknown', 'core.outerGap': 'unknown' });
    expect(found).toEqual({
      verdict: 'not-shown',
      deciding: ['layers[1].plies'],
      atBest: { 'layers[1].plies': 'meets', 'core.outerGap': 'not-shown' },
    });
  });

  it('should be the set that is needed together, without what it can spare', () => {
    // every side of every winding is short: 0.18 mm of climb and one margin
    const changes = {
      'layers[0].margins': { left: UNKNOWN, right: UNKNOWN },
      'core.outerGap': 'unknown',
    };
    const { verdict, deciding, atBest } = assumptions(changes);
    expect(verdict).toBe('not-shown');
    expect(deciding).toEqual(['layers[0].margins.left.width', 'layers[0].margins.right.width']);
    expect(atBest['layers[0].margins.left.width']).toBe('not-shown');
  });

  it('should all be named where each alone would do', () => {
    // 20 turns of 0.23 mm leave room for 4.4 mm beside the 3 mm that are known; 8 of 0.55 mm for 4.6 mm
    const changes = {
      'layers[0].margins': { left: UNKNOWN, right: THREE },
      'layers[2].margins': { left: { width: '1 mm', filled: true }, right: THREE },
      'windings[0].wire.kind': 'unknown',
    };
    expect(assumptions(changes).deciding.toSorted()).toEqual([
      'layers[0].margins.left.width',
      'windings[0].wire.kind',
    ]);
  });

  it('should be none where the build meets or falls short whatever they are', () => {
    expect(assumptions({ 'core.outerGap': 'unknown' })).toEqual({
      verdict: 'meets',
      deciding: [],
      atBest: { 'core.outerGap': 'meets' },
    });
    const short = {
      layers: [
        { kind: 'winding', winding: 'P', turns: 20 },
        { ...PLIES, plies: 1 },
        { kind: 'winding', winding: 'S', turns: 8 },
      ],
    };
    const found = assumptions({ ...short, 'core.outerGap': 'unknown' });
    expect([found.verdict, found.deciding]).toEqual(['falls-short', []]);
  });

  it('should be counted with intervals at their worse ends', () => {
    const narrow = { value: '3 mm', plusMinus: '1.3 mm' };
    const changes = { 'layers[1].plies': 'unknown', 'layers[2].margins.left.width': narrow };
    expect(assumptions(changes)).toMatchObject({ verdict: 'not-shown', deciding: [] });
  });

  it('should be the bridge that nobody knows', () => {
    const bridge = {
      id: 'C1',
      kind: 'capacitor',
      between: ['pri', 'out'],
      capacitance: '1 nF',
      safetyClass: 'unknown',
    };
    const found = assumptions({ bridges: [bridge], 'core.outerGap': 'unknown' });
    expect(found.verdict).toBe('not-shown');
    expect(found.deciding).toEqual(['bridges[0].safetyClass']);
  });
});

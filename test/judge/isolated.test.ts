// Isolated circuits behind each other: one that is reinforced towards the mains by itself is not where it lies at another
// that has basic insulation alone.

import { describe, expect, it } from 'vitest';
import { pairOf, PLIES, verdictWith } from './margin-build.ts';

const IDS = ['pri', 'out', 'near', 'far'];
const ROLES = ['mains', 'touchable', 'isolated', 'isolated'];
const WINDINGS = ['P', 'S', 'N', 'F'];

const winding = (id: string, k: number) => ({
  id,
  circuit: IDS[k],
  wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1, overallDiameter: '0.23 mm' },
  leads: 'not-judged',
});

/** A layer from one place to another of a chamber of 40 mm, with filled margins beside it. */
const layer = (id: string, from: number, to: number) => ({
  kind: 'winding',
  winding: id,
  turns: 5,
  margins: { left: { width: from, filled: true }, right: { width: 40 - to, filled: true } },
});

const between = IDS.flatMap((a, i) => IDS.slice(i + 1).map((b) => [a, b]));

/** N over P with so many plies between, F on N from `far` mm, S on F; P and F, N and S are 6.5 mm apart and more. */
const build = (plies: number, far: number) =>
  verdictWith({
    'former.height': '8 mm',
    'former.chambers': [{ width: '40 mm' }],
    'core.outerGap': '3 mm',
    circuits: IDS.map((id, k) => ({ id, role: ROLES[k] })),
    windings: WINDINGS.map(winding),
    workingVoltages: between.map((pair) => ({
      between: pair,
      rms: '250 V',
      peak: '400 V',
      frequency: '65 kHz',
    })),
    layers: [
      layer('P', 6, 10),
      ...(plies > 0 ? [{ ...PLIES, plies }] : []),
      { ...layer('N', 6, 22), turns: 60 },
      layer('F', far, 32),
      layer('S', 28.5, 34),
    ],
  });

const asked = (verdict: ReturnType<typeof build>, a: string, b: string) => {
  const pair = pairOf(verdict, a, b);
  return [pair.needed, pair.verdict];
};

describe('isolated circuits behind each other', () => {
  it('should ask nothing of one that is reinforced towards the mains and away from the other', () => {
    const apart = build(1, 28);
    expect(asked(apart, 'far', 'out')[0]).toBe('functional');
    expect(apart.verdict).toBe('meets');
  });

  it('should ask the second barrier where it touches one that has basic insulation alone', () => {
    const touching = build(1, 20);
    expect(pairOf(touching, 'pri', 'near').achieved).toBe('basic');
    expect(pairOf(touching, 'pri', 'far').achieved).toBe('reinforced');
    expect(asked(touching, 'far', 'out')).toEqual(['supplementary', 'falls-short']);
    expect(touching.verdict).toBe('falls-short');
  });

  it('should ask nothing where both are reinforced', () => {
    expect(asked(build(3, 20), 'far', 'out')[0]).toBe('functional');
  });

  it('should ask it where the other counts as mains', () => {
    const enamel = build(0, 28);
    expect(pairOf(enamel, 'pri', 'near').verdict).toBe('falls-short');
    expect(asked(enamel, 'near', 'out')).toEqual(['reinforced', 'meets']);
    expect(asked(enamel, 'far', 'out')[0]).toBe('functional');
    // it touches what counts as mains, and counts as mains itself
    expect(asked(build(0, 20), 'far', 'out')).toEqual(['reinforced', 'falls-short']);
  });
});

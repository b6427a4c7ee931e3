// Solids that no grading tells apart share a kind; what could be worth more beside another keeps its own.

import { describe, expect, it } from 'vitest';
import { because } from '#standards/because.ts';
import { solidKinds } from '#judge/grade/solid-kinds.ts';
import type { Solid } from '#books/questions/solid.ts';
import { nm, voltsPeak } from '#units/quantity.ts';

const ply = (alike: string, volts: number, change: Partial<Solid> = {}): Solid =>
  ({
    kind: 'sheet',
    alike,
    group: 'IIIa',
    strength: voltsPeak(volts),
    stated: true,
    thickness: nm(0),
    bonded: null,
    layers: null,
    because: because('moulding', { material: null, group: 'IIIa' }),
    ...change,
  }) as Solid;

/** Kinds by number, in the order in which they come; plies from 4 kV up stand every test. */
function numbered(stuffs: readonly Solid[]): readonly number[] {
  const found = solidKinds(new Map(stuffs.entries()), (id) => Number(stuffs[id]!.strength) >= 4000);
  const kinds = [...found.values()];
  return kinds.map((kind) => [...new Set(kinds)].indexOf(kind));
}

describe('kinds of solids', () => {
  it('should take plies of any make that stand every test as one kind', () => {
    expect(numbered([ply('a', 5000), ply('b', 7000), ply('c', 4000)])).toEqual([0, 0, 0]);
  });

  it('should keep a weaker ply apart, and a strong one of the same make, with which it adds up', () => {
    expect(numbered([ply('a', 5000), ply('b', 3000), ply('b', 5000), ply('c', 3000)])).toEqual([0, 1, 2, 3]);
  });

  it('should keep plies that cannot be parted apart', () => {
    expect(numbered([ply('a', 5000), ply('b', 5000, { bonded: 2 })])).toEqual([0, 1]);
  });

  it('should take the covers of two windings of as many layers as one kind', () => {
    const cover = (layers: 1 | 2) => ply('w', 0, { kind: 'cover', strength: null, layers });
    expect(numbered([cover(1), cover(2), cover(1)])).toEqual([0, 1, 0]);
  });
});

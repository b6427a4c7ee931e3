import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { putIn, type LayerWish } from '#model/edit/put-in.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';

const wish: LayerWish = {
  at: 0,
  chamber: 0,
  kind: 'winding',
  of: 'circuit:pri',
  turns: '60',
  wire: 'enamelled',
  conductor: '0.25 mm',
  material: 'polyester-tape-25',
  plies: '3',
  thickness: '0.06 mm',
  left: '3 mm',
  right: '0.00 mm',
  filled: true,
};

describe('putIn', () => {
  it('should make the winding with its first layer, and no margin where none is left', () => {
    const doc = putIn(blankDesign(), wish);
    expect(doc.windings).toEqual([
      { id: 'P', circuit: 'pri', wire: { kind: 'enamelled', conductor: '0.25 mm' } },
    ]);
    expect(doc.layers).toEqual([
      { kind: 'winding', winding: 'P', turns: 60, margins: { left: { width: '3 mm', filled: true } } },
    ]);
    expect(readDesign(doc, knownIds).kind).not.toBe('bad');
  });

  it('should go on with a winding that is there', () => {
    const doc = putIn(putIn(blankDesign(), wish), { ...wish, at: 1, of: 'winding:P', turns: '20' });
    expect(doc.windings.length).toBe(1);
    expect(doc.layers.map((layer) => layer.kind === 'winding' && layer.turns)).toEqual([60, 20]);
  });

  it('should write nothing that nobody said', () => {
    const silent = {
      turns: '',
      wire: 'unknown',
      conductor: '?',
      material: 'unknown',
      plies: '',
      thickness: '',
    };
    const doc = putIn(putIn(blankDesign(), { ...wish, ...silent }), {
      ...wish,
      ...silent,
      kind: 'tape',
      at: 1,
    });
    expect(doc.windings[0]?.wire).toEqual({ kind: 'unknown', conductor: 'unknown' });
    expect(doc.layers[0]).toMatchObject({ turns: 'unknown' });
    expect(doc.layers[1]).toEqual({
      kind: 'tape',
      plies: 'unknown',
      plyThickness: 'unknown',
      inset: { left: '3 mm' },
    });
    expect(readDesign(doc, knownIds).kind).not.toBe('bad');
  });

  it('should leave what cannot be read for the reading to tell', () => {
    const reading = readDesign(putIn(blankDesign(), { ...wish, turns: 'many' }), knownIds);
    expect(reading.kind === 'bad' && reading.faults.map(({ field }) => field)).toEqual(['layers[0].turns']);
  });

  it('should tie a screen to its circuit or let it float', () => {
    const tied = putIn(blankDesign(), { ...wish, kind: 'screen', left: '' });
    expect(tied.layers[0]).toEqual({ kind: 'screen', circuit: 'pri', thickness: '0.06 mm' });
    const floating = putIn(blankDesign(), { ...wish, kind: 'screen', of: '', left: '' });
    expect(floating.layers[0]).toEqual({ kind: 'screen', thickness: '0.06 mm' });
  });
});

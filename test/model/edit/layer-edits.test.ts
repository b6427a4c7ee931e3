import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/begin/demos.ts';
import {
  addLayer,
  convertLayer,
  duplicateLayers,
  moveLayers,
  newLayer,
  removeLayers,
} from '#model/edit/layer-edits.ts';

const kinds = (doc: typeof firstBuild): string => doc.layers.map(({ kind }) => kind[0]).join('');

describe('layer edits', () => {
  it('should put a layer in where it is asked to', () => {
    const tape = newLayer(firstBuild, 'tape');
    expect(tape).not.toBeNull();
    if (tape !== null) expect(kinds(addLayer(firstBuild, 1, tape))).toBe('wttwtwt');
  });

  it('should copy each picked layer just outside itself', () => {
    expect(kinds(duplicateLayers(firstBuild, [0, 2]))).toBe('wwtwwtwt');
  });

  it('should take out the picked layers whatever their order', () => {
    expect(kinds(removeLayers(firstBuild, [5, 0, 3]))).toBe('tww');
  });

  it('should lay a winding over what comes between it and its neighbour, and a copy over its original', () => {
    const [first] = firstBuild.layers;
    const pair = addLayer(firstBuild, 1, { ...first!, beside: true } as typeof first & object);
    const besideAt = (doc: typeof firstBuild) =>
      doc.layers.flatMap((layer, i) => (layer.kind === 'winding' && layer.beside === true ? [i] : []));
    expect(besideAt(pair)).toEqual([1]);
    expect(besideAt(duplicateLayers(pair, [1]))).toEqual([1]);
    expect(besideAt(removeLayers(pair, [0]))).toEqual([]);
    expect(besideAt(addLayer(pair, 1, newLayer(pair, 'tape')!))).toEqual([]);
    expect(besideAt(moveLayers(pair, [1], pair.layers.length).doc)).toEqual([]);
  });

  it('should move a layer to just inside another', () => {
    const { doc, placeOf } = moveLayers(firstBuild, [0], 3);
    expect(doc.layers[2]).toBe(firstBuild.layers[0]);
    expect(doc.layers[0]).toBe(firstBuild.layers[1]);
    expect([placeOf(0), placeOf(1), placeOf(3)]).toEqual([2, 0, 3]);
  });

  it('should gather layers in their order, wherever they lay and however they were picked', () => {
    const { doc, placeOf } = moveLayers(firstBuild, [4, 0, 2], 2);
    expect(doc.layers.map((layer) => firstBuild.layers.indexOf(layer))).toEqual([1, 0, 2, 4, 3, 5]);
    expect([4, 0, 2].map(placeOf)).toEqual([3, 1, 2]);
  });

  it('should lay picked layers outermost, and leave all where nothing moves', () => {
    const out = moveLayers(firstBuild, [1, 2], firstBuild.layers.length).doc;
    expect(out.layers.slice(-2)).toEqual(firstBuild.layers.slice(1, 3));
    expect(moveLayers(firstBuild, [2, 3], 2).doc).toBe(firstBuild);
  });

  it('should let evidence follow the layers that it stands behind', () => {
    const evidence = [
      { id: 'E1', kind: 'photo' as const, says: '', fields: ['layers[3].turnUp', 'layers[1].plies'] },
    ];
    const { doc } = moveLayers({ ...firstBuild, evidence }, [3], 1);
    expect(doc.evidence?.[0]?.fields).toEqual(['layers[1].turnUp', 'layers[2].plies']);
  });

  it('should keep margins and chamber when a layer becomes another kind', () => {
    const converted = convertLayer(firstBuild, 2, 'screen');
    expect(converted.layers[2]).toMatchObject({ kind: 'screen', margins: firstBuild.layers[2]?.margins });
    expect(converted.layers[2]).not.toHaveProperty('turns');
  });

  it('should offer no winding layer where there is no winding', () => {
    expect(newLayer({ ...firstBuild, windings: [] }, 'winding')).toBeNull();
  });
});

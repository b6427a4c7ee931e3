import { describe, expect, it } from 'vitest';
import { firstBuild } from '#state/demos.ts';
import {
  addLayer,
  convertLayer,
  duplicateLayers,
  moveLayer,
  newLayer,
  removeLayers,
} from '#state/layer-edits.ts';

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

  it('should move a layer to the place it has afterwards', () => {
    const moved = moveLayer(firstBuild, 0, 2);
    expect(moved.layers[2]).toBe(firstBuild.layers[0]);
    expect(moved.layers[0]).toBe(firstBuild.layers[1]);
  });

  it('should let evidence follow the layer that it stands behind', () => {
    const evidence = [{ id: 'E1', kind: 'photo' as const, says: '', fields: ['layers[3].turnUp'] }];
    const moved = moveLayer({ ...firstBuild, evidence }, 3, 1);
    expect(moved.evidence?.[0]?.fields).toEqual(['layers[1].turnUp']);
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

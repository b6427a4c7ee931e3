import { describe, expect, it } from 'vitest';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { blankDesign } from '#model/begin/blank-design.ts';
import { layersText, pasteLayers } from '#model/edit/layers-text.ts';
import { readDesign } from '#model/read/read-design.ts';
import { firstBuild } from '#state/begin/demos.ts';

describe('layers as text', () => {
  it('should take layers with their windings and circuits into a build that has none', () => {
    const text = layersText(firstBuild, [2, 0, 1]);
    const found = pasteLayers(blankDesign(), text, 0);
    expect(found?.layers).toEqual([0, 1, 2]);
    expect(found?.doc.layers).toEqual(firstBuild.layers.slice(0, 3));
    expect(found?.doc.windings).toEqual(firstBuild.windings.filter(({ id }) => ['P', 'S'].includes(id)));
    expect(found?.doc.circuits.length).toBe(2);
    expect(readDesign(found?.doc, knownIds).kind).toBe('design');
  });

  it('should not double a winding that is there just the same, and name another anew', () => {
    const text = layersText(firstBuild, [2]);
    const same = pasteLayers(firstBuild, text, 6);
    expect(same?.doc.windings).toBe(firstBuild.windings);
    expect(same?.doc.layers[6]).toEqual(firstBuild.layers[2]);
    const thinner = firstBuild.windings.map((winding) =>
      winding.id === 'S' ? { ...winding, wire: { ...winding.wire, conductor: '0.3 mm' } } : winding,
    );
    const other = pasteLayers({ ...firstBuild, windings: thinner }, text, 6);
    const [added] = other?.doc.windings.slice(-1) ?? [];
    expect(other?.doc.windings.length).toBe(firstBuild.windings.length + 1);
    expect(other?.doc.layers[6]).toMatchObject({ kind: 'winding', winding: added?.id });
    expect(added?.id).not.toBe('S');
  });

  it('should put them just where they were asked for', () => {
    const found = pasteLayers(firstBuild, layersText(firstBuild, [1, 3]), 2);
    expect(found?.layers).toEqual([2, 3]);
    expect(found?.doc.layers.map((layer) => layer.kind).join()).toBe(
      'winding,tape,tape,tape,winding,tape,winding,tape',
    );
  });

  it('should refuse whatever holds no layers', () => {
    const hostile =
      '{"format":"layerwright-layers/1","layers":[{"kind":"tape","__proto__":{"a":1}}],"windings":[],"circuits":[]}';
    for (const text of [
      '',
      'three plies',
      '[]',
      JSON.stringify(firstBuild),
      hostile,
      hostile.replace('tape', 'x'),
    ])
      expect(pasteLayers(firstBuild, text, 0), text.slice(0, 40)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { addWinding, removeCircuit, removeWinding, renameWinding } from '#model/edit/circuit-edits.ts';
import { demos, firstBuild } from '#state/begin/demos.ts';

const faults = (doc: unknown): readonly string[] => {
  const read = readDesign(doc, knownIds);
  return read.kind === 'bad' ? read.faults.map(({ says }) => says) : [];
};

describe('circuit edits', () => {
  it('should add a winding with a layer and a name of its own', () => {
    const twice = addWinding(addWinding(firstBuild, 'out'), 'out');
    expect(new Set(twice.windings.map(({ id }) => id)).size).toBe(5);
    expect(twice.layers).toHaveLength(8);
    expect(faults(twice)).toEqual([]);
  });

  it('should rename a winding in its layers too, and refuse a name that is taken or empty', () => {
    const renamed = renameWinding(firstBuild, 1, 'Sec');
    expect(faults(renamed)).toEqual([]);
    expect(renamed.layers[2]).toMatchObject({ winding: 'Sec' });
    expect(renameWinding(firstBuild, 1, 'P')).toBe(firstBuild);
    expect(renameWinding(firstBuild, 1, '')).toBe(firstBuild);
  });

  it('should take the layers of a winding out with it', () => {
    const fewer = removeWinding(firstBuild, 0);
    expect(fewer.layers).toHaveLength(5);
    expect(faults(fewer)).toEqual([]);
  });

  it('should leave nothing behind that names a circuit which went', async () => {
    for (const demo of demos) {
      const doc = await demo.load();
      doc.circuits.forEach((_, i) => expect(faults(removeCircuit(doc, i)), `${demo.id} ${i}`).toEqual([]));
    }
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insertAt, moveItem, removeAt } from '#model/edit/edit-list.ts';
import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fullFile } from '#test/model/sample-files.ts';

const fields = (doc: DesignFile) => doc.evidence?.[0]?.fields;
const turn = { kind: 'winding', winding: 'P', turns: 1 } as const;

describe('edits of a list', () => {
  it('should carry evidence along with the entry that it stands behind', () => {
    const doc = fullFile();
    expect(fields(doc)).toEqual(['layers[1].turnUp', 'layers[4].turns']);
    expect(fields(insertAt(doc, 'layers', 2, turn))).toEqual(['layers[1].turnUp', 'layers[5].turns']);
    expect(fields(insertAt(doc, 'layers', 1, turn))).toEqual(['layers[2].turnUp', 'layers[5].turns']);
    expect(fields(removeAt(doc, 'layers', 0))).toEqual(['layers[0].turnUp', 'layers[3].turns']);
    expect(fields(moveItem(doc, 'layers', 1, 4))).toEqual(['layers[4].turnUp', 'layers[3].turns']);
    expect(fields(moveItem(doc, 'layers', 4, 0))).toEqual(['layers[2].turnUp', 'layers[0].turns']);
  });

  it('should drop evidence for an entry that is taken out, and only that', () => {
    expect(fields(removeAt(fullFile(), 'layers', 1))).toEqual(['layers[3].turns']);
  });

  it('should leave evidence for other lists alone', () => {
    const doc = editDesign(fullFile(), 'evidence[0].fields', ['windings[1].anchored', 'layers[12].turns']);
    expect(fields(removeAt(doc, 'windings', 0))).toEqual(['windings[0].anchored', 'layers[12].turns']);
    expect(fields(insertAt(doc, 'circuits', 0, { id: 'e', role: 'earth' }))).toBe(fields(doc));
  });

  it('should start a list that is not there', () => {
    const doc = editDesign(fullFile(), 'evidence', undefined);
    expect(insertAt(doc, 'evidence', 0, { id: 'e', kind: 'photo' }).evidence).toHaveLength(1);
  });

  it('should keep each piece of evidence on its own entry through any moves', () => {
    const marked = (doc: DesignFile) => fields(doc)?.map((path) => fieldAt(doc, path));
    const index = fc.nat({ max: 4 });
    fc.assert(
      fc.property(fc.array(fc.tuple(index, index), { maxLength: 8 }), (moves) => {
        const doc = fullFile();
        const after = moves.reduce((edited, [from, to]) => moveItem(edited, 'layers', from, to), doc);
        expect(marked(after)).toEqual(marked(doc));
        expect(new Set(after.layers)).toEqual(new Set(doc.layers));
      }),
      { seed: 7 },
    );
  });

  it('should refuse places that the list does not have, and what is no list', () => {
    const doc = fullFile();
    expect(() => insertAt(doc, 'layers', doc.layers.length + 1, turn)).toThrow(RangeError);
    expect(() => removeAt(doc, 'layers', doc.layers.length)).toThrow(RangeError);
    expect(() => removeAt(doc, 'layers', 0.5)).toThrow(RangeError);
    expect(() => moveItem(doc, 'layers', 0, doc.layers.length)).toThrow(RangeError);
    expect(() => removeAt(doc, 'former', 0)).toThrow(RangeError);
  });
});

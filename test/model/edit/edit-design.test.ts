import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { fullFile, plainFile } from '#test/model/sample-files.ts';

describe('editDesign', () => {
  it('should set a field and share all that did not change', () => {
    const doc = plainFile();
    const after = editDesign(doc, 'layers[0].turns', 61);
    expect(fieldAt(after, 'layers[0].turns')).toBe(61);
    expect(fieldAt(doc, 'layers[0].turns')).toBe(60);
    expect(after.layers[1]).toBe(doc.layers[1]);
    expect(after.former).toBe(doc.former);
  });

  it('should make the records above a field, in place of a text or null', () => {
    const after = editDesign(plainFile(), 'windings[0].leads.start.sleeve.wall', '0.4 mm');
    expect(after.windings[0]?.leads).toEqual({ start: { sleeve: { wall: '0.4 mm' } } });
    const judged = editDesign(
      editDesign(plainFile(), 'windings[0].leads', 'not-judged'),
      'windings[0].leads.start',
      'unknown',
    );
    expect(judged.windings[0]?.leads).toEqual({ start: 'unknown' });
  });

  it('should take a field out', () => {
    const after = editDesign(plainFile(), 'layers[0].margins.left', undefined);
    expect(after.layers[0]?.margins).toEqual({ right: { width: '3 mm' } });
    expect('left' in (after.layers[0]?.margins ?? {})).toBe(false);
  });

  it('should give back the very document where nothing changes', () => {
    const doc = plainFile();
    expect(editDesign(doc, 'layers[0].turns', 60)).toBe(doc);
    expect(editDesign(doc, 'core.wrap.plies', undefined)).toBe(doc);
  });

  it('should undo itself', () => {
    const paths = [
      'title',
      'layers[0].margins.left.width',
      'core.bond',
      'windings[1].wire.grade',
      'layers[1].plies',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.oneof(fc.string(), fc.integer()), (path, value) => {
        const doc = fullFile();
        expect(editDesign(editDesign(doc, path, value), path, fieldAt(doc, path))).toEqual(doc);
      }),
      { seed: 7 },
    );
  });

  it.each([
    '',
    '__proto__.x',
    'core.__proto__.x',
    'constructor.prototype',
    'layers[0].constructor',
    'a..b',
    'layers[x]',
  ])('should follow no path %j', (path) => {
    expect(() => editDesign(plainFile(), path, 1)).toThrow(RangeError);
    expect(() => fieldAt(plainFile(), path)).toThrow(RangeError);
  });

  it('should append to a list but leave no hole and take no entry out', () => {
    expect(editDesign(plainFile(), 'circuits[2]', { id: 'e', role: 'earth' }).circuits).toHaveLength(3);
    expect(() => editDesign(plainFile(), 'circuits[3]', {})).toThrow(RangeError);
    expect(() => editDesign(plainFile(), 'circuits[1]', undefined)).toThrow(RangeError);
  });

  it('should find no inherited field', () => {
    expect(fieldAt(plainFile(), 'title.length')).toBeUndefined();
    expect(fieldAt(plainFile(), 'core.toString')).toBeUndefined();
  });
});

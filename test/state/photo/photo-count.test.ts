import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { editDesign, fieldAt } from '#model/edit/edit-design.ts';
import { insertAt } from '#model/edit/edit-list.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { newWindingCameOff } from '#state/begin/taking-apart.ts';
import { besideTargets } from '#state/photo/beside-targets.ts';
import { PhotoDesk } from '#state/photo/photo-desk.svelte.ts';
import * as record from '#state/photo/photo-record.ts';
import { judging } from '#state/searches/judging.ts';

const PICTURE = 'data:image/jpeg;base64,AAAA';
const NOTE = { words: 'the coil', width: 1600, height: 1200, turned: 0, scale: null };
const wound = (): DesignFile => {
  const doc = { ...blankDesign(), evidence: [] };
  const [circuit] = doc.circuits;
  return newWindingCameOff(newWindingCameOff(doc, circuit!.id), circuit!.id);
};
const withPhoto = (doc: DesignFile): DesignFile => record.addPhoto(doc, PICTURE, NOTE)[0];

describe('turns counted on a photograph', () => {
  it('should be as many as are marked, a mark pressed again taken away, and go to their layer with evidence', () => {
    const editor = new Editor(withPhoto(wound()), judging());
    const photos = new PhotoDesk(editor);
    photos.tool = 'turns';
    for (const x of [10, 60, 110, 160]) photos.pick({ x, y: 50 }, 1);
    photos.pick({ x: 61, y: 51 }, 1);
    expect(photos.points.length).toBe(3);
    photos.sendCount(1);
    expect(fieldAt(editor.doc, 'layers[1].turns')).toBe(3);
    const entry = editor.doc.evidence?.at(-1);
    expect(entry).toMatchObject({ fields: ['layers[1].turns'], measured: { kind: 'count', value: 3 } });
    expect(entry?.measured?.points).toEqual([
      [10, 50],
      [110, 50],
      [160, 50],
    ]);
    expect(readDesign(editor.doc, knownIds).kind).toBe('design');
    editor.undo();
    expect(fieldAt(editor.doc, 'layers[1].turns')).not.toBe(3);
  });

  it('should keep the number of more turns than an entry has room to mark', () => {
    const points = Array.from({ length: 90 }, (_, i) => ({ x: 10 * i, y: 5 }));
    const doc = record.addCount(withPhoto(wound()), { photo: 'photo-1', points, path: 'layers[0].turns' });
    expect(fieldAt(doc, 'layers[0].turns')).toBe(90);
    expect(readDesign(doc, knownIds).kind).toBe('design');
  });
});

describe('fields beside the one that a measurement goes to', () => {
  const doc = [
    ['layers[0].margins.left.width', '3 mm'],
    ['layers[0].margins.right.width', '3 mm'],
    ['layers[1].margins.left.width', '3.05 mm'],
  ].reduce((edited, [path, width]) => editDesign(edited, path!, width), wound());
  const options = [
    'layers[0].margins.left.width',
    'layers[0].margins.right.width',
    'layers[1].margins.left.width',
  ].map((value) => ({ value, label: value }));

  it('should be of the same sort and side, ticked where they lie within the uncertainty', () => {
    const found = (plusMinus: number) =>
      besideTargets(doc, options, 'layers[0].margins.left.width', { value: 3, plusMinus });
    expect(found(0.05)).toEqual([
      expect.objectContaining({ path: 'layers[1].margins.left.width', reads: '3.05 mm', isWithin: true }),
    ]);
    expect(found(0.04)).toEqual([expect.objectContaining({ isWithin: false })]);
  });
});

describe('a photograph of a step', () => {
  it('should belong to its layer, and still when another comes off under it', () => {
    const [doc] = record.addPhoto(wound(), PICTURE, NOTE, ['layers[1]']);
    expect(record.photosAt(doc, 'layers[1]').map(({ id }) => id)).toEqual(['photo-1']);
    expect(record.photosAt(doc, 'layers[0]')).toEqual([]);
    expect(readDesign(doc, knownIds).kind).toBe('design');
    const deeper = record.photosAt(insertedUnder(doc), 'layers[2]');
    expect(deeper.map(({ id }) => id)).toEqual(['photo-1']);
  });
});

const insertedUnder = (doc: DesignFile): DesignFile =>
  insertAt(doc, 'layers', 0, { kind: 'tape', plies: 'unknown', plyThickness: 'unknown' });

import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { judging } from '#state/searches/judging.ts';
import { PhotoDesk } from '#state/photo/photo-desk.svelte.ts';
import { carried, gripAt } from '#state/photo/photo-grip.ts';
import * as record from '#state/photo/photo-record.ts';

const SCALE = { length: 10, plusMinus: 0.05, from: { x: 0, y: 0 }, to: { x: 1000, y: 0 }, half: 1 };
const NOTE = { words: 'the coil', width: 1600, height: 1200, turned: 0, scale: SCALE };

/** A distance of 300 px at y 100, sent to the height of the former. */
function measured(): { editor: Editor; photos: PhotoDesk } {
  const bare = { ...blankDesign(), evidence: [] };
  const [doc] = record.addPhoto(bare, 'data:image/jpeg;base64,AAAA', NOTE);
  const editor = new Editor(doc, judging());
  const photos = new PhotoDesk(editor);
  photos.tool = 'distance';
  photos.pick({ x: 100, y: 100 });
  photos.pick({ x: 400, y: 100 });
  photos.send(photos.measurements[0]!, 'former.height');
  return { editor, photos };
}

function move(photos: PhotoDesk, x: number, y: number, toX: number, toY: number): void {
  expect(photos.takeUp({ x, y }, 5)).toBe(true);
  photos.carry = { ...photos.carry!, to: { x: toX, y: toY } };
  photos.putDown(1);
}

describe('a point on a photograph', () => {
  it('should be taken up within reach, the nearest first', () => {
    const { photos } = measured();
    const { photo, measurements } = photos;
    const lying = { hand: [{ x: 103, y: 100 }], photo: photo!, measurements };
    expect(gripAt({ x: 101, y: 100 }, 5, lying)).toEqual({ of: { measurement: 'measure-1' }, at: 0 });
    expect(gripAt({ x: 102, y: 100 }, 5, lying)).toEqual({ of: 'hand', at: 0 });
    expect(gripAt({ x: 999, y: 2 }, 5, lying)).toEqual({ of: 'scale', at: 1 });
    expect(gripAt({ x: 700, y: 700 }, 5, lying)).toBeNull();
  });

  it('should be drawn where it is carried, all others where they lie', () => {
    const points = [SCALE.from, SCALE.to];
    const to = { x: 5, y: 5 };
    expect(carried(points, 'scale', { grip: { of: 'scale', at: 1 }, to })).toEqual([SCALE.from, to]);
    expect(carried(points, 'hand', { grip: { of: 'scale', at: 1 }, to })).toBe(points);
  });

  it('should bring its figure along, and the field that the figure was sent to, in one step', () => {
    const { editor, photos } = measured();
    expect(fieldAt(editor.doc, 'former.height')).toMatchObject({ value: '3 mm' });
    move(photos, 400, 100, 500, 100);
    expect(photos.measurements[0]!.note.found).toMatchObject({ value: 4 });
    expect(fieldAt(editor.doc, 'former.height')).toMatchObject({ value: '4 mm' });
    editor.undo();
    expect(fieldAt(editor.doc, 'former.height')).toMatchObject({ value: '3 mm' });
  });

  it('should bring the scale along with all that was measured by it', () => {
    const { editor, photos } = measured();
    move(photos, 1000, 0, 500, 0);
    expect(photos.photo!.note.scale!.to).toEqual({ x: 500, y: 0 });
    expect(fieldAt(editor.doc, 'former.height')).toMatchObject({ value: '6 mm' });
  });

  it('should stay where it was when it would leave no scale', () => {
    const { editor, photos } = measured();
    const { doc } = editor;
    move(photos, 1000, 0, 0, 0);
    expect(editor.doc).toBe(doc);
    expect(photos.says?.isWrong).toBe(true);
  });

  it('should be no finer known than it could be seen', () => {
    const { photos } = measured();
    expect(photos.takeUp({ x: 400, y: 100 }, 5)).toBe(true);
    photos.putDown(4);
    expect(photos.measurements[0]!.note.half).toBe(4);
  });
});

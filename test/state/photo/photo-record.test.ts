import { describe, expect, it } from 'vitest';
import { blankDesign } from '#model/begin/blank-design.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import { designText } from '#state/storage/files.ts';
import { judging } from '#state/searches/judging.ts';
import { openable } from '#state/storage/import-design.ts';
import { PhotoDesk } from '#state/photo/photo-desk.svelte.ts';
import * as record from '#state/photo/photo-record.ts';
import { photoTargets } from '#state/photo/photo-targets.ts';

const PICTURE = 'data:image/jpeg;base64,AAAA';
const SCALE = { length: 10, plusMinus: 0.05, from: { x: 0, y: 0 }, to: { x: 1000, y: 0 }, half: 1 };
const NOTE = { words: 'the coil', width: 1600, height: 1200, turned: 0, scale: null };

const withPhoto = (scale: typeof SCALE | null = null): DesignFile =>
  record.addPhoto({ ...blankDesign(), evidence: [] }, PICTURE, { ...NOTE, scale })[0];

function withDistance(doc: DesignFile, pixels: number): DesignFile {
  const points = [
    { x: 0, y: 0 },
    { x: pixels, y: 0 },
  ];
  const measured = { measure: 'distance' as const, points, half: 1 };
  const by = record.measuredBy(measured, record.photosOf(doc)[0]!.note);
  return record.addMeasurement(doc, { words: '', photo: 'photo-1', ...measured, ...by })[0];
}

const editorWith = (doc: DesignFile): Editor => new Editor(doc, judging());

describe('photographs in a build', () => {
  it('should send a length with its half-width to a field and stand behind it', () => {
    const doc = withDistance(withPhoto(SCALE), 300);
    const [measurement] = record.measurementsOf(doc);
    const sent = record.sendTo(doc, measurement!, 'former.chambers[0].width');
    // 10.05 mm over 998 px, 302 px: 3.0412; 9.95 over 1002, 298: 2.9591
    expect(fieldAt(sent, 'former.chambers[0].width')).toEqual({ value: '3 mm', plusMinus: '0.05 mm' });
    expect(record.measurementsOf(sent)[0]!.fields).toEqual(['former.chambers[0].width']);
    const read = readDesign(sent, knownIds);
    expect(read.kind === 'design' && read.design.evidence[1]!.fields).toEqual(['former.chambers[0].width']);
  });

  it('should keep its figures in fields of their own, and say in words only what it shows', () => {
    const doc = record.sendTo(
      withDistance(withPhoto(SCALE), 300),
      record.measurementsOf(withDistance(withPhoto(SCALE), 300))[0]!,
      'former.height',
    );
    expect(doc.evidence).toEqual([
      {
        id: 'photo-1',
        kind: 'photo',
        says: 'the coil',
        picture: {
          width: 1600,
          height: 1200,
          turned: 0,
          scale: {
            length: { value: '10 mm', plusMinus: '0.05 mm' },
            from: [0, 0],
            to: [1000, 0],
            picked: 1,
          },
        },
        fields: [],
        file: PICTURE,
      },
      {
        id: 'measure-1',
        kind: 'measurement',
        says: 'distance',
        measured: {
          photo: 'photo-1',
          kind: 'distance',
          points: [
            [0, 0],
            [300, 0],
          ],
          picked: 1,
          scale: 0.01,
          value: 3,
          plusMinus: 0.05,
        },
        fields: ['former.height'],
      },
    ]);
  });

  it('should read photographs and measurements whose figures an older file wrote into the words', () => {
    const evidence = [
      {
        id: 'photo-1',
        kind: 'photo' as const,
        says: 'the coil [1600 x 1200 px; turned 3.50 degrees; 10 mm ± 0.05 mm is from 0.00,0.00 to 1000.00,0.00, picked to 1 px]',
        file: PICTURE,
      },
      {
        id: 'measure-1',
        kind: 'measurement' as const,
        says: 'left margin [tape width 3 mm ± 0.042 mm on photo-1 at 1.00,2.00 3.00,4.00 5.00,6.00 7.00,8.50, picked to 1 px]',
        fields: ['former.height'],
      },
    ];
    const old: DesignFile = { ...blankDesign(), evidence };
    expect(readDesign(old, knownIds).kind).toBe('design');
    const [photo] = record.photosOf(old);
    expect(photo!.note).toEqual({ ...NOTE, turned: 3.5, scale: SCALE });
    const [measurement] = record.measurementsOf(old);
    expect(measurement!.note).toMatchObject({
      words: 'left margin',
      measure: 'tape width',
      found: { value: 3, plusMinus: 0.042 },
    });
    const renamed = record.changeWords(old, measurement!, 'right margin');
    expect(renamed.evidence![1]).toMatchObject({
      says: 'right margin',
      measured: { kind: 'distance', photo: 'photo-1', value: 3 },
    });
    expect(record.measurementsOf(renamed)[0]!.note).toEqual({ ...measurement!.note, words: 'right margin' });
  });

  it('should let only the newest measurement stand behind a field', () => {
    const doc = withDistance(withDistance(withPhoto(SCALE), 300), 310);
    const [first, second] = record.measurementsOf(doc);
    const sent = record.sendTo(record.sendTo(doc, first!, 'former.height'), second!, 'former.height');
    expect(record.measurementsOf(sent).map(({ fields }) => fields)).toEqual([[], ['former.height']]);
    expect(fieldAt(sent, 'former.height')).toMatchObject({ value: '3.1 mm' });
  });

  it('should send nothing without a scale, nor what may be nothing', () => {
    const bare = withDistance(withPhoto(), 300);
    expect(record.sendTo(bare, record.measurementsOf(bare)[0]!, 'former.height')).toBe(bare);
    const tiny = withDistance(withPhoto(SCALE), 1);
    expect(record.sendTo(tiny, record.measurementsOf(tiny)[0]!, 'former.height')).toBe(tiny);
  });

  it('should follow a new scale in measurements and in the fields that still say what was measured', () => {
    const doc = withDistance(withPhoto(SCALE), 300);
    const sent = record.sendTo(
      record.sendTo(doc, record.measurementsOf(doc)[0]!, 'former.height'),
      record.measurementsOf(doc)[0]!,
      'former.flange',
    );
    const own: DesignFile = { ...sent, former: { ...sent.former, flange: '0.9 mm' } };
    const [photo] = record.photosOf(own);
    const scaled = record.changePhoto(own, photo!, { ...photo!.note, scale: { ...SCALE, length: 20 } });
    expect(record.measurementsOf(scaled)[0]!.note.found!.value).toBe(6);
    expect(fieldAt(scaled, 'former.height')).toMatchObject({ value: '6 mm' });
    expect(fieldAt(scaled, 'former.flange')).toBe('0.9 mm');
  });

  it('should survive saving and opening', () => {
    const doc = withDistance(withPhoto(SCALE), 300);
    const sent = record.sendTo(doc, record.measurementsOf(doc)[0]!, 'former.height');
    const opened = openable(designText(sent));
    if (opened.kind !== 'build') throw new Error(opened.kind);
    expect(record.photosOf(opened.doc)).toEqual(record.photosOf(sent));
    expect(record.measurementsOf(opened.doc)).toEqual(record.measurementsOf(sent));
  });

  it('should take a photograph out with what was measured on it, and leave the fields', () => {
    const doc = withDistance(withPhoto(SCALE), 300);
    const sent = record.sendTo(doc, record.measurementsOf(doc)[0]!, 'former.height');
    const without = record.removePhoto(sent, record.photosOf(sent)[0]!);
    expect(without.evidence).toEqual([]);
    expect(fieldAt(without, 'former.height')).toMatchObject({ value: '3 mm' });
  });

  it('should leave only the pictures out of what goes into a link', () => {
    const doc = withDistance(withPhoto(SCALE), 300);
    const bare = record.withoutPictures(doc);
    expect(JSON.stringify(bare)).not.toContain('data:image');
    expect(record.measurementsOf(bare)).toEqual(record.measurementsOf(doc));
    expect(readDesign(bare, knownIds).kind).toBe('design');
  });

  it('should offer every length that the build has, by paths that the file takes', () => {
    const doc: DesignFile = {
      ...blankDesign(),
      windings: [
        {
          id: 'P',
          circuit: 'pri',
          wire: { kind: 'enamelled', conductor: '0.2 mm' },
          leads: { start: { at: 'left', sleeve: { wall: '0.4 mm', into: '3 mm' } }, finish: 'unknown' },
        },
      ],
      layers: [
        { kind: 'winding', winding: 'P', turns: 10 },
        { kind: 'tape', material: 'polyester-tape-25', plies: 2 },
        { kind: 'screen', thickness: '0.05 mm' },
      ],
    };
    const offered = photoTargets(doc, null, 'wire diameter').map(({ value }) => value);
    expect(offered.slice(0, 2)).toEqual(['windings[0].wire.conductor', 'windings[0].wire.overallDiameter']);
    const measured = withDistance({ ...doc, evidence: withPhoto(SCALE).evidence ?? [] }, 100);
    for (const path of offered) {
      const sent = record.sendTo(measured, record.measurementsOf(measured)[0]!, path);
      const read = readDesign(sent, knownIds);
      expect([path, read.kind === 'bad' ? read.faults[0]!.says : '']).toEqual([path, '']);
    }
  });
});

describe('the photographs on the desk', () => {
  it('should pick a scale, measure, send, and take each back as one step', () => {
    const editor = editorWith(withPhoto());
    const photos = new PhotoDesk(editor);
    photos.pick({ x: 0, y: 0 });
    photos.pick({ x: 1000, y: 0 });
    photos.knownLength = '10 mm';
    photos.knownError = '0,05 mm';
    photos.setScale();
    expect(photos.photo!.note.scale).toEqual(SCALE);
    photos.tool = 'wire diameter';
    for (const [x, y] of [
      [10, 100],
      [210, 100],
      [10, 150],
      [210, 150],
    ] as const)
      photos.pick({ x, y });
    const [wire] = photos.measurements;
    expect(wire!.note.found!.value).toBe(0.5);
    photos.send(wire!, 'former.flange');
    expect(fieldAt(editor.doc, 'former.flange')).toMatchObject({ value: '0.5 mm' });
    editor.undo();
    expect(fieldAt(editor.doc, 'former.flange')).toBe('unknown');
    expect(photos.measurements[0]!.fields).toEqual([]);
    editor.undo();
    expect(photos.measurements).toEqual([]);
    editor.undo();
    expect(photos.photo!.note.scale).toBeNull();
    editor.redo();
    expect(photos.photo!.note.scale).toEqual(SCALE);
  });

  it('should say why a scale or a width cannot be had, and change nothing', () => {
    const editor = editorWith(withPhoto());
    const photos = new PhotoDesk(editor);
    photos.setScale();
    expect(photos.says!.isWrong).toBe(true);
    photos.pick({ x: 0, y: 0 });
    photos.pick({ x: 1, y: 0 });
    photos.setScale();
    expect(photos.says!.text).toContain('farther apart');
    photos.knownLength = 'ten';
    photos.setScale();
    expect(photos.says!.text).toContain('such as 10 mm');
    photos.tool = 'tape width';
    for (const [x, y] of [
      [0, 0],
      [100, 0],
      [0, 50],
      [50, 100],
    ] as const)
      photos.pick({ x, y });
    expect(photos.says!.text).toContain('lean');
    expect(editor.undoes).toBeNull();
  });

  it('should take picking for no finer than what could be seen', () => {
    const editor = editorWith(withPhoto(SCALE));
    const photos = new PhotoDesk(editor);
    photos.tool = 'distance';
    photos.pick({ x: 0, y: 0 }, 3.21);
    photos.pick({ x: 300, y: 0 }, 0.2);
    photos.pick({ x: 0, y: 0 }, 0.2);
    photos.pick({ x: 300, y: 0 }, 0.2);
    expect(photos.measurements.map(({ note }) => note.half)).toEqual([3.3, 1]);
  });

  it('should turn a picked line level', () => {
    const editor = editorWith(withPhoto());
    const photos = new PhotoDesk(editor);
    photos.tool = 'level';
    photos.pick({ x: 0, y: 0 });
    photos.pick({ x: 100, y: 10 });
    expect(photos.photo!.note.turned).toBe(-5.71);
  });
});

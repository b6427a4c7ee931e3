import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MEASURES,
  measurementNoteText,
  pointsOf,
  readMeasurementNote,
} from '#model/measure/measurement-note.ts';
import { keptPoint } from '#model/measure/note-text.ts';
import { photoNoteText, readPhotoNote } from '#model/measure/photo-note.ts';

const SEED = { seed: 20260218, numRuns: 300 };
const coordinate = fc.double({ min: -50, max: 1700, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate }).map(keptPoint);
const figure = (most: number) => fc.integer({ min: 0, max: most * 1000 }).map((n) => n / 1000);
const words = fc.string({ maxLength: 60 }).map((text) => text.trim());

describe('notes of photographs and measurements', () => {
  it('should read back every photograph that they write, whatever the words say', () => {
    const scale = fc.record({
      length: figure(200),
      plusMinus: figure(2),
      from: point,
      to: point,
      half: figure(5),
    });
    const note = fc.record({
      words,
      width: fc.integer({ min: 1, max: 1600 }),
      height: fc.integer({ min: 1, max: 1600 }),
      turned: fc.integer({ min: -9000, max: 9000 }).map((n) => (n === 0 ? 0 : n / 100)),
      scale: fc.option(scale),
    });
    fc.assert(
      fc.property(note, (each) => {
        expect(readPhotoNote(photoNoteText(each))).toEqual(each);
      }),
      SEED,
    );
  });

  it('should read back every measurement that they write', () => {
    const note = fc.constantFrom(...MEASURES).chain((measure) =>
      fc.record({
        words,
        measure: fc.constant(measure),
        photo: fc.constantFrom('photo-1', 'a photo on a bench', 'P at 3'),
        points: fc.array(point, { minLength: pointsOf(measure), maxLength: pointsOf(measure) }),
        half: figure(5),
        found: fc.option(fc.record({ value: figure(180), plusMinus: figure(9) })),
      }),
    );
    fc.assert(
      fc.property(note, (each) => {
        expect(readMeasurementNote(measurementNoteText(each))).toEqual(each);
      }),
      SEED,
    );
  });

  it('should leave words alone that people wrote themselves', () => {
    for (const says of [
      '',
      'the left margin',
      'margin [3 mm]',
      '[distance 3 mm ± 1 mm on photo-1 at 1.00,2.00, picked to 1 px]',
    ]) {
      expect(readPhotoNote(says)).toBeNull();
      expect(readMeasurementNote(says)).toBeNull();
    }
  });

  it('should say in plain words what was measured', () => {
    const note = {
      words: 'left margin of the output',
      measure: 'distance' as const,
      photo: 'photo-1',
      points: [
        { x: 100, y: 20.5 },
        { x: 400, y: 20.5 },
      ],
      half: 1,
      found: { value: 3.02, plusMinus: 0.041 },
    };
    expect(measurementNoteText(note)).toBe(
      'left margin of the output [distance 3.02 mm ± 0.041 mm on photo-1 at 100.00,20.50 400.00,20.50, picked to 1 px]',
    );
  });
});

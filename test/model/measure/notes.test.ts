// Photographs and measurements as entries of `evidence`: what is written is read back, and is what the format takes.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MEASURES, measurementFields, pointsOf, readMeasurement } from '#model/measure/measurement-note.ts';
import { keptPoint } from '#model/measure/note-text.ts';
import { photoFields, readPhoto } from '#model/measure/photo-note.ts';
import { figuresOf } from '#model/read/build-evidence.ts';

const SEED = { seed: 20260218, numRuns: 300 };
const coordinate = fc.double({ min: -50, max: 1700, noNaN: true });
const point = fc.record({ x: coordinate, y: coordinate }).map(keptPoint);
const figure = (most: number, least = 0) => fc.integer({ min: least, max: most * 1000 }).map((n) => n / 1000);
const words = fc.string({ maxLength: 60 }).map((text) => text.trim());

describe('photographs and measurements in a file', () => {
  it('should read back every photograph that they write, whatever the words say', () => {
    const scale = fc.record({
      length: figure(200, 2000),
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
        const kept = { id: 'photo-1', kind: 'photo' as const, ...photoFields(each) };
        expect(readPhoto({ says: kept.says, picture: figuresOf(kept).picture })).toEqual(each);
      }),
      SEED,
    );
  });

  it('should read back every measurement that they write', () => {
    const note = fc.constantFrom(...MEASURES).chain((measure) =>
      fc.record({
        words,
        measure: fc.constant(measure),
        photo: fc.constantFrom('photo-1', 'photo-22'),
        points: fc.array(point, { minLength: pointsOf(measure), maxLength: pointsOf(measure) }),
        half: figure(5),
        scale: fc.option(figure(1)),
        found: fc.option(fc.record({ value: figure(180), plusMinus: figure(9) })),
      }),
    );
    fc.assert(
      fc.property(note, (each) => {
        const kept = { id: 'measure-1', kind: 'measurement' as const, ...measurementFields(each) };
        expect(readMeasurement({ says: kept.says, measured: figuresOf(kept).measured })).toEqual(each);
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
      expect(readPhoto({ says, picture: null })).toBeNull();
      expect(readMeasurement({ says, measured: null })).toBeNull();
    }
  });

  it('should take no measurement for its own that was made otherwise', () => {
    const measured = { photo: null, kind: 'distance', points: [], picked: null, scale: null } as const;
    const found = { value: 3, plusMinus: 0.1 };
    expect(readMeasurement({ says: 'caliper', measured: { ...measured, found } })).toBeNull();
    const counted = { ...measured, photo: 'photo-1', kind: 'count', found } as const;
    expect(readMeasurement({ says: 'plies', measured: counted })).toBeNull();
  });
});

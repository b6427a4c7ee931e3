import { describe, expect, it } from 'vitest';
import type { MeasurementNote } from '#model/measure/measurement-note.ts';
import type { PhotoNote } from '#model/measure/photo-note.ts';
import { measuredBy } from '#state/photo/photo-record.ts';
import { trustParts } from '#state/photo/trust-parts.ts';

/** 10 mm +- 0.02 over 1000 px, picked to 1 px: 100 px to the millimetre. */
const photo: PhotoNote = {
  words: 'the coil',
  width: 1600,
  height: 1200,
  turned: 0,
  scale: { length: 10, plusMinus: 0.02, from: { x: 0, y: 0 }, to: { x: 1000, y: 0 }, half: 1 },
};

function note(measure: 'distance' | 'angle'): MeasurementNote {
  const points = [
    { x: 0, y: 0 },
    { x: 300, y: 0 },
    { x: 300, y: 300 },
  ];
  const measured = { measure, points: measure === 'angle' ? points : points.slice(0, 2), half: 1.5 };
  return { photo: 'P', words: '', ...measured, ...measuredBy(measured, photo) };
}

describe('how far a measured figure is to be trusted', () => {
  it('should be what its edges bring and what the scale adds', () => {
    const parts = trustParts(note('distance'))!;
    expect(parts.perMm).toBeCloseTo(100, 3);
    // two edges of 1.5 px at 100 px to the millimetre
    expect(parts.pixels).toBeCloseTo(3, 6);
    expect(parts.edges).toBeCloseTo(0.03, 6);
    // 3 mm of a scale known to 0.02 of 10 and 2 of 1000 px: about 0.012; 0.042 in all is told rounded up, as 0.05
    expect(parts.whole).toBeCloseTo(0.05, 9);
    expect(parts.scale).toBeCloseTo(0.02, 9);
    expect(parts.edges + parts.scale).toBeCloseTo(parts.whole, 9);
  });

  it('should not be told in millimetres of an angle', () => {
    expect(trustParts(note('angle'))).toBeNull();
  });
});

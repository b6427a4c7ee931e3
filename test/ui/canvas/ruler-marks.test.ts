import { describe, expect, it } from 'vitest';
import { multiples, rulerMarks } from '#ui/canvas/ruler-marks.ts';

describe('rulerMarks', () => {
  it('should count whole millimetres with tenths between them at a working scale', () => {
    expect(rulerMarks(0, 12, 66.7, 26)).toMatchObject({ step: 1, fine: 0.1, numbers: 1 });
  });

  it('should leave out what would run together', () => {
    expect(rulerMarks(0, 12, 22, 26)).toMatchObject({ step: 1, fine: 0.2, numbers: 2 });
    expect(rulerMarks(0, 300, 2, 26)).toMatchObject({ step: 5, fine: null, numbers: 20 });
  });

  it('should number tenths only in a close view', () => {
    expect(rulerMarks(0, 3, 400, 26).numbers).toBe(0.1);
    expect(rulerMarks(0, 3, 140, 26).numbers).toBe(1);
  });
});

describe('multiples', () => {
  it('should begin and end inside the ruler', () => {
    expect(multiples(0.1, 0.25, 0.61)).toEqual([0.3, 0.4, 0.5, 0.6]);
    expect(multiples(1, 0, 3)).toEqual([0, 1, 2, 3]);
    expect(multiples(1, 0.2, 0.8)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { nextMeasurement } from '#judge/decide/next-measurement.ts';
import type { Assumption } from '#judge/verdict/verdict.ts';

const unknown = (field: string, decides: boolean, atBest: Assumption['atBest']): Assumption => ({
  field,
  between: null,
  counted: { as: 'worse-end' },
  decides,
  figure: null,
  atBest,
  kind: 'unknown',
});

describe('next measurement', () => {
  it('should name the one that leads farthest, and the easier one among equals', () => {
    const open = [
      unknown('layers[1].plyWithstand', true, 'meets'),
      unknown('layers[0].margins.left.width', true, 'meets'),
      unknown('core.bond', true, 'not-shown'),
    ];
    expect(nextMeasurement(open, 'not-shown')).toEqual({
      field: 'layers[0].margins.left.width',
      between: null,
      atBest: 'meets',
      together: [],
    });
    expect(nextMeasurement(open.slice(2), 'falls-short')!.atBest).toBe('not-shown');
  });

  it('should name what must be known together where none alone changes anything', () => {
    const open = [
      unknown('layers[0].margins.left.width', true, 'not-shown'),
      unknown('layers[0].margins.right.width', true, 'not-shown'),
      unknown('core.bond', false, 'not-shown'),
    ];
    expect(nextMeasurement(open, 'not-shown')).toEqual({
      field: 'layers[0].margins.left.width',
      between: null,
      atBest: null,
      together: [expect.objectContaining({ field: 'layers[0].margins.right.width' })],
    });
  });

  it('should name none where nothing open decides', () => {
    expect(nextMeasurement([unknown('core.bond', false, 'meets')], 'meets')).toBeNull();
    expect(
      nextMeasurement([{ ...unknown('supply.tolerance', true, null), kind: 'default' }], 'meets'),
    ).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';

import { coilFormerById, coilFormers } from '#standards/materials/coil-formers.ts';
import { inMm } from '#units/quantity.ts';

describe('coil formers', () => {
  it('should hold the one former whose drawing was seen, its flange from memory', () => {
    const former = coilFormerById('EFD15');
    expect(former && inMm(former.width.value)).toBe(8.85);
    expect(former?.width.cite.confirmed).toBe('published');
    expect(former?.flange.cite.confirmed).toBe('memory');
    expect(coilFormerById('no-such')).toBeNull();
  });

  it('should have a winding area near width times height in every row', () => {
    for (const { id, width, height } of coilFormers) {
      const area = inMm(width.value) * inMm(height.value);
      expect(area, id).toBeGreaterThan(10);
      expect(area, id).toBeLessThan(100);
    }
  });
});

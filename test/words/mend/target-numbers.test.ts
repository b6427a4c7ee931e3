import { describe, expect, it } from 'vitest';
import type { DesignFile } from '#model/schema/schema.ts';
import { targetNumbers } from '#words/mend/target-numbers.ts';
import greenhouse from '#demos/greenhouse-timer.json' with { type: 'json' };

const doc = greenhouse as unknown as DesignFile;

describe('the figures on the drawing of a mend', () => {
  it('should stand at the edge that moves, at the layer that gets plies, at every layer of a wire', () => {
    const wire = { kind: 'layer-insulated', insulationLayers: 3 };
    const told = targetNumbers(
      [
        { field: 'layers[2].margins.left.width', from: 1.65, to: 2.45 },
        { field: 'layers[1].plies', from: 3, to: 16 },
        { field: 'windings[0].wire', from: {}, to: wire },
        { field: 'layers[4]', from: null, to: { kind: 'tape' } },
      ],
      doc,
    );
    expect(told).toEqual([
      { layer: 2, isNew: false, side: 'left', says: '2.45' },
      { layer: 1, isNew: false, side: null, says: '3 → 16 plies' },
      { layer: 0, isNew: false, side: null, says: 'wire with 3 insulation layers' },
      { layer: 4, isNew: true, side: null, says: 'new' },
    ]);
  });

  it('should tell nothing of what the plain section does not show', () => {
    expect(
      targetNumbers([{ field: 'windings[1].leads.finish.sleeve.into', from: 2, to: 2.45 }], doc),
    ).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { applyEdits } from '#state/fields/edit.ts';
import { ahead } from '#ui/canvas/handles/pending-handles.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';
import { judgedDemo, sectionOf } from '#test/ui/canvas/judged-demo.ts';

const MARGIN = 'layers[2].margins.left.width';

describe('ahead', () => {
  const before = judgedDemo('greenhouse-timer');
  const handles = handlesOf(before.design, sectionOf(before));
  const shownAt = (value: unknown) =>
    ahead(handles, before.doc, applyEdits(before.doc, [{ path: MARGIN, value }]));
  const margin = (all: typeof handles) => all.find(({ id }) => id === MARGIN)!;

  it('should stand where the edge will stand once it is judged', () => {
    for (const value of ['2.2 mm', '.1"', { value: '2 mm', plusMinus: '0.1 mm' }]) {
      const after = judgedDemo('greenhouse-timer', [{ path: MARGIN, value }]);
      const { at, value: length, plusMinus } = margin(handlesOf(after.design, sectionOf(after)));
      expect(margin(shownAt(value))).toMatchObject({ at, value: length, plusMinus });
    }
  });

  it('should leave every other edge, and one whose figure cannot be read or is not known', () => {
    expect(shownAt('2.2 mm').filter((handle, i) => handle !== handles[i])).toHaveLength(1);
    for (const value of ['2 kg', 'unknown', undefined]) expect(shownAt(value)).toEqual(handles);
  });

  it('should leave all as it is where the drawing is of what is shown', () => {
    expect(ahead(handles, before.doc, before.doc)).toBe(handles);
  });
});

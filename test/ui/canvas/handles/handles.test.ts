import { describe, expect, it } from 'vitest';
import { applyEdits } from '#state/fields/edit.ts';
import { editsOf, limited, LONGEST, positionOf, valueAt } from '#ui/canvas/handles/handle.ts';
import { handlesOf } from '#ui/canvas/handles/handles.ts';
import { mm, nm } from '#units/quantity.ts';
import {
  demoIds,
  faultsOf,
  handleOf,
  judgedDemo,
  sectionOf,
  sketchedDoc,
} from '#test/ui/canvas/judged-demo.ts';

const TIMER = 'greenhouse-timer';
const idsOf = (id: string, section = 'plain', edits = {}): readonly string[] => {
  const judged = judgedDemo(
    id,
    Object.entries(edits).map(([path, value]) => ({ path, value })),
  );
  return handlesOf(judged.design, sectionOf(judged, section)).map((handle) => handle.id);
};

describe('handlesOf', () => {
  it('should give every edge with a size a handle, in the order of the list', () => {
    expect(idsOf(TIMER)).toEqual([
      'core.outerGap',
      'layers[5].inset.right',
      'layers[5].inset.left',
      'layers[4].margins.right.width',
      'layers[4].margins.left.width',
      'layers[3].inset.right',
      'layers[3].inset.left',
      'layers[2].margins.right.width',
      'layers[2].margins.left.width',
      'layers[1].inset.right',
      'layers[1].inset.left',
      'layers[0].margins.right.width',
      'layers[0].margins.left.width',
      'former.height',
      'former.chambers[0].width',
      'former.wall',
      'former.flange',
      'former.flange right',
    ]);
  });

  it('should stand where the file puts the edge', () => {
    const judged = judgedDemo(TIMER);
    expect(handleOf(judged, 'layers[2].margins.left.width').at).toBe(mm(1.65));
    expect(handleOf(judged, 'layers[3].inset.right').at).toBe(mm(12 - 0.4));
    expect(handleOf(judged, 'former.wall').at).toBe(mm(-0.8));
    expect(handleOf(judged, 'core.outerGap').at).toBe(mm(4.2 + 0.4));
  });

  it('should hold a measured winding by its two ends instead of its margins', () => {
    const ids = idsOf(TIMER, 'plain', { 'layers[2].extent': { from: '2 mm', to: '9 mm' } });
    expect(ids).toContain('layers[2].extent.from');
    expect(ids).toContain('layers[2].extent.to');
    // its block of 1.65 mm ends before the winding and keeps a handle; the right one of 3 mm ends at the winding
    expect(ids).toContain('layers[2].margins.left.width');
    expect(ids).not.toContain('layers[2].margins.right.width');
  });

  it('should hold a sleeve by its inner end where its lead is laid in', () => {
    const judged = judgedDemo(TIMER);
    const handle = handleOf(judged, 'windings[1].leads.finish.sleeve.into', 'lead S finish');
    expect(handle.at).toBe(mm(12 - 2));
    expect(handle.value).toBe(mm(2));
    expect(idsOf(TIMER)).not.toContain('windings[1].leads.finish.sleeve.into');
  });

  it('should not offer an edge that slumping has moved', () => {
    const judged = judgedDemo(TIMER);
    const pushed = judged.judgement.sections.find(({ slumped }) => slumped === 'right');
    expect(pushed).toBeDefined();
    expect(idsOf(TIMER, pushed?.name)).not.toContain('layers[3].inset.right');
  });

  it('should give each chamber and each divider a handle', () => {
    const ids = demoIds.flatMap((id) => idsOf(id));
    expect(ids).toContain('former.chambers[1].width');
    expect(ids).toContain('former.dividers[0]');
  });

  it('should keep the half-width of a measured figure, cut to the value', () => {
    const judged = judgedDemo(TIMER, [
      { path: 'layers[2].margins.left.width', value: { value: '1.65 mm', plusMinus: '0.2 mm' } },
    ]);
    const handle = handleOf(judged, 'layers[2].margins.left.width');
    expect(editsOf(handle, mm(2))[0]?.value).toEqual({ value: '2 mm', plusMinus: '0.2 mm' });
    expect(editsOf(handle, mm(0.1))[0]?.value).toEqual({ value: '0.1 mm', plusMinus: '0.1 mm' });
  });

  it('should say that a margin nobody knows is unknown', () => {
    const judged = judgedDemo(TIMER, [{ path: 'layers[2].margins.left.width', value: 'unknown' }]);
    const handle = handleOf(judged, 'layers[2].margins.left.width');
    expect(handle).toMatchObject({ isUnknown: true, value: 0, at: 0 });
  });
});

describe.each(demoIds)('handles of %s', (id) => {
  it('should turn position into value and back', () => {
    const judged = judgedDemo(id);
    for (const section of judged.judgement.sections)
      for (const handle of handlesOf(judged.design, section))
        expect(valueAt(handle, positionOf(handle, handle.value))).toBe(handle.value);
  });

  it('should have one handle to a name', () => {
    const judged = judgedDemo(id);
    for (const section of judged.judgement.sections) {
      const names = handlesOf(judged.design, section).map((handle) => handle.id);
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('should stand on the plain section alike, whether it is judged or sketched', () => {
    const judged = judgedDemo(id);
    const sketched = sketchedDoc(judged.doc);
    expect(handlesOf(sketched.design, sectionOf(sketched))).toEqual(
      handlesOf(judged.design, sectionOf(judged)),
    );
  });

  it('should put the edge where it was dragged', () => {
    const judged = judgedDemo(id);
    for (const handle of handlesOf(judged.design, sectionOf(judged))) {
      const value = limited(handle, nm(handle.value + mm(0.15)));
      const after = sketchedDoc(applyEdits(judged.doc, editsOf(handle, value)));
      expect(handleOf(after, handle.id), handle.id).toMatchObject({ value, at: positionOf(handle, value) });
    }
  });

  it('should stay within what a design file may say, at both ends of its reach', () => {
    const judged = judgedDemo(id);
    for (const handle of handlesOf(judged.design, sectionOf(judged))) {
      const most = handle.most === LONGEST ? nm(handle.value + mm(5)) : handle.most;
      for (const value of [handle.least, most])
        expect(faultsOf(applyEdits(judged.doc, editsOf(handle, value))), `${handle.id} ${value}`).toEqual([]);
    }
  });
});

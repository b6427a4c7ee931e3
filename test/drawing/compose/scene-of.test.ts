import { describe, expect, it } from 'vitest';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import type { Design } from '#model/design.ts';
import { unknown } from '#model/quantity/reading.ts';
import { greenhouse, greenhouseDesign } from '#test/papers/greenhouse.ts';

const scene = (section: string, choices = {}) => {
  const found = sceneOf(greenhouseDesign(), greenhouse, section, choices);
  if (found === null) throw new Error(`no section ${section}`);
  return found;
};

function withFormer(former: Partial<Design['former']>): Design {
  const design = greenhouseDesign();
  return { ...design, former: { ...design.former, ...former } };
}

describe('sceneOf', () => {
  it('should know no section of another name', () => {
    expect(sceneOf(greenhouseDesign(), greenhouse, 'elsewhere')).toBeNull();
  });

  it('should draw every turn of the file once', () => {
    expect(scene('plain').turns.length).toBe(100 + 20 + 11);
  });

  it('should draw each ply as a band of its own', () => {
    expect(scene('plain').areas.filter(({ kind }) => kind === 'ply').length).toBe(9);
  });

  it('should draw tube and flanges as one figure without joints', () => {
    const former = scene('plain').areas.filter(({ kind }) => kind === 'former');
    expect(former.length).toBe(1);
    expect(former[0]?.loops.length).toBe(1);
    expect(former[0]?.loops[0]?.length).toBe(8);
  });

  it('should draw the core as a frame with one opening', () => {
    const core = scene('plain').areas.find(({ kind }) => kind === 'core');
    expect(core?.loops.map((loop) => loop.length)).toEqual([4, 4]);
  });

  it('should draw a lead at its wire and shade what the worst case counts round it', () => {
    const { areas, notes } = scene('lead S finish');
    const high = (kind: string) => {
      const { bounds } = areas.find((area) => area.kind === kind)!;
      return bounds.y1 - bounds.y0;
    };
    expect(high('lead')).toBeCloseTo(0.65, 6);
    // the sleeve does not reach the winding: the wire and both its walls of 0.30 mm count as bare
    expect(high('counted')).toBeCloseTo(0.65 + 2 * 0.3, 6);
    expect(areas.find(({ kind }) => kind === 'lead')?.bounds.x1).toBe(12);
    expect(notes.map(({ text }) => text)).toContain('shaded: counted as bare wire');
    expect(scene('plain').areas.filter(({ kind }) => kind === 'counted')).toEqual([]);
  });

  it('should tell as unknown what nobody knew, and nothing else', () => {
    const known = sceneOf(withFormer({ material: 'phenolic' }), greenhouse, 'plain');
    expect([known?.unknowns, known?.areas.filter(({ isUnknown }) => isUnknown)]).toEqual([[], []]);
    const nothing = { wall: unknown, flange: unknown, material: unknown };
    const found = sceneOf(withFormer(nothing), greenhouse, 'plain');
    expect(found?.unknowns.map(({ text }) => text)).toEqual([
      'wall of the tube unknown: counted as none',
      'flanges unknown: counted as none',
    ]);
    expect(found?.areas.find(({ kind }) => kind === 'former')?.isUnknown).toBe(true);
  });

  it('should draw a former of unknown thickness as a dashed band outside the window, not as none', () => {
    const nothing = withFormer({ wall: unknown, flange: unknown, material: unknown });
    const found = sceneOf(nothing, greenhouse, 'plain');
    const { isUnknown, bounds } = found!.areas.find(({ id }) => id === 'former of no measured thickness')!;
    expect([isUnknown, bounds.x0 < 0, bounds.x1 > 12, bounds.y0 < 0, bounds.y1]).toEqual([
      true,
      true,
      true,
      true,
      4.2,
    ]);
    expect(bounds.x0).toBeGreaterThanOrEqual(found!.frame.x0);
  });

  it('should keep everything inside the frame', () => {
    for (const { name } of greenhouse.sections) {
      const { frame, areas, turns, flags } = scene(name);
      for (const { bounds } of areas) {
        expect(bounds.x0).toBeGreaterThanOrEqual(frame.x0);
        expect(bounds.x1).toBeLessThanOrEqual(frame.x1);
        expect(bounds.y0).toBeGreaterThanOrEqual(frame.y0);
        expect(bounds.y1).toBeLessThanOrEqual(frame.y1);
      }
      for (const { x, overall } of turns) expect(Math.abs(x) + overall).toBeLessThan(frame.x1 - frame.x0);
      for (const { at } of flags) expect(at[0]).toBeLessThanOrEqual(frame.x1);
    }
  });

  it('should keep the turns of a layer inside their hull', () => {
    const { areas, turns } = scene('plain');
    for (const { x, y, overall, layer } of turns) {
      const hull = areas.find((area) => area.kind === 'turns' && area.layer === layer)?.bounds;
      expect(x - overall / 2).toBeGreaterThanOrEqual((hull?.x0 ?? 99) - 1e-6);
      expect(x + overall / 2).toBeLessThanOrEqual((hull?.x1 ?? -99) + 1e-6);
      expect(y + overall / 2).toBeLessThanOrEqual((hull?.y1 ?? -99) + 1e-6);
    }
  });

  it('should fill the flags of this section and leave the others hollow', () => {
    expect(scene('plain').flags.map(({ number, here }) => [number, here])).toEqual([
      [1, true],
      [2, false],
      [3, false],
    ]);
    expect(scene('plain', { elsewhere: 0 }).flags.map(({ number }) => number)).toEqual([1]);
  });

  it('should draw a path on its own section only', () => {
    expect(scene('plain').path?.length).toBe(4.83);
    expect(scene('slumped right').path).toBeNull();
  });

  it('should say which section is drawn', () => {
    expect(scene('plain').says).toBe('no lead in it, nothing slumped');
    expect(scene('lead S finish').says).toBe('S finish, nothing slumped');
  });
});

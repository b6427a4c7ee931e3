// How bands stack: blocks lower and higher, leads that lift, leads that cross back.

import { describe, expect, it } from 'vitest';
import { placedBuild } from '#solver/section/placement.ts';
import { type StackBand, stackOf, topOf } from '#solver/stack/stack.ts';
import type { Build, Lay } from '#solver/section/build.ts';
import { inMm, mm } from '#units/quantity.ts';
import { lay, made, margin, sleeve, tape, winding } from '#test/solver/made-build.ts';

const heights = (bands: readonly StackBand[]) =>
  bands.map((band) => [band.kind, inMm(band.y0), inMm(band.y1)]);

const withLead = (change: Partial<Lay>, layers: Build['layers'] = [winding('P'), tape(2)]) =>
  stackOf(placedBuild(made(layers)), 0, [lay('P', 0, change)]);

const leadOf = (bands: readonly StackBand[]) => {
  const lead = bands.flatMap((band) => (band.kind !== 'cross-tape' && band.lead ? [band.lead] : []))[0]!;
  return { y: [inMm(lead.y0), inMm(lead.y1)], lifts: lead.lifts };
};

describe('stack', () => {
  it('should stack layers outward without voids', () => {
    const bands = stackOf(placedBuild(made([winding('P'), tape(2), winding('S', { turns: 25 })])), 0, []);
    expect(heights(bands)).toEqual([
      ['layer', 0, 0.5],
      ['layer', 0.5, 0.7],
      ['layer', 0.7, 1.7],
    ]);
    expect(topOf(bands)).toBe(mm(1.7));
  });

  it.each([
    ['lifts what lies above when higher', 0.8, 0.8],
    ['leaves air above when lower', 0.3, 0.5],
  ])('should know that a block %s', (_, height, top) => {
    const layer = winding('P', { margins: { left: margin(3, true, height), right: margin(3) } });
    expect(heights(stackOf(placedBuild(made([layer, tape(1)])), 0, []))).toEqual([
      ['layer', 0, top],
      ['layer', top, Number((top + 0.1).toFixed(1))],
    ]);
  });

  it('should stack every chamber on its own', () => {
    const build = made([winding('P'), winding('S', { chamber: 1, turns: 25 }), tape(1)], {
      chambers: [mm(10), mm(10)],
      dividers: [mm(1)],
    });
    expect(topOf(stackOf(placedBuild(build), 0, []))).toBe(mm(0.6));
    expect(topOf(stackOf(placedBuild(build), 1, []))).toBe(mm(1));
  });

  it('should lay a lead on the outer face of its band', () => {
    const twoRows = [winding('P', { turns: 25 }), tape(2)];
    const bands = withLead({}, twoRows);
    expect(heights(bands)).toEqual([
      ['layer', 0, 1],
      ['layer', 1, 1.2],
    ]);
    expect(leadOf(bands)).toEqual({ y: [0.5, 1], lifts: false });
  });

  it('should lift what lies above by the excess of a sleeved lead: 0.5 + 2 x 0.2 over 0.5', () => {
    const bands = withLead({ sleeve: sleeve(0.2, 3) });
    expect(heights(bands)).toEqual([
      ['layer', 0, 0.9],
      ['layer', 0.9, 1.1],
    ]);
    expect(leadOf(bands)).toEqual({ y: [0, 0.9], lifts: true });
  });

  it('should give a lead that crosses back a band of its own', () => {
    const bands = withLead({ exit: 'right' });
    expect(heights(bands)).toEqual([
      ['layer', 0, 0.5],
      ['crossing-lead', 0.5, 1],
      ['layer', 1, 1.2],
    ]);
  });

  it('should lay plies of the next tape under it', () => {
    const bands = withLead({ exit: 'right', crossTape: 2 });
    expect(heights(bands)).toEqual([
      ['layer', 0, 0.5],
      ['cross-tape', 0.5, 0.7],
      ['crossing-lead', 0.7, 1.2],
      ['layer', 1.2, 1.4],
    ]);
  });

  it('should lay nothing under it where no tape follows', () => {
    const kinds = stackOf(placedBuild(made([tape(1), winding('P')])), 0, [
      lay('P', 1, { exit: 'right', crossTape: 2 }),
    ]).map(({ kind }) => kind);
    expect(kinds).toEqual(['layer', 'layer', 'crossing-lead']);
  });
});

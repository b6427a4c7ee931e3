// Where handling takes ends and tapes: loose ends stretch until they meet something, narrow tapes go left and right.

import { describe, expect, it } from 'vitest';
import type { Build, BuildWindingLayer, Lay } from '#solver/section/build.ts';
import { sectionsOf } from '#solver/section/lay-out.ts';
import type { Section } from '#solver/section/section.ts';
import { mm, nm } from '#units/quantity.ts';
import {
  allCorners,
  cornersOf,
  lay,
  LEAST,
  made,
  margin,
  margins,
  tape,
  winding,
  wire,
} from '#test/solver/made-build.ts';

const drawn = (layers: Build['layers'], lays: readonly Lay[] = []) =>
  sectionsOf(made(layers, { lays }), { leastThickness: LEAST });

const wound = (section: Section | undefined) =>
  allCorners(section!.regions, (r) => r.kind === 'conductor' && r.of === 'winding');

const slumpedOf = (change: Partial<BuildWindingLayer>) =>
  wound(drawn([winding('P', change), tape(1)]).find(({ slumped }) => slumped !== null));

describe('slumped sections', () => {
  it('should leave out a slumped section that equals its own', () => {
    expect(drawn([winding('P'), tape(1)]).map(({ name }) => name)).toEqual(['plain']);
    expect(drawn([winding('P', { margins: margins(3) }), tape(1)])).toHaveLength(1);
    expect(drawn([winding('P'), tape(1, { margins: margins(3) })])).toHaveLength(1);
  });

  it.each<[string, Partial<BuildWindingLayer>, readonly number[]]>([
    ['both ends through empty margins to the flanges', { margins: margins(3, 3, false) }, [0, 0, 10, 0.5]],
    [
      'one end where a block holds the other',
      { margins: { left: margin(3), right: margin(3, false) } },
      [3, 0, 10, 0.5],
    ],
    ['no end that is anchored', { margins: margins(3, 3, false), anchored: true }, [3, 0, 7, 0.5]],
    [
      'no end of covered wire',
      { margins: margins(3, 3, false), wire: wire(0.5, { slumps: false }) },
      [3, 0, 7, 0.5],
    ],
    [
      'an end a full diameter from the flange, not one that is nearer',
      { extent: { from: mm(0.499), to: mm(9.5) } },
      [0.499, 0, 10, 0.5],
    ],
    ['an end up to a block that it does not touch', { spread: false, margins: margins(2) }, [2, 0, 8, 0.5]],
  ])('should stretch %s', (_, change, corners) => {
    expect(slumpedOf(change)).toEqual([corners]);
  });

  it('should stretch an end beside its own lead under that lead only', () => {
    const layers = [winding('P', { margins: margins(3, 3, false), turns: 16 }), tape(1)];
    const section = drawn(layers, [lay('P', 0)]).find(({ name }) => name === 'lead P start, slumped');
    expect(wound(section)).toEqual([
      [3, 0, 10, 1],
      [0, 0, 3, 0.5],
    ]);
  });

  it('should push a narrow tape left and right, all plies together, keeping its width', () => {
    const inset = { left: mm(1), right: mm(2) };
    const sections = drawn([winding('P'), tape(2, { inset })]);
    const plies = sections.map((section) => allCorners(section.regions, (r) => r.kind === 'ply'));
    expect(sections.map(({ name }) => name)).toEqual(['plain', 'slumped left', 'slumped right']);
    expect(plies.map((all) => all.map(([x0, , x1]) => [x0, x1]))).toEqual([
      [
        [1, 8],
        [1, 8],
      ],
      [
        [0, 7],
        [0, 7],
      ],
      [
        [3, 10],
        [3, 10],
      ],
    ]);
  });

  it('should stop a tape at a block', () => {
    const inset = { left: mm(1), right: nm(0) };
    const sections = drawn([winding('P'), tape(1, { margins: margins(2), inset })]);
    expect(sections.map((s) => cornersOf(s.regions.find((r) => r.kind === 'ply')!)[0])).toEqual([3, 2, 3]);
  });

  it('should let the tape sag into the void of a winding band, over the whole chamber', () => {
    const [plain, slumped] = drawn([
      winding('P', { margins: margins(3, 3, false), anchored: true }),
      tape(1),
    ]);
    expect(plain!.sagging).toEqual([]);
    expect(slumped!.sagging.map(cornersOf)).toEqual([[0, 0, 10, 0.5]]);
  });
});

// Where handling takes ends and tapes: loose ends stretch until they meet something, narrow tapes go left and right.

import { describe, expect, it } from 'vitest';
import type { Build, BuildWindingLayer, Lay } from '#solver/section/build.ts';
import { sectionsMovedAlone, sectionsOf } from '#solver/placing/lay-out.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm, mm, nm } from '#units/quantity.ts';
import {
  allCorners,
  cornersOf,
  lay,
  LEAST,
  made,
  margin,
  margins,
  screen,
  tape,
  winding,
  wire,
} from '#test/solver/made-build.ts';

const drawn = (layers: Build['layers'], lays: readonly Lay[] = []) =>
  sectionsOf(made(layers, { lays }), { leastThickness: LEAST });

const wound = (section: Section | undefined) =>
  allCorners(section!.regions, (r) => r.kind === 'conductor' && r.of === 'winding');

/** Filled margins of 3 mm with blocks of a height of their own. */
const lowMargins = (height: number) => ({
  left: margin(3, true, height),
  right: margin(3, true, height),
});

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
      'no end of wire that does not slump',
      { margins: margins(3, 3, false), wire: wire(0.5, { slumps: false }) },
      [3, 0, 7, 0.5],
    ],
    ['through a gap however small', { extent: { from: nm(1), to: mm(9.5) } }, [0, 0, 10, 0.5]],
    [
      'an end beside a block that is lower than the middle of its row, over it',
      { margins: { left: margin(3, true, 0.249999), right: margin(3, true, 0.25) } },
      [3, 0, 7, 0.5],
    ],
    ['an end beside a block of no height', { margins: lowMargins(0) }, [0, 0, 10, 0.5]],
    ['an end up to a block that it does not touch', { spread: false, margins: margins(2) }, [2, 0, 8, 0.5]],
  ])('should stretch %s', (_, change, corners) => {
    expect(slumpedOf(change)[0]).toEqual(corners);
  });

  it('should stretch an end beside its own lead under that lead only', () => {
    const layers = [winding('P', { margins: margins(3, 3, false), turns: 16 }), tape(1)];
    const section = drawn(layers, [lay('P', 0)]).find(({ name }) => name === 'lead P start, slumped');
    expect(wound(section)).toEqual([
      [3, 0, 10, 1],
      [0, 0, 3, 0.5],
    ]);
  });

  it.each([
    ['a film holds no row', 0.01, [0.01, 1.5]],
    ['half a row holds the first, and the others go over it where they lie', 0.25, [0.5, 1.5]],
    ['a block higher than the first row lifts what goes over it', 0.7, [0.7, 1.5]],
    ['the middle of the second row reached holds two', 0.75, [1, 1.5]],
  ])('should stretch the rows above a lower block over it: %s', (_, height, [bottom, top]) => {
    const rows = slumpedOf({ margins: lowMargins(height), turns: 24 });
    expect(rows).toEqual([
      [3, 0, 7, 1.5],
      [0, bottom, 3, top],
      [7, bottom, 10, top],
    ]);
  });

  it('should hold every row where a lower block reaches the middle of the top row', () => {
    expect(drawn([winding('P', { margins: lowMargins(1.25), turns: 24 }), tape(1)])).toHaveLength(2);
    expect(slumpedOf({ margins: lowMargins(1.25), turns: 24 })).toEqual([[3, 0, 7, 1.5]]);
  });

  it('should stretch covered wire in its cover, its metal running on', () => {
    const covered = wire(0.5, { cover: { thickness: mm(0.1), plies: 2, stuff: 3 } });
    const [, slumped] = drawn([
      winding('P', { margins: lowMargins(0.25), turns: 16, wire: covered }),
      tape(1),
    ]);
    expect(allCorners(slumped!.regions, (r) => r.kind === 'wireCover')).toEqual([
      [3, 0, 7, 1],
      [0, 0.5, 3, 1],
      [7, 0.5, 10, 1],
    ]);
    expect(wound(slumped)).toEqual([
      [3.1, 0.1, 6.9, 0.9],
      [0.1, 0.6, 2.9, 0.9],
      [2.9, 0.6, 3.1, 0.9],
      [7.1, 0.6, 9.9, 0.9],
      [6.9, 0.6, 7.1, 0.9],
    ]);
  });

  it('should push a screen left and right as a tape, with its lead', () => {
    const layers = [screen({ circuit: 'P', inset: { left: mm(2), right: mm(1) } }), tape(2), winding('S')];
    const foil = wire(0.05, { bare: true, slumps: false });
    const sections = drawn(layers, [lay('P', 0, { kind: 'screen-lead', wire: foil })]);
    const ends = (of: string) =>
      sections.map((s) => allCorners(s.regions, (r) => r.kind === 'conductor' && r.of === of));
    expect(sections.map(({ name }) => name)).toEqual([
      'plain',
      'slumped left',
      'slumped right',
      'lead P start',
      'lead P start, slumped left',
      'lead P start, slumped right',
    ]);
    expect(ends('screen').map(([one]) => [one![0], one![2]])).toEqual([
      ...[2, 0, 3].map((x) => [x, x + 7]),
      ...[2, 0, 3].map((x) => [x, x + 7]),
    ]);
    expect(ends('screen-lead').slice(3)).toEqual([[[0, 0, 2, 0.05]], [], [[0, 0, 3, 0.05]]]);
  });

  it("should take a screen's lead along that crosses back over it", () => {
    const layers = [screen({ circuit: 'P', inset: { left: mm(2), right: mm(1) } }), tape(2), winding('S')];
    const foil = wire(0.05, { bare: true, slumps: false });
    const sections = drawn(layers, [lay('P', 0, { kind: 'screen-lead', wire: foil, exit: 'right' })]);
    const starts = sections.slice(3).map((section) => {
      const [lead] = allCorners(section.regions, (r) => r.kind === 'conductor' && r.of === 'screen-lead');
      return lead![0];
    });
    expect(starts).toEqual([2, 0, 3]);
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

  it('should not stop a tape at a block of no height', () => {
    const none = { left: margin(2, true, 0), right: margin(2, true, 0) };
    const sections = drawn([winding('P'), tape(1, { margins: none })]);
    expect(sections.map((s) => cornersOf(s.regions.find((r) => r.kind === 'ply')!)[0])).toEqual([2, 0, 4]);
    expect(sections.flatMap((s) => allCorners(s.regions, (r) => r.kind === 'block'))).toEqual([]);
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

describe('sections in which a pair has moved alone', () => {
  const loose = margins(3, 3, false);
  const alone = (layers: Build['layers'], circuits: readonly string[]) =>
    sectionsMovedAlone(made(layers), circuits, { leastThickness: LEAST });

  it('should leave what belongs to another circuit as it was drawn', () => {
    const layers = [
      winding('P', { margins: loose }),
      screen({ circuit: 'E', inset: { left: mm(1), right: mm(1) } }),
      screen({ inset: { left: mm(1), right: mm(1) } }),
      tape(1, { inset: { left: mm(2), right: mm(2) } }),
      winding('E', { margins: loose }),
      winding('S', { margins: loose }),
    ];
    const [left, right] = alone(layers, ['P', 'S']);
    expect(left!.name).toBe('slumped left, only P and S moved');
    expect(left!.bands.map(({ x0, x1 }) => [x0, x1].map(inMm))).toEqual([
      [0, 10],
      [1, 9],
      [0, 8],
      [0, 6],
      [3, 7],
      [0, 10],
    ]);
    expect(right!.bands.map(({ x0 }) => inMm(x0))).toEqual([0, 1, 2, 4, 3, 0]);
    expect(left!.sagging.map((r) => inMm(r.y0))).toHaveLength(3);
  });

  it('should be none where nothing of another circuit is loose', () => {
    const held = winding('E', { margins: margins(3) });
    expect(alone([winding('P', { margins: loose }), held, winding('S')], ['P', 'S'])).toEqual([]);
    expect(alone([winding('P', { margins: loose }), held, winding('S')], ['E', 'S'])).toHaveLength(1);
  });
});

describe('windings side by side', () => {
  const beside = (change: Partial<BuildWindingLayer> = {}) => [
    winding('P', { extent: { from: nm(0), to: mm(3) } }),
    winding('S', { beside: true, extent: { from: mm(7), to: mm(10) }, ...change }),
    tape(1),
  ];

  it('should let either loose end go to the other, as it is pushed', () => {
    const sections = drawn(beside());
    expect(sections.map(({ name }) => name)).toEqual(['plain', 'slumped left', 'slumped right']);
    const spans = sections.map((section) => wound(section).map(([x0, , x1]) => [x0, x1]));
    expect(spans).toEqual([
      [
        [0, 3],
        [7, 10],
      ],
      [
        [0, 3],
        [3, 10],
      ],
      [
        [0, 7],
        [7, 10],
      ],
    ]);
  });

  it('should stop a loose end at the winding beside it that is held', () => {
    const [, slumped] = drawn(beside({ anchored: true }));
    expect(slumped!.name).toBe('slumped');
    expect(wound(slumped).map(([x0, , x1]) => [x0, x1])).toEqual([
      [0, 7],
      [7, 10],
    ]);
  });

  it('should hold both ends by a block that fills the gap between them', () => {
    const sections = drawn(beside({ margins: margins(7, 0) }));
    expect(sections).toHaveLength(1);
    expect(allCorners(sections[0]!.regions, (r) => r.kind === 'block')).toEqual([[3, 0, 7, 0.5]]);
  });
});

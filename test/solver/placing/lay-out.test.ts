// Regions of every kind of lead: slot, riser, sleeve, link, screen lead, two leads, divider; the core and its frame.
// Two rows of 0.5 mm between margins of 3 mm stand under two plies and a row from flange to flange.

import { describe, expect, it } from 'vitest';
import type { Build, Lay } from '#solver/section/build.ts';
import { sectionsOf } from '#solver/placing/lay-out.ts';
import type { Section } from '#solver/section/section.ts';
import { inMm, mm } from '#units/quantity.ts';
import {
  allCorners,
  cornersOf,
  lay,
  LEAST,
  made,
  margins,
  screen,
  sleeve,
  strongCover,
  tape,
  winding,
  wire,
} from '#test/solver/made-build.ts';

const LAYERS = [winding('P', { margins: margins(3), turns: 16 }), tape(2), winding('S')];

const namesOf = (lays: readonly Lay[]) =>
  sectionsOf(made(LAYERS, { lays }), { leastThickness: LEAST }).flatMap((section) =>
    section.slumped === null ? [section.name] : [],
  );

function sectionWith(change: Partial<Lay>, layers: Build['layers'] = LAYERS, former: Partial<Build> = {}) {
  const build = made(layers, { lays: [lay('P', 0, change)], ...former });
  return sectionsOf(build, { leastThickness: LEAST }).find(({ name }) => name === 'lead P start')!;
}

const lead = (section: Section, of: Lay['kind'] = 'lead') =>
  allCorners(section.regions, (r) => r.kind === 'conductor' && r.of === of);

const kindOf = (section: Section, kind: string) => allCorners(section.regions, (r) => r.kind === kind);

/** Left ends of the plies and of the windings, by layer. */
const leftEnds = (section: Section) => section.bands.map((band) => inMm(band.x0));

describe('lay-out of leads', () => {
  it('should lay a bare lead on the outer face of its band and take its height from the block', () => {
    const section = sectionWith({});
    expect(lead(section)).toEqual([[0, 0.5, 3, 1]]);
    expect(kindOf(section, 'block')).toEqual([
      [0, 0, 3, 0.5],
      [7, 0, 10, 1],
    ]);
    expect(leftEnds(section)).toEqual([3, 0, 0]);
  });

  it('should keep the cover of a covered wire on its lead', () => {
    const section = sectionWith({ wire: wire(0.5, { cover: strongCover }) });
    expect(kindOf(section, 'wireCover')).toEqual([[0, 0.5, 3, 1]]);
    expect(lead(section)).toEqual([[0.1, 0.6, 2.9, 0.9]]);
  });

  it('should show bare lead as high as the sleeve where the sleeve is shorter than the margin', () => {
    const section = sectionWith({ sleeve: sleeve(0.2, 2) });
    expect(kindOf(section, 'sleeve')).toEqual([[0, 0.1, 2, 1]]);
    expect(lead(section)).toEqual([
      [2, 0.1, 3, 1],
      [0.2, 0.3, 2, 0.8],
    ]);
    const stripped = section.regions.filter((r) => r.kind === 'conductor' && r.strippedLead);
    expect(stripped.map(cornersOf)).toEqual([[2, 0.1, 3, 1]]);
  });

  it('should keep the cover of a covered wire under its sleeve, as far as the sleeve reaches and beyond', () => {
    // 0.5 mm and two walls of 0.2 mm in a band of 1 mm
    const section = sectionWith({ wire: wire(0.5, { cover: strongCover }), sleeve: sleeve(0.2, 3) });
    expect(kindOf(section, 'sleeve')).toEqual([[0, 0.1, 3, 1]]);
    expect(kindOf(section, 'wireCover')).toEqual([[0.2, 0.3, 3, 0.8]]);
    expect(lead(section)).toEqual([[0.3, 0.4, 2.9, 0.7]]);
    const short = sectionWith({ wire: wire(0.5, { cover: strongCover }), sleeve: sleeve(0.2, 2) });
    expect(kindOf(short, 'wireCover')).toEqual([
      [2, 0.1, 3, 1],
      [0.2, 0.3, 2, 0.8],
    ]);
  });

  it('should keep the cover of a riser under its sleeve', () => {
    const thin = { ...strongCover, plies: 1 };
    const section = sectionWith({
      way: 'riser',
      wire: wire(0.5, { cover: thin }),
      sleeve: sleeve(0.2, 3),
    });
    expect(kindOf(section, 'sleeve')).toContainEqual([0, 0.1, 0.9, 5]);
    expect(kindOf(section, 'wireCover')).toContainEqual([0.2, 0.3, 0.7, 4.8]);
    // the run in the band and the column, the metal of both closed in at the flange
    expect(lead(section).map(([x0]) => x0)).toEqual([0.3, 0.3]);
  });

  it('should end a sleeve flush with the winding where it is longer than the margin', () => {
    const section = sectionWith({ sleeve: sleeve(0.2, 5) });
    expect(kindOf(section, 'sleeve')).toEqual([[0, 0.1, 3, 1]]);
    expect(lead(section)).toEqual([[0.2, 0.3, 3, 0.8]]);
  });

  it('should stand a lead higher than its band on the floor, without a block beside it', () => {
    const section = sectionWith({ sleeve: sleeve(0.4, 3) });
    expect(kindOf(section, 'sleeve')).toEqual([[0, 0, 3, 1.3]]);
    expect(kindOf(section, 'block')).toEqual([[7, 0, 10, 1]]);
    expect(section.bands.map((band) => inMm(band.y0))).toEqual([0, 1.3, 1.5]);
  });

  it('should carry a lead back over its own winding', () => {
    const section = sectionWith({ exit: 'right', crossTape: 1 });
    expect(lead(section)).toEqual([[3, 1.1, 10, 1.6]]);
    expect(section.bands.map(({ kind }) => kind)).toEqual([
      'winding',
      'tape',
      'crossing-lead',
      'tape',
      'winding',
    ]);
    expect(kindOf(section, 'ply')[0]).toEqual([0, 1, 10, 1.1]);
  });

  it('should lay the lead of a bonded screen like any other', () => {
    const layers = [screen({ circuit: 'P', margins: margins(2, 2, false) }), tape(2), winding('S')];
    const section = sectionWith({ kind: 'screen-lead', wire: wire(0.05, { bare: true }) }, layers);
    expect(lead(section, 'screen-lead')).toEqual([[0, 0, 2, 0.05]]);
  });
});

describe('lay-out of risers', () => {
  it('should end every layer further out at a bare riser, which climbs to the rim', () => {
    const section = sectionWith({ way: 'riser' });
    expect(lead(section)).toEqual([
      [0, 0.5, 3, 1],
      [0, 0.5, 0.5, 5],
    ]);
    expect(leftEnds(section)).toEqual([3, 0.5, 0.5]);
  });

  it('should climb to the top of a stack that is higher than the rim', () => {
    expect(lead(sectionWith({ way: 'riser' }, LAYERS, { height: mm(1) }))[1]).toEqual([0, 0.5, 0.5, 1.7]);
  });

  it('should begin on top of its winding where there is no room beside it', () => {
    const layers = [winding('P'), tape(2), winding('S')];
    expect(lead(sectionWith({ way: 'riser' }, layers))).toEqual([[0, 0.5, 0.5, 5]]);
  });

  it('should displace under a thin sleeve as a bare riser does', () => {
    const section = sectionWith({ way: 'riser', sleeve: sleeve(0.2, 3) });
    expect(kindOf(section, 'sleeve')).toContainEqual([0, 0.1, 0.9, 5]);
    expect(lead(section)).toContainEqual([0.2, 0.3, 0.7, 4.8]);
    expect(leftEnds(section)).toEqual([3, 0.9, 0.9]);
  });

  it('should leave a riser bare that the sleeve does not reach', () => {
    const section = sectionWith({ way: 'riser', sleeve: sleeve(0.2, 0.89) });
    expect(kindOf(section, 'sleeve')).toEqual([]);
    expect(lead(section)).toContainEqual([0, 0.1, 0.9, 5]);
  });

  it.each([
    ['sleeve', { sleeve: sleeve(0.4, 3) }],
    ['cover', { wire: wire(0.5, { cover: strongCover }) }],
  ])('should leave other layers as long as they were under a strong %s', (_, change) => {
    expect(leftEnds(sectionWith({ way: 'riser', ...change }))).toEqual([3, 0, 0]);
  });

  it('should take a link from the inner to the outer layer only', () => {
    const part = winding('P', { margins: margins(3) });
    const section = sectionWith({ way: 'riser', kind: 'link', upTo: 2 }, [
      part,
      tape(1),
      part,
      tape(1),
      winding('S'),
    ]);
    expect(lead(section, 'link')).toContainEqual([0, 0, 0.5, 1.1]);
    expect(leftEnds(section)).toEqual([3, 0.5, 3, 0, 0]);
  });

  it('should climb in the neighbour chamber where a lead goes through a divider', () => {
    const beyond = [winding('S', { chamber: 1 }), tape(1, { chamber: 1 })];
    const section = sectionWith({ at: 'right', exit: 'right' }, [...LAYERS.slice(0, 2), ...beyond], {
      chambers: [mm(10), mm(10)],
      dividers: [mm(1)],
    });
    expect(lead(section)).toEqual([
      [7, 0.5, 10, 1],
      [11, 0.5, 11.5, 5],
    ]);
    // the row under the hole stays, the tape above it ends at the lead
    expect(leftEnds(section)).toEqual([3, 0, 11, 11.5]);
  });
});

describe('lay-out of sections', () => {
  const two = [lay('P', 0), lay('S', 2)];

  it('should give each lead a section, and one to two leads at the same side', () => {
    expect(namesOf(two)).toEqual(['plain', 'lead P start', 'lead S start', 'leads P start + S start']);
  });

  it.each([
    ['at two sides', { at: 'right', exit: 'right' }],
    ['of one circuit', { circuit: 'P' }],
    ['that are alternatives', { group: 'P start' }],
    ['with a distance stated', { apart: mm(8) }],
  ] as const)('should not lay in together two leads %s', (_, change) => {
    expect(namesOf([two[0]!, { ...two[1]!, ...change }])).toHaveLength(3);
  });

  it('should put the later of two risers behind the first', () => {
    const inner = lay('P', 0, { way: 'riser' });
    const outer = lay('S', 2, { way: 'riser' });
    const build = made([...LAYERS, tape(1)], { lays: [inner, outer] });
    const sections = sectionsOf(build, { leastThickness: LEAST });
    const both = sections.find(({ lays }) => lays.length === 2)!;
    expect(lead(both)).toContainEqual([0, 0.5, 0.5, 5]);
    expect(lead(both)).toContainEqual([0.5, 1.7, 1, 5]);
    expect(leftEnds(both)).toEqual([3, 0.5, 0.5, 1]);
  });

  it('should close the core on four sides, and under the tube only where a lead leaves', () => {
    const [plain, withLead] = sectionsOf(made(LAYERS, { lays: [lay('P', 0)] }), { leastThickness: LEAST });
    const cores = (section: Section) =>
      allCorners(section.regions, (r) => r.kind === 'conductor' && r.of === 'core');
    expect(cores(plain!)).toHaveLength(4);
    expect(cornersOf(plain!.frame)).toEqual([-1, -1, 11, 5.5]);
    expect(cores(withLead!)).toHaveLength(1);
    expect(cornersOf(withLead!.frame)).toEqual([-1, -1, 11, 5]);
    expect(withLead!.coreAbove).toBeNull();
  });

  it('should lift the core over a stack that is higher than the former: 1.7 + 0.5', () => {
    const [plain] = sectionsOf(made(LAYERS, { height: mm(1) }), { leastThickness: LEAST });
    expect(plain!.coreAbove).toBe(mm(2.2));
  });

  it('should open the seams of a split former only', () => {
    const bodies = (split: boolean) => {
      const [plain] = sectionsOf(made(LAYERS, { split }), { leastThickness: LEAST });
      return new Set(plain!.regions.flatMap((r) => (r.kind === 'moulding' ? [r.body] : []))).size;
    };
    expect([bodies(false), bodies(true)]).toEqual([1, 3]);
  });
});

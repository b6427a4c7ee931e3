// The wire of a winding: overall diameter, and what of its cover counts.

import { plainly, type CountedAs } from '#judge/verdict/assumed.ts';
import { because, type Because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import {
  fullyInsulatedBreakdown,
  fullyInsulatedWire,
  insulatedWireOverall,
  litzOverall,
  roundWire,
} from '#standards/materials/materials.ts';
import { isOutOfRange } from '#standards/tables/out-of-range.ts';
import type { Design } from '#model/design.ts';
import type { Winding, Wire } from '#model/design/winding.ts';
import type { BuildCover, BuildWire } from '#solver/section/build.ts';
import { UNKNOWN_WIRE } from '#model/unknown-counts.ts';
import { inMm, nm, voltsPeak, voltsRms, type Nm } from '#units/quantity.ts';
import { isBest } from '#judge/assume/assumption.ts';
import type { Counted, Filling } from '#judge/assume/fill-context.ts';
import { peakOf } from '#judge/fill/solids/fill-solid.ts';
import type { Solid } from '#books/questions/solid.ts';

/** A cover that is certified and strong, where nothing of it is known and all is taken at its best. */
const CERTIFIED = 3;

export function fillWire(
  filling: Filling,
  book: Book,
  design: Design,
  winding: Winding,
  field: string,
): BuildWire & { readonly because: Because } {
  const { wire } = winding;
  const overall = overallOf(filling, wire, field);
  const plain = {
    overall: overall.value,
    metal: metalOf(wire, overall.value),
    cover: null,
    bare: wire.kind === 'bare',
    slumps: true,
  };
  if (typeof wire.kind !== 'string') {
    const roomy = filling.room(`${field}.kind`, winding.circuit, plainly('enamelled')) === 'best';
    if (!roomy) return { ...plain, because: overall.because };
    const cover = isBest(filling.choice, `${field}.kind`)
      ? certified(filling, book, winding, field, overall.value, CERTIFIED)
      : passable(filling, wire, winding, overall.value);
    return { ...plain, cover, slumps: slumps(cover), because: overall.because };
  }
  switch (wire.kind) {
    case 'bare':
    case 'enamelled':
    case 'litz':
      return { ...plain, because: overall.because };
    case 'layer-insulated': {
      const layers = layersOf(filling, design, winding, field);
      const cover = layers === null ? null : certified(filling, book, winding, field, overall.value, layers);
      return { ...plain, cover, slumps: slumps(cover), because: overall.because };
    }
    case 'fully-insulated':
      return { ...fullCover(filling, book, wire, winding, overall.value, field), because: overall.because };
  }
}

/** As others find it that pass by: a cover that shuts no way, however long the way in it, and of which nothing is shown. */
function passable(filling: Filling, wire: Wire, winding: Winding, overall: Nm): BuildCover {
  const why = because('full-cover', { winding: winding.id, grade: null, breakdown: null, peak: null });
  const stuff = filling.stuffs.id(coverStuff('full-cover', winding, null, null, why), winding.id);
  return { thickness: coverThickness(overall, wire), plies: 1, stuff };
}

/** Certified layers that count; null where the cover earns nothing. */
function layersOf(
  filling: Filling,
  design: Design,
  { wire, circuit }: Winding,
  field: string,
): 1 | 2 | 3 | null {
  const earns = (key: string): boolean =>
    filling.room(`${field}.${key}`, circuit, plainly('cover-earns-nothing')) === 'best';
  let approved = wire.approval === 'wire-annex';
  if (typeof wire.approval !== 'string') {
    const proposed = wire.approval.leftOut && design.origin !== 'dissected';
    approved = proposed ? filling.taken(`${field}.approval`, plainly('certified')) : earns('approval');
  }
  if (typeof wire.insulationLayers === 'number') return approved ? wire.insulationLayers : null;
  const best = earns('insulationLayers');
  // one layer leaves others the most room to pass
  const most = isBest(filling.choice, `${field}.insulationLayers`) ? CERTIFIED : 1;
  return approved && best ? most : null;
}

function certified(
  filling: Filling,
  book: Book,
  winding: Winding,
  field: string,
  overall: Nm,
  layers: 1 | 2 | 3,
): BuildCover {
  const { wire } = winding;
  const rule = book.wireLayers(layers);
  const shown = book.coverShown(layers);
  const { withstand } = wire;
  const stated = withstand.kind !== 'unknown';
  const standsUpTo = (as: CountedAs, kind: Counted['kind']): boolean =>
    filling.unknown(`${field}.withstand`, as, kind) === 'best';
  // three layers are strong, and what is stated of them is what has been shown: above it nothing is known
  const isTaken = stated
    ? layers === CERTIFIED && standsUpTo({ as: 'stated-test', peak: peakOf(withstand) }, 'seldom-stated')
    : standsUpTo(
        shown.value === null ? plainly('no-strength') : { as: 'type-test', peak: shown.value },
        'house-rule',
      );
  const strength = isTaken ? 'whatever' : stated ? peakOf(withstand) : shown.value;
  const why = because('wire-cover', { winding: winding.id, layers }, [], [rule.because, shown.because]);
  const cover = coverStuff('cover', winding, strength, layers, why);
  const perMm = isTaken ? Infinity : book.shownPerMm(null).value;
  const stuff = filling.stuffs.id({ ...cover, stated, perMm }, winding.id);
  return { thickness: coverThickness(overall, wire), plies: layers === 3 ? null : layers, stuff };
}

function fullCover(
  filling: Filling,
  book: Book,
  wire: Wire,
  winding: Winding,
  overall: Nm,
  field: string,
): BuildWire {
  const grade = typeof wire.grade === 'number' ? wire.grade : null;
  const best =
    grade === null && filling.unknown(`${field}.grade`, { as: 'lowest-grade', grade: 3 }) === 'best';
  const conductor = sizeOf(wire) ?? overall;
  const listed = fullyInsulatedWire(conductor, (grade ?? 3) as 3);
  const least = isOutOfRange(listed) ? fullyInsulatedBreakdown(conductor, overall) : listed;
  const breakdown = isOutOfRange(least)
    ? null
    : typeof least.value === 'number'
      ? least.value
      : least.value.leastBreakdown;
  const share = book.filmShare;
  const peak = breakdown === null ? null : voltsPeak(voltsRms(breakdown * share.value) * Math.SQRT2);
  const why = because(
    'full-cover',
    { winding: winding.id, grade, breakdown, peak },
    [],
    [least.because, share.because],
  );
  const strength = best ? 'whatever' : peak;
  const stuff = filling.stuffs.id(coverStuff('full-cover', winding, strength, null, why), winding.id);
  return {
    overall,
    metal: metalOf(wire, overall),
    cover: { thickness: coverThickness(overall, wire), plies: 1, stuff },
    bare: false,
    slumps: true,
  };
}

/** Ends of any wire slump but for one with a certified cover of three layers. */
const slumps = (cover: BuildCover | null): boolean => cover === null || cover.plies !== null;

const coverStuff = (
  kind: 'cover' | 'full-cover',
  winding: Winding,
  strength: Solid['strength'],
  layers: Solid['layers'],
  why: Because,
): Solid => ({
  perMm: 0,
  material: null,
  solid: nm(0),
  kind,
  alike: winding.id,
  group: 'IIIb',
  strength,
  stated: false,
  thickness: nm(0),
  bonded: null,
  layers,
  because: why,
});

/** Null where the conductor is not known. */
const sizeOf = ({ conductor }: Wire): Nm | null => (conductor?.kind === 'known' ? conductor.value : null);

function metalOf(wire: Wire, overall: Nm): Nm | null {
  const conductor = sizeOf(wire);
  return wire.kind === 'litz' || conductor === null || conductor > overall ? null : conductor;
}

/** Half the growth of the diameter; a quarter of the whole where the conductor is not known or not smaller. */
function coverThickness(overall: Nm, wire: Wire): Nm {
  const conductor = sizeOf(wire) ?? 0;
  const growth = conductor > 0 && conductor < overall ? overall - conductor : overall / 2;
  return nm(Math.max(1, Math.floor(growth / 2)));
}

function overallOf(
  filling: Filling,
  wire: Wire,
  field: string,
): { readonly value: Nm; readonly because: Because } {
  if (wire.overallDiameter) {
    return { value: wire.overallDiameter.value, because: because('stated-diameter', { field }) };
  }
  const conductor = sizeOf(wire);
  if (conductor === null) {
    filling.unknown(`${field}.conductor`, { as: 'overall', mm: inMm(UNKNOWN_WIRE) });
    return {
      value: UNKNOWN_WIRE,
      because: because('unknown-diameter', { field, value: inMm(UNKNOWN_WIRE) }),
    };
  }
  const kind = typeof wire.kind === 'string' ? wire.kind : 'enamelled';
  if (kind === 'bare') return { value: conductor, because: because('bare-wire', { field }) };
  if (kind === 'layer-insulated') return insulatedWireOverall(conductor);
  const grade = gradeOf(filling, wire, field, kind === 'fully-insulated' ? 3 : 1);
  const found =
    kind === 'fully-insulated'
      ? fullyInsulatedWire(conductor, grade as 3)
      : kind === 'litz'
        ? litzOverall(conductor, grade as 1, wire.litzStrands ?? 1, wire.served ? 'single' : 'none')
        : roundWire(conductor, grade as 1);
  if (isOutOfRange(found)) {
    // beyond the tables: enamel of a tenth of the diameter, which the file should state
    filling.unknown(`${field}.overallDiameter`, plainly('tenth-more'));
    return { value: nm(Math.round(conductor * 1.1)), because: found.because };
  }
  return {
    value: typeof found.value === 'number' ? found.value : found.value.overall,
    because: found.because,
  };
}

function gradeOf(filling: Filling, wire: Wire, field: string, lowest: number): number {
  if (typeof wire.grade === 'number') return wire.grade;
  filling.unknown(`${field}.grade`, { as: 'grade', grade: lowest });
  return lowest;
}

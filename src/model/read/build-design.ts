// From the read file to the design: every default filled in, those that can shape the verdict listed in `defaulted`.

import { hertz, metres, voltsRms, type VoltsRms } from '#units/quantity.ts';
import type { Design } from '#model/design.ts';
import type { Bridge, Outside } from '#model/design/outside.ts';
import type { Core, Former } from '#model/design/former.ts';
import type { GivenVoltage, WorkingVoltage } from '#model/design/voltages.ts';
import type { OvervoltageCategory, PollutionDegree } from '#units/terms.ts';
import { buildConverter, inPart } from './build-converter.ts';
import { buildEvidence } from './build-evidence.ts';
import { buildLayer } from './build-layer.ts';
import { buildSheet, buildWall, orOpen } from './build-solid.ts';
import { buildWinding } from './build-winding.ts';
import { known, leftOut, type Known } from '#model/quantity/reading.ts';
import type { FileRead } from '#model/schema/schema.ts';

const TOLERANCE = 0.1;
const FREQUENCY = known(hertz(50));
const CATEGORY = 2;
const POLLUTION = 2;
const ALTITUDE = known(metres(2000));

export const buildDesign = (read: FileRead): Design => ({
  format: read.format,
  title: read.title,
  origin: read.origin,
  made: read.made ?? null,
  notes: read.notes ?? '',
  rules: read.rules,
  supply: buildSupply(read.supply),
  surroundings: buildSurroundings(read.surroundings),
  converter: buildConverter(read.converter),
  workingVoltages: (read.workingVoltages ?? []).map(buildWorkingVoltage),
  circuits: read.circuits.map(({ id, name = id, role, means = 'unknown' }) => ({
    id,
    name,
    role,
    means: means === 'unknown' ? null : means,
  })),
  former: buildFormer(read.former),
  core: buildCore(read.core),
  parts: (read.parts ?? []).map(({ id, bond = 'floating', touches = [] }) => ({ id, bond, touches })),
  windings: read.windings.map((winding) => buildWinding(winding, read.layers)),
  layers: read.layers.map(buildLayer),
  outside: (read.outside ?? []).map(buildOutside),
  bridges: (read.bridges ?? []).map(buildBridge),
  evidence: (read.evidence ?? []).map(buildEvidence),
  confirmed: (read.confirmed ?? []).map(({ value = null, ...cell }) => ({ ...cell, value })),
  unopened: read.unopened ?? false,
  defaulted: defaultedIn(read),
});

const buildSupply = (read: FileRead['supply']): Design['supply'] => ({
  kind: read.kind,
  voltage: highestOf(read.voltage),
  lowest: read.lowest ?? leftOut,
  tolerance: read.tolerance ?? TOLERANCE,
  frequency: read.frequency ?? FREQUENCY,
  overvoltageCategory: (read.overvoltageCategory ?? CATEGORY) as OvervoltageCategory,
  categoryStated: read.overvoltageCategory !== undefined,
  market: read.market === undefined || read.market === 'unknown' ? null : read.market,
  transient: read.transient ?? null,
});

const buildSurroundings = (read: FileRead['surroundings']): Design['surroundings'] => ({
  pollutionDegree: (read?.pollutionDegree ?? POLLUTION) as PollutionDegree,
  altitude: read?.altitude ?? ALTITUDE,
  hottestInsulation: read?.hottestInsulation ?? leftOut,
  temperature: {
    method: orOpen(read?.temperature?.method),
    condition: read?.temperature?.condition ?? 'normal',
  },
  impregnation: read?.impregnation ?? 'none',
  proof: read?.proof ?? 'none',
});

/** Of the supply nothing falls as its voltage grows, so of an interval the upper end counts, everywhere. */
const highestOf = ({ value, plusMinus, ...rest }: Known<VoltsRms>): Known<VoltsRms> => ({
  ...rest,
  value: voltsRms(value + plusMinus),
  plusMinus: voltsRms(0),
});

type Each<K extends keyof FileRead> = NonNullable<FileRead[K]> extends readonly (infer T)[] ? T : never;

const buildWorkingVoltage = (read: Each<'workingVoltages'>): WorkingVoltage => ({
  between: read.between,
  ...buildGiven(read),
});

const buildGiven = (read: Omit<Each<'workingVoltages'>, 'between'>): GivenVoltage => ({
  rms: read.rms ?? null,
  peak: read.peak ?? null,
  frequency: read.frequency ?? null,
  basis: read.basis ?? 'stated',
});

const buildFormer = (read: FileRead['former']): Former => ({
  height: read.height,
  wall: buildWall(read.wall),
  flange: read.flange,
  material: orOpen(read.material),
  split: read.split ?? false,
  chambers: read.chambers,
  dividers: read.dividers ?? [],
  tube: buildTube(read.tube),
});

function buildTube(read: FileRead['former']['tube']): Former['tube'] {
  const { shape, width, depth } = read ?? {};
  return shape === undefined || width === undefined || depth === undefined ? null : { shape, width, depth };
}

const buildCore = (read: FileRead['core']): Core => ({
  bond: orOpen(read?.bond),
  outerGap: read?.outerGap ?? leftOut,
  wrap: read?.wrap ? buildSheet(read.wrap) : null,
});

const buildOutside = (read: Each<'outside'>): Outside => ({
  between: read.between,
  what: read.what ?? '',
  clearance: read.clearance ?? null,
  creepage: read.creepage ?? null,
  materialGroup: orOpen(read.materialGroup),
  working: read.working ? buildGiven(read.working) : null,
});

const buildBridge = (read: Each<'bridges'>): Bridge => ({
  id: read.id,
  kind: read.kind,
  between: read.between,
  capacitance: read.capacitance ?? null,
  resistance: read.resistance ?? null,
  safetyClass: orOpen(read.safetyClass),
  rated: read.rated ?? null,
  inSeries: read.inSeries ?? 1,
  clearance: read.clearance ?? null,
  creepage: read.creepage ?? null,
  throughInsulation: read.throughInsulation ?? null,
  approval: orOpen(read.approval),
  working: read.working ? buildGiven(read.working) : null,
});

function defaultedIn(read: FileRead): readonly string[] {
  const { supply, surroundings = {} } = read;
  const missing = <R extends object>(
    group: string,
    record: R,
    fields: readonly (keyof R & string)[],
  ): readonly string[] =>
    fields.filter((field) => record[field] === undefined).map((field) => `${group}.${field}`);
  return [
    ...missing('supply', supply, ['tolerance', 'frequency', 'overvoltageCategory']),
    ...missing('surroundings', surroundings, ['pollutionDegree', 'altitude', 'impregnation']),
    ...(supply.voltage.plusMinus > 0 ? ['supply.voltage'] : []),
    ...inPart(read),
  ];
}

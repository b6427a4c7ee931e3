// The design file that the answers of an examination amount to; every figure can be changed on the sheet afterwards.
// What nobody typed is written as unknown; where the file must have a length, as an interval that holds most parts.

import { unmeasured } from '#model/begin/unmeasured.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { markedFields } from '#state/fields/marked-range.ts';
import type { Given } from './examination.svelte.ts';

type Layers = DesignFile['layers'];
type Layer = Layers[number];
type Quantity = NonNullable<DesignFile['former']['height']>;

export function examinedBuild(given: Given): DesignFile {
  const device = (figure: string): string | null =>
    given.given('device') === 'known' ? given.figure(figure) : null;
  const inChambers = given.given('order') === 'chambers';
  const former = (figure: string): string | null =>
    given.given('former') === 'known' ? given.figure(figure) : null;
  const width = former('width') ?? unmeasured.width;
  const hasAuxiliary = given.given('auxiliary') !== 'none';
  return {
    format: 'layerwright-design/1',
    title: device('title') ?? 'Transformer on the bench',
    origin: 'dissected',
    notes: 'From ten questions; what was not answered stands as unknown.',
    rules: 'iec-62368-1',
    supply: supplyOf(device('supply')),
    surroundings: { hottestInsulation: 'unknown' },
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      ...(hasAuxiliary ? [{ id: 'aux', name: 'Auxiliary', role: 'mains' as const }] : []),
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height: former('height') ?? unmeasured.height,
      wall: 'unknown',
      flange: 'unknown',
      material: 'unknown',
      chambers: inChambers ? [{ width }, { width }] : [{ width }],
      ...(inChambers ? { dividers: [unmeasured.divider] } : {}),
    },
    core: { bond: bondOf(given), outerGap: 'unknown' },
    windings: windingsOf(given, hasAuxiliary),
    layers: layersOf(given, hasAuxiliary, inChambers),
  };
}

const supplyOf = (marked: string | null): DesignFile['supply'] => ({
  kind: 'ac',
  ...(marked === null ? { voltage: unmeasured.supply } : markedFields(marked)),
});

function bondOf(given: Given): string {
  const bond = given.given('core');
  return bond === 'pri' || bond === 'out' || bond === 'floating' ? bond : 'unknown';
}

function windingsOf(given: Given, hasAuxiliary: boolean): DesignFile['windings'] {
  const unknownLeads = { leads: 'unknown' as const };
  const split = given.given('order') === 'sandwich' ? { links: 'unknown' as const } : {};
  const unseen = { kind: 'unknown' as const, conductor: 'unknown' as const };
  return [
    { id: 'P', circuit: 'pri', wire: unseen, ...unknownLeads, ...split },
    { id: 'S', circuit: 'out', wire: outputWire(given), leads: outputLeads(given) },
    ...(hasAuxiliary ? [{ id: 'A', circuit: 'aux', wire: unseen, ...unknownLeads }] : []),
  ];
}

function outputWire(given: Given): DesignFile['windings'][number]['wire'] {
  switch (given.given('wire')) {
    case 'enamelled':
      return {
        kind: 'enamelled',
        grade: 'unknown',
        ...sizeOf(given.figure('wire-enamelled')),
      };
    case 'three-layers':
      return {
        kind: 'layer-insulated',
        insulationLayers: 3,
        approval: 'wire-annex',
        ...sizeOf(given.figure('wire-layers')),
      };
    case 'covered':
      return {
        kind: 'layer-insulated',
        insulationLayers: 'unknown',
        approval: 'unknown',
        ...sizeOf(given.figure('wire-covered')),
      };
    default:
      return { kind: 'unknown', conductor: 'unknown' };
  }
}

/** Over all, as it was measured. */
const sizeOf = (overall: string | null) =>
  overall === null ? { conductor: 'unknown' } : { overallDiameter: overall };

function outputLeads(given: Given): NonNullable<DesignFile['windings'][number]['leads']> {
  const way = given.given('leads');
  if (way === 'unknown') return 'unknown';
  const sleeve =
    way === 'sleeved'
      ? { wall: given.figure('sleeve') ?? 'unknown', into: given.figure('sleeve-in') ?? 'unknown' }
      : null;
  const known = way === 'riser' || way === 'slot' ? way : 'unknown';
  const lead = { at: 'unknown', exit: 'unknown', way: known, sleeve } as const;
  return { start: lead, finish: lead };
}

function layersOf(given: Given, hasAuxiliary: boolean, inChambers: boolean): Layers {
  const primary: Layer = { kind: 'winding', winding: 'P', turns: 'unknown', ...marginsOf(given) };
  const output: Layer = { kind: 'winding', winding: 'S', turns: 'unknown', ...marginsOf(given) };
  const auxiliary: Layer = { kind: 'winding', winding: 'A', turns: 'unknown', ...marginsOf(given) };
  // nobody is asked of these: wound there or not, one ply or more
  const outer: Layer = { kind: 'tape', plies: 'unknown', plyThickness: 'unknown' };
  const between = tapeOf(given);
  const last: Layers = hasAuxiliary ? [outer, auxiliary, outer] : [outer];
  if (inChambers)
    return [
      primary,
      outer,
      { ...output, chamber: 1 },
      ...last.map((layer) => ({ ...layer, chamber: layer === auxiliary ? 0 : 1 })),
    ];
  switch (given.given('order')) {
    case 'output-inside':
      return [output, ...between, primary, ...last];
    case 'sandwich':
      return [primary, ...between, output, ...between, primary, ...last];
    default:
      return [primary, ...between, output, ...last];
  }
}

function tapeOf(given: Given): Layers {
  if (given.given('plies') === 'none') return [];
  const counted = given.given('plies') === 'known' ? given.figure('plies') : null;
  return [
    {
      kind: 'tape',
      plyThickness: 'unknown',
      plies: counted === null ? 'unknown' : Number(counted),
      ...insetOf(given),
    },
  ];
}

function insetOf(given: Given): { inset?: { left: Quantity; right: Quantity } } {
  switch (given.given('tape')) {
    case 'full':
      return {};
    case 'short':
      return {
        inset: {
          left: given.figure('short-left') ?? unmeasured.inset,
          right: given.figure('short-right') ?? unmeasured.inset,
        },
      };
    default:
      return { inset: { left: unmeasured.inset, right: unmeasured.inset } };
  }
}

function marginsOf(given: Given): Pick<Layer, 'margins'> {
  const both = (left: string | null, right: string | null, filled: boolean): Pick<Layer, 'margins'> => ({
    margins: {
      left: { width: left ?? 'unknown', filled },
      right: { width: right ?? 'unknown', filled },
    },
  });
  switch (given.given('margins')) {
    case 'filled':
      return both(given.figure('margin-left'), given.figure('margin-right'), true);
    case 'empty':
      return both(given.figure('gap-left'), given.figure('gap-right'), false);
    case 'none':
      return {};
    default:
      return both(null, null, false);
  }
}

// The design file that the answers of an examination amount to; every figure can be changed on the sheet afterwards.
// What is not known is written as unknown where the file allows it, else as an interval wide enough to hold most parts.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Given } from './examination.svelte.ts';

type Layers = DesignFile['layers'];
type Layer = Layers[number];
type Quantity = NonNullable<DesignFile['former']['height']>;

const UNMEASURED_WIDTH: Quantity = { value: '12 mm', plusMinus: '4 mm' };
const UNMEASURED_HEIGHT: Quantity = { value: '6 mm', plusMinus: '2 mm' };
const UNMEASURED_TAPE: Quantity = { value: '0.5 mm', plusMinus: '0.5 mm' };
const UNMEASURED_WIRE: Quantity = { value: '0.6 mm', plusMinus: '0.2 mm' };

export function examinedBuild(given: Given): DesignFile {
  const device = (figure: string): string | null =>
    given.given('device') === 'known' ? given.figure(figure) : null;
  const inChambers = given.given('order') === 'chambers';
  const former = (figure: string): string | null =>
    given.given('former') === 'known' ? given.figure(figure) : null;
  const width = former('width') ?? UNMEASURED_WIDTH;
  const hasAuxiliary = given.given('auxiliary') !== 'none';
  return {
    format: 'layerwright-design/1',
    title: device('title') ?? 'Transformer on the bench',
    origin: 'dissected',
    notes: 'From ten questions. Turns and the primary’s wire are starting values.',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: device('supply') ?? '240 V', overvoltageCategory: 2 },
    surroundings: {
      pollutionDegree: 2,
      altitude: '2000 m',
      hottestInsulation: 'unknown',
      impregnation: 'none',
    },
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      ...(hasAuxiliary ? [{ id: 'aux', name: 'Auxiliary', role: 'mains' as const }] : []),
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height: former('height') ?? UNMEASURED_HEIGHT,
      wall: 'unknown',
      flange: 'unknown',
      material: 'unknown',
      chambers: inChambers ? [{ width }, { width }] : [{ width }],
      ...(inChambers ? { dividers: ['1 mm'] } : {}),
    },
    core: { bond: bondOf(given), outerGap: 'unknown' },
    windings: windingsOf(given, hasAuxiliary),
    layers: layersOf(given, hasAuxiliary, inChambers),
  };
}

function bondOf(given: Given): string {
  const bond = given.given('core');
  return bond === 'pri' || bond === 'out' || bond === 'floating' ? bond : 'unknown';
}

function windingsOf(given: Given, hasAuxiliary: boolean): DesignFile['windings'] {
  const unknownLeads = { leads: 'unknown' as const };
  const split = given.given('order') === 'sandwich' ? { links: 'unknown' as const } : {};
  const enamelled = { kind: 'enamelled' as const, conductor: '0.2 mm', grade: 'unknown' as const };
  return [
    { id: 'P', circuit: 'pri', wire: enamelled, ...unknownLeads, ...split },
    { id: 'S', circuit: 'out', wire: outputWire(given), leads: outputLeads(given) },
    ...(hasAuxiliary ? [{ id: 'A', circuit: 'aux', wire: enamelled, ...unknownLeads }] : []),
  ];
}

function outputWire(given: Given): DesignFile['windings'][number]['wire'] {
  switch (given.given('wire')) {
    case 'enamelled':
      return {
        kind: 'enamelled',
        grade: 'unknown',
        overallDiameter: given.figure('wire-enamelled') ?? UNMEASURED_WIRE,
      };
    case 'three-layers':
      return {
        kind: 'layer-insulated',
        insulationLayers: 3,
        approval: 'wire-annex',
        overallDiameter: given.figure('wire-layers') ?? UNMEASURED_WIRE,
      };
    case 'covered':
      return {
        kind: 'layer-insulated',
        insulationLayers: 'unknown',
        approval: 'unknown',
        overallDiameter: given.figure('wire-covered') ?? UNMEASURED_WIRE,
      };
    default:
      return { kind: 'unknown', overallDiameter: UNMEASURED_WIRE };
  }
}

function outputLeads(given: Given): NonNullable<DesignFile['windings'][number]['leads']> {
  const way = given.given('leads');
  if (way === 'unknown') return 'unknown';
  // a sleeve down to the winding reaches at least as far in as any margin is wide
  const sleeve = way === 'sleeved' ? { wall: given.figure('sleeve') ?? 'unknown', into: '20 mm' } : null;
  const lead = { at: 'right', exit: 'right', way: way === 'riser' ? 'riser' : 'slot', sleeve } as const;
  return { start: lead, finish: lead };
}

function layersOf(given: Given, hasAuxiliary: boolean, inChambers: boolean): Layers {
  const primary: Layer = { kind: 'winding', winding: 'P', turns: 60, ...marginsOf(given) };
  const output: Layer = { kind: 'winding', winding: 'S', turns: 10, ...marginsOf(given) };
  const auxiliary: Layer = { kind: 'winding', winding: 'A', turns: 8, ...marginsOf(given) };
  const outer: Layer = { kind: 'tape', material: 'polyester-tape-25', plies: 1 };
  const between = tapeOf(given);
  const last: Layers = hasAuxiliary ? [...tapeOf(given), auxiliary, outer] : [outer];
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
      material: 'polyester-tape-25',
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
          left: given.figure('short-left') ?? UNMEASURED_TAPE,
          right: given.figure('short-right') ?? UNMEASURED_TAPE,
        },
      };
    default:
      return { inset: { left: UNMEASURED_TAPE, right: UNMEASURED_TAPE } };
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

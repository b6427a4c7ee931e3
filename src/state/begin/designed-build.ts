// A build to begin with: a former, a kind of construction, a supply and an output give a first file to change by hand.
// Margins start at half of what is asked along the surface, so that both together hold it.

import type { Design } from '#model/design.ts';
import type { ReadDesign } from '#model/read/read-design.ts';
import { quantityText } from '#model/quantity/quantity-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import { inMm, nm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import type { FormerStart } from '#state/fields/field-options.ts';
import { lengthOfMm } from '#state/fields/quantity-echo.ts';

export const constructions = [
  {
    id: 'margins',
    name: 'Margins',
    says: 'enamelled wire, margin tape at both flanges, three plies between',
  },
  {
    id: 'insulated-wire',
    name: 'Insulated wire',
    says: 'the output in wire with three certified layers, no margins',
  },
  { id: 'chambers', name: 'Two chambers', says: 'primary and output side by side, a divider between' },
  { id: 'screen', name: 'Screen', says: 'margins, and a screen on the mains side between the windings' },
  { id: 'sandwich', name: 'Sandwich', says: 'margins, the primary in two parts with the output between' },
  { id: 'empty', name: 'Empty', says: 'a former with nothing wound on it yet' },
] as const;

export type Construction = (typeof constructions)[number]['id'];

export interface DesignWish {
  readonly former: Omit<FormerStart, 'id' | 'label'>;
  readonly construction: Construction;
  readonly supply: string;
  readonly output: string;
}

interface Judging {
  readonly read: (doc: DesignFile) => ReadDesign;
  /** Null where it cannot be judged. */
  readonly judge: (design: Design) => Promise<Drawable | null>;
}

export interface DesignedBuild {
  readonly doc: DesignFile;
  /** What is asked along the surface and through the air between primary and output, mm; null where the wish cannot be read. */
  readonly asked: {
    readonly creepage: number | null;
    readonly clearance: number | null;
    readonly grade: string;
  } | null;
}

export async function designedBuild(wish: DesignWish, judging: Judging): Promise<DesignedBuild> {
  const first = draft(wish, guess(wish));
  const reading = judging.read(first);
  if (reading.kind === 'bad') return { doc: first, asked: null };
  const judged = await judging.judge(reading.design);
  const pair = judged?.verdict.pairs.find(({ required }) => required !== null);
  if (pair?.required == null) return { doc: first, asked: null };
  const { creepage, clearance } = pair.required;
  const margin = Math.ceil(((creepage.reinforced ?? 0) / 2) * 10) / 10;
  return {
    doc: draft(wish, `${margin} mm`),
    asked: { creepage: creepage.reinforced, clearance: clearance.reinforced, grade: pair.needed },
  };
}

/** What is asked depends on what the path runs along, so it is asked with margins there; they must leave room to wind. */
function guess({ former }: DesignWish): string {
  const width = quantityText(former.width, 'length');
  return width.kind === 'value' ? lengthOfMm(Math.min(3, inMm(nm(width.value)) / 4)) : '0 mm';
}

function draft({ former, construction, supply, output }: DesignWish, margin: string): DesignFile {
  const { width, height, wall, flange } = former;
  const inChambers = construction === 'chambers';
  return {
    format: 'layerwright-design/1',
    title: 'New build',
    origin: 'proposed',
    notes: 'A start: turns, wires and voltages are to be put right.',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', voltage: supply, tolerance: 0.1, frequency: '50 Hz', overvoltageCategory: 2 },
    surroundings: {
      pollutionDegree: 2,
      altitude: '2000 m',
      hottestInsulation: 'unknown',
      impregnation: 'none',
    },
    converter: {
      mode: 'continuous',
      switchingFrequency: '65 kHz',
      reflectedVoltage: '90 V',
      clampOvershoot: '60 V',
      outputs: [{ circuit: 'out', voltage: output }],
    },
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height,
      wall,
      flange,
      material: 'pbt',
      chambers: inChambers ? [{ width: half(width) }, { width: half(width) }] : [{ width }],
      ...(inChambers ? { dividers: ['1.5 mm'] } : {}),
    },
    core: { bond: 'floating', outerGap: '0.5 mm' },
    windings: construction === 'empty' ? [] : windingsOf(construction, margin),
    layers: layersOf(construction, margin),
  };
}

/** Two chambers in the room of one, less the divider. */
function half(width: string): string {
  const found = quantityText(width, 'length');
  return found.kind === 'value' ? lengthOfMm(Math.max(1, (inMm(nm(found.value)) - 1.5) / 2)) : width;
}

function windingsOf(construction: Construction, margin: string): DesignFile['windings'] {
  const isMargined = construction !== 'insulated-wire' && construction !== 'chambers';
  const sleeve = isMargined ? { material: 'ptfe', wall: '0.4 mm', into: margin } : null;
  const leads = (side: 'left' | 'right') => {
    const lead = { at: side, exit: side, way: 'slot', sleeve } as const;
    return { start: lead, finish: lead };
  };
  const links =
    construction === 'sandwich' ? { links: [{ side: 'left' as const, way: 'riser' as const, sleeve }] } : {};
  return [
    {
      id: 'P',
      circuit: 'pri',
      wire: { kind: 'enamelled', conductor: '0.2 mm', grade: 1 },
      leads: leads('left'),
      ...links,
    },
    {
      id: 'S',
      circuit: 'out',
      wire:
        construction === 'insulated-wire'
          ? { kind: 'layer-insulated', conductor: '0.4 mm', insulationLayers: 3, approval: 'wire-annex' }
          : { kind: 'enamelled', conductor: '0.5 mm', grade: 1 },
      leads: leads('right'),
    },
  ];
}

function layersOf(construction: Construction, margin: string): DesignFile['layers'] {
  const filled = { width: margin, filled: true };
  const margins = { margins: { left: filled, right: filled } };
  const tape = (plies: number) =>
    ({ kind: 'tape', material: 'polyester-tape-25', plies, plyThickness: '0.06 mm' }) as const;
  const wound = (winding: string, turns: number) => ({ kind: 'winding', winding, turns }) as const;
  switch (construction) {
    case 'margins':
      return [{ ...wound('P', 60), ...margins }, tape(3), { ...wound('S', 8), ...margins }, tape(3)];
    case 'empty':
      return [];
    case 'insulated-wire':
      return [wound('P', 60), tape(2), wound('S', 8), tape(2)];
    case 'chambers':
      return [wound('P', 60), tape(2), { ...wound('S', 8), chamber: 1 }, { ...tape(2), chamber: 1 }];
    case 'screen':
      return [
        { ...wound('P', 60), ...margins },
        tape(1),
        { kind: 'screen', circuit: 'pri', thickness: '0.05 mm', ...margins, lead: 'not-judged' },
        tape(3),
        { ...wound('S', 8), ...margins },
        tape(3),
      ];
    case 'sandwich':
      return [
        { ...wound('P', 30), ...margins },
        tape(3),
        { ...wound('S', 8), ...margins },
        tape(3),
        { ...wound('P', 30), ...margins },
        tape(3),
      ];
    default:
      return unreachable(construction);
  }
}

// A build to begin with: a former, a kind of construction, a supply and an output give a first file to change by hand.
// Every figure in it was typed, is among the words of its construction, or follows from what is asked.
// Margins start at half of what is asked along the surface, so that both together hold it.

import { fileLengthWords } from '#words/text/file-length.ts';
import type { Design } from '#model/design.ts';
import type { ReadDesign } from '#model/read/read-design.ts';
import { quantityText } from '#model/quantity/quantity-text.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Drawable } from '#drawing/scene/scene.ts';
import type { PairVerdict } from '#state/judging/judged.ts';
import { inMm, nm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import type { FormerStart } from '#state/fields/field-options.ts';
import { markedFields } from '#state/fields/marked-range.ts';
import { lengthOfMm } from '#state/fields/quantity-echo.ts';

export const constructions = [
  {
    id: 'margins',
    name: 'Margins',
    get says() {
      return `enamelled wire, leads in sleeves of ${fileLengthWords('0.4 mm')}, margin tape at both flanges, 3 plies of polyester tape between and over`;
    },
  },
  {
    id: 'insulated-wire',
    name: 'Insulated wire',
    says: 'the output in wire with 3 certified layers, 2 plies of polyester tape between and over, no margins',
  },
  {
    id: 'chambers',
    name: 'Two chambers',
    get says() {
      return `primary and output side by side, a divider of ${fileLengthWords('1.5 mm')} between, 2 plies of polyester tape over each`;
    },
  },
  {
    id: 'screen',
    name: 'Screen',
    get says() {
      return `as margins, and between the windings a screen of ${fileLengthWords('0.05 mm')} on the mains side, over 1 ply`;
    },
  },
  {
    id: 'sandwich',
    name: 'Sandwich',
    says: 'as margins, the primary in two parts with the output between',
  },
  { id: 'empty', name: 'Empty', says: 'a former with nothing wound on it yet' },
] as const;

export type Construction = (typeof constructions)[number]['id'];

export interface DesignWish {
  readonly former: Omit<FormerStart, 'id' | 'label'>;
  /** Of the former; empty: not known. */
  readonly material: string;
  /** What the core is tied to, and how far it stands above the rim; empty: not known. */
  readonly bond: string;
  readonly gap: string;
  readonly construction: Construction;
  readonly supply: string;
  readonly output: string;
  /** Empty where nobody said: then they are not known, and counted as the worst. */
  readonly turns: readonly [string, string];
  readonly wires: readonly [string, string];
  /** Without all three of these nothing is computed, and the least that the mains allows is counted. */
  readonly switching: string;
  readonly reflected: string;
  readonly spike: string;
}

interface Judging {
  readonly read: (doc: DesignFile) => ReadDesign;
  /** Null where it cannot be judged. */
  readonly judge: (design: Design) => Promise<Drawable | null>;
}

/** What is asked between primary and output; lengths in mm, null where the book has none. */
export interface Asked {
  readonly creepage: number | null;
  readonly clearance: number | null;
  readonly grade: string;
  readonly pair: PairVerdict;
}

export interface DesignedBuild {
  readonly doc: DesignFile;
  /** Null where the wish cannot be read or judged. */
  readonly asked: Asked | null;
  /** Margin at each flange, mm; 0 where the construction has none. */
  readonly margin: number;
  /** As it would lie, judged; null where it does not go in at all. */
  readonly laid: { readonly design: Design; readonly judgement: Drawable } | null;
}

export async function designedBuild(wish: DesignWish, judging: Judging): Promise<DesignedBuild> {
  const first = draft(wish, guess(wish));
  const before = await judged(first, judging);
  const pair = before?.judgement.verdict.pairs.find(({ required }) => required !== null);
  if (pair?.required == null) return { doc: draft(wish, 'unknown'), asked: null, margin: 0, laid: null };
  const { creepage, clearance } = pair.required;
  const margin = hasMargins(wish.construction) ? Math.ceil(((creepage.reinforced ?? 0) / 2) * 10) / 10 : 0;
  const doc = draft(wish, `${margin} mm`);
  return {
    doc,
    asked: { creepage: creepage.reinforced, clearance: clearance.reinforced, grade: pair.needed, pair },
    margin,
    laid: await judged(doc, judging),
  };
}

async function judged(doc: DesignFile, judging: Judging): Promise<DesignedBuild['laid']> {
  const reading = judging.read(doc);
  if (reading.kind === 'bad') return null;
  const judgement = await judging.judge(reading.design);
  return judgement === null ? null : { design: reading.design, judgement };
}

const hasMargins = (construction: Construction): boolean =>
  ['margins', 'screen', 'sandwich'].includes(construction);

/** What is asked depends on what the path runs along, so it is asked with margins there; they must leave room to wind. */
function guess({ former }: DesignWish): string {
  const width = quantityText(former.width, 'length');
  return width.kind === 'value' ? lengthOfMm(Math.min(3, inMm(nm(width.value)) / 4)) : '0 mm';
}

function draft(wish: DesignWish, margin: string): DesignFile {
  const { former, construction, supply } = wish;
  const { width, height, wall, flange } = former;
  const inChambers = construction === 'chambers';
  return {
    format: 'layerwright-design/1',
    title: 'New build',
    origin: 'proposed',
    rules: 'iec-62368-1',
    supply: { kind: 'ac', ...markedFields(supply) },
    surroundings: { hottestInsulation: 'unknown' },
    ...converterOf(wish),
    circuits: [
      { id: 'pri', name: 'Primary', role: 'mains' },
      { id: 'out', name: 'Output', role: 'touchable' },
    ],
    former: {
      height,
      wall: orUnknown(wall),
      flange: orUnknown(flange),
      ...(wish.material === '' ? {} : { material: wish.material }),
      chambers: inChambers ? [{ width: half(width) }, { width: half(width) }] : [{ width }],
      ...(inChambers ? { dividers: ['1.5 mm'] } : {}),
    },
    core: { bond: orUnknown(wish.bond), outerGap: orUnknown(wish.gap) },
    windings: construction === 'empty' ? [] : windingsOf(wish, margin),
    layers: layersOf(wish, margin),
  };
}

function converterOf({ switching, reflected, spike, output }: DesignWish): Pick<DesignFile, 'converter'> {
  if ([switching, reflected, spike].some((text) => text.trim() === '')) return {};
  return {
    converter: {
      mode: 'unknown',
      switchingFrequency: switching,
      reflectedVoltage: reflected,
      clampOvershoot: spike,
      outputs: output.trim() === '' ? [] : [{ circuit: 'out', voltage: output }],
    },
  };
}

/** Two chambers in the room of one, less the divider. */
function half(width: string): string {
  const found = quantityText(width, 'length');
  return found.kind === 'value' ? lengthOfMm(Math.max(1, (inMm(nm(found.value)) - 1.5) / 2)) : width;
}

function windingsOf({ construction, wires }: DesignWish, margin: string): DesignFile['windings'] {
  const isMargined = hasMargins(construction);
  const [primary, output] = wires.map(orUnknown) as [string, string];
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
      wire: { kind: 'enamelled', conductor: primary },
      leads: leads('left'),
      ...links,
    },
    {
      id: 'S',
      circuit: 'out',
      wire:
        construction === 'insulated-wire'
          ? { kind: 'layer-insulated', conductor: output, insulationLayers: 3, approval: 'wire-annex' }
          : { kind: 'enamelled', conductor: output },
      leads: leads('right'),
    },
  ];
}

function layersOf({ construction, turns }: DesignWish, margin: string): DesignFile['layers'] {
  const [primary, output] = turns.map(counted) as [Turns, Turns];
  const filled = { width: margin, filled: true };
  const margins = { margins: { left: filled, right: filled } };
  const tape = (plies: number) => ({ kind: 'tape', material: 'polyester-tape-25', plies }) as const;
  const wound = (winding: string, count: Turns) => ({ kind: 'winding', winding, turns: count }) as const;
  switch (construction) {
    case 'margins':
      return [
        { ...wound('P', primary), ...margins },
        tape(3),
        { ...wound('S', output), ...margins },
        tape(3),
      ];
    case 'empty':
      return [];
    case 'insulated-wire':
      return [wound('P', primary), tape(2), wound('S', output), tape(2)];
    case 'chambers':
      return [
        wound('P', primary),
        tape(2),
        { ...wound('S', output), chamber: 1 },
        { ...tape(2), chamber: 1 },
      ];
    case 'screen':
      return [
        { ...wound('P', primary), ...margins },
        tape(1),
        { kind: 'screen', circuit: 'pri', thickness: '0.05 mm', ...margins, lead: 'not-judged' },
        tape(3),
        { ...wound('S', output), ...margins },
        tape(3),
      ];
    case 'sandwich':
      return [
        { ...wound('P', halved(primary, Math.ceil)), ...margins },
        tape(3),
        { ...wound('S', output), ...margins },
        tape(3),
        { ...wound('P', halved(primary, Math.floor)), ...margins },
        tape(3),
      ];
    default:
      return unreachable(construction);
  }
}

const orUnknown = (text: string): string => (text.trim() === '' ? 'unknown' : text);

type Turns = number | 'unknown';

const counted = (text: string): Turns => (/^\s*\d+\s*$/.test(text) ? Number(text) : 'unknown');

/** At least one turn in each part. */
const halved = (turns: Turns, round: (value: number) => number): Turns =>
  turns === 'unknown' ? turns : Math.max(1, round(turns / 2));

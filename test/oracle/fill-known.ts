// A build from a design in which every figure that shapes the section is stated; throws where one is left open.
// For tests only: no table is looked up, and every solid that is stated apart is a stuff of its own.

import type { Design } from '#model/design.ts';
import type { Margin } from '#model/design/layer.ts';
import type { Lead, Link, Sleeve, Wire } from '#model/design/winding.ts';
import type { Sheet } from '#model/design/sheet.ts';
import type { Side } from '#units/terms.ts';
import { linkGaps } from '#model/check/link-gaps.ts';
import type { Reading, Unknown } from '#model/quantity/reading.ts';
import type {
  Build,
  BuildLayer,
  BuildMargin,
  BuildSheet,
  BuildSleeve,
  BuildWall,
  BuildWire,
  Lay,
  StuffId,
} from '#solver/section/build.ts';
import { nm, type Nm } from '#units/quantity.ts';

export function fillKnown(design: Design): Build {
  let stuffs = 0;
  const stuff = (): StuffId => stuffs++;
  const { former, core, surroundings } = design;
  const proven = surroundings.proof === 'tested';
  return {
    height: former.height.value,
    wall: wallOf(design, stuff),
    flange: length(former.flange),
    split: former.split,
    moulding: stuff(),
    chambers: former.chambers.map((c) => c.width.value),
    dividers: former.dividers.map((d) => d.value),
    outerGap: length(core.outerGap),
    wrap: core.wrap === null ? null : sheetOf(core.wrap, stuff()),
    layers: design.layers.map((_, index) => layerOf(design, index, proven, stuff)),
    lays: laysOf(design, stuff),
    potted: surroundings.impregnation === 'potted' && proven,
    closedJoint: stuff(),
  };
}

function length(value: Reading<Nm>): Nm {
  if (value.kind === 'unknown') throw new Error('a length is left open');
  return value.value;
}

function stated<T>(value: T | Unknown): T {
  if (typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'unknown') {
    throw new Error('a choice is left open');
  }
  return value as T;
}

function wallOf(design: Design, stuff: () => StuffId): BuildWall {
  const { wall } = design.former;
  if (wall.kind === 'unknown') throw new Error('the wall is left open');
  if (wall.kind === 'moulded') return { kind: 'moulded', thickness: wall.thickness.value };
  return { ...sheetOf(wall, stuff()), kind: 'plies' };
}

function sheetOf(sheet: Sheet, stuff: StuffId): BuildSheet {
  const { plies, plyThickness } = sheet;
  if (typeof plies !== 'number' || plyThickness?.kind !== 'known') throw new Error('a sheet is left open');
  return { plies, plyThickness: plyThickness.value, stuff };
}

function marginOf(margin: Margin, stuff: StuffId): BuildMargin {
  const { filled, moulded } = margin;
  const height = margin.height?.value ?? null;
  return { width: length(margin.width), filled, height, moulded, turn: TURN, stuff };
}

/** A turn of the tape that margins are wound of. */
const TURN = nm(150_000);

const marginsOf = (margins: Record<'left' | 'right', Margin>, stuff: () => StuffId) => ({
  left: marginOf(margins.left, stuff()),
  right: marginOf(margins.right, stuff()),
});

function layerOf(design: Design, index: number, proven: boolean, stuff: () => StuffId): BuildLayer {
  const layer = design.layers[index]!;
  const placed = { index, chamber: layer.chamber, margins: marginsOf(layer.margins, stuff) };
  const inset = 'inset' in layer ? { left: layer.inset.left.value, right: layer.inset.right.value } : null;
  if (layer.kind === 'tape') {
    const shown = design.evidence.some((e) => e.fields.includes(`layers[${index}].turnUp`));
    const turnUp = shown && layer.turnUp !== null ? layer.turnUp.value : nm(0);
    const cemented = layer.cemented && proven;
    return { kind: 'tape', ...placed, ...sheetOf(layer, stuff()), inset: inset!, cemented, turnUp };
  }
  if (layer.kind === 'screen') {
    const { circuit, overlap } = layer;
    const over = overlap === null ? null : sheetOf(overlap, stuff());
    const id = layer.id ?? `screen ${index}`;
    return {
      kind: 'screen',
      ...placed,
      circuit,
      id,
      thickness: layer.thickness.value,
      overlap: over,
      inset: inset!,
    };
  }
  const winding = design.windings.find((w) => w.id === layer.winding)!;
  const { leads } = winding;
  const start =
    typeof leads === 'object' && 'start' in leads && !('kind' in leads.start) ? leads.start.at : 'left';
  const { extent, turns, strands, spread } = layer;
  return {
    kind: 'winding',
    ...placed,
    winding: winding.id,
    circuit: winding.circuit,
    turns: stated<number>(turns),
    strands,
    spread,
    startsAt: start === 'right' ? 'right' : 'left',
    wire: wireOf(winding.wire, stuff()),
    anchored: winding.anchored,
    extent: extent === null ? null : { from: extent.from.value, to: extent.to.value },
  };
}

function wireOf(wire: Wire, stuff: StuffId): BuildWire {
  const { overallDiameter, conductor, kind } = wire;
  if (overallDiameter === null) throw new Error('an overall diameter is left open');
  const overall = overallDiameter.value;
  const common = { overall, metal: null, bare: kind === 'bare' };
  if (kind === 'layer-insulated' || kind === 'fully-insulated') {
    const thickness = nm(Math.round((overall - (conductor === null ? 0 : length(conductor))) / 2));
    const layers = kind === 'fully-insulated' ? 1 : stated<number>(wire.insulationLayers);
    return { ...common, slumps: false, cover: { thickness, plies: layers === 3 ? null : layers, stuff } };
  }
  return { ...common, slumps: true, cover: null };
}

function sleeveOf(sleeve: Lead['sleeve'] | Link['sleeve'], stuff: StuffId): BuildSleeve | null {
  if (sleeve === null) return null;
  const known = stated<Sleeve>(sleeve);
  return { wall: length(known.wall), into: length(known.into), stuff };
}

function laysOf(design: Design, stuff: () => StuffId): Lay[] {
  const layersOf = (winding: string): number[] =>
    design.layers.flatMap((l, i) => (l.kind === 'winding' && l.winding === winding ? [i] : []));
  const wound = design.windings.flatMap((winding) => {
    const found: Lay[] = [];
    const own = layersOf(winding.id);
    if (own.length === 0) return [];
    const common = { circuit: winding.circuit, wire: wireOf(winding.wire, stuff()) };
    const { leads, links } = winding;
    if (leads !== 'not-judged') {
      if (!('start' in leads)) throw new Error('leads are left open');
      for (const end of ['start', 'finish'] as const) {
        const layer = end === 'start' ? own[0]! : own[own.length - 1]!;
        found.push(
          leadLay(
            stated<Lead>(leads[end]),
            `${winding.id} ${end}`,
            { ...common, layer, kind: 'lead' },
            stuff(),
          ),
        );
      }
    }
    if ('kind' in links) throw new Error('links are left open');
    linkGaps(design.layers, winding.id).forEach((gap, i) => {
      const link = links[i]!;
      const side = stated<Side>(link.side);
      const name = `${winding.id} link ${i + 1}`;
      const sleeve = sleeveOf(link.sleeve, stuff());
      const way = { at: side, exit: side, way: 'riser', sleeve, crossTape: 0, apart: null } as const;
      found.push({ ...common, ...way, name, group: name, layer: gap.inner, upTo: gap.outer, kind: 'link' });
    });
    return found;
  });
  const screens = design.layers.flatMap((layer, index) => {
    if (
      layer.kind !== 'screen' ||
      layer.circuit === null ||
      layer.lead === null ||
      layer.lead === 'not-judged'
    )
      return [];
    const wire = { overall: layer.thickness.value, metal: null, cover: null, bare: true, slumps: false };
    const common = { circuit: layer.circuit, wire, layer: index, kind: 'screen-lead' } as const;
    return [leadLay(stated<Lead>(layer.lead), `screen ${index} lead`, common, stuff())];
  });
  return [...wound, ...screens];
}

function leadLay(
  lead: Lead,
  name: string,
  common: Pick<Lay, 'circuit' | 'wire' | 'layer' | 'kind'>,
  stuff: StuffId,
): Lay {
  return {
    ...common,
    name,
    group: name,
    at: stated<Side>(lead.at),
    exit: stated<Side>(lead.exit),
    way: lead.way === 'slot' ? 'slot' : 'riser',
    sleeve: sleeveOf(lead.sleeve, stuff),
    crossTape: lead.crossTape,
    upTo: null,
    apart: lead.apart === null ? null : lead.apart.value,
  };
}

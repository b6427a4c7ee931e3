// From a design to complete builds for the solver: unknowns counted as chosen, wires and tapes looked up.
// Where an unknown leaves a choice of place, several builds stand side by side (see `Filled.builds`).

import type { NotJudged } from '#judge/verdict/remark.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import { because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { formerById } from '#standards/materials/materials.ts';
import type { Design, Layer, PollutionDegree, Side, WindingLayer } from '#model/design.ts';
import { isKnown } from '#model/quantity/reading.ts';
import type {
  Build,
  BuildLayer,
  BuildMargin,
  BuildWire,
  BuildWall,
  Lay,
  StuffId,
} from '#solver/section/build.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { isBest as isBestField, type Choice } from '#judge/assume/assumption.ts';
import { type Counted, Filling } from '#judge/assume/fill-context.ts';
import { groupOrAssumed } from './fill-group.ts';
import { fillLeads } from './fill-leads.ts';
import { type AllWidths, fillWidths, type Widths } from './fill-margins.ts';
import { type FilledOutside, fillOutside } from './fill-outside.ts';
import { fillBlock, fillSheet, groupOf } from './fill-solid.ts';
import { fillWire } from './fill-wire.ts';
import { grownBuilds, isCoreOutOfReach } from './grown-stack.ts';
import { pastLeads } from './past-leads.ts';
import { meansField } from '#judge/grade/means.ts';
import { coreCircuit, touchedBy } from '#judge/conductors/core-circuit.ts';
import type { Solid } from '#books/questions/solid.ts';

/** So far from the winding that the core above never limits. */
const FAR = nm(100_000_000);
/** Thickness of a wall that nobody knows: one ply of no length. */
const NO_WALL = nm(1);
/** Choices of place that are tried at best; further ones stand at worst. */
const MOST_OPTIONS = 16;

export interface Filled {
  /** As it counts: degree 1 wants a proof. */
  readonly pollutionDegree: PollutionDegree;
  /** The better of the outer list counts, of the inner lists each the worse. */
  readonly builds: readonly (readonly Build[])[];
  /** Those of them that are no taller than they are drawn. */
  readonly drawn: readonly Build[];
  readonly stuffs: readonly Solid[];
  readonly counted: readonly Counted[];
  /** Circuits that the core may be tied to; null floating. The worst counts, or the best. */
  readonly coreBonds: readonly (string | null)[];
  readonly bestBond: boolean;
  /** Circuits by the unknown fields that say how much room they take. */
  readonly rooms: ReadonlyMap<string, string>;
  readonly notJudged: readonly NotJudged[];
  /** The distances outside the window, in the order of the file. */
  readonly outside: readonly FilledOutside[];
}

export function fillBuild(design: Design, book: Book, choice: Choice): Filled {
  const filling = new Filling(choice);
  const wires = new Map<string, BuildWire>(
    design.windings.map((winding, w) => [
      winding.id,
      fillWire(filling, book, design, winding, `windings[${w}].wire`),
    ]),
  );
  const leads = fillLeads(filling, design, wires, book);
  const starts = startSides(filling, design);
  const shell = fillFormer(filling, book, design);
  const widths = fillWidths(filling, design, wires);
  const buildOf = (lays: readonly Lay[], all: AllWidths, side: (winding: string) => Side): Build => ({
    ...shell,
    layers: design.layers.map((layer, index) =>
      fillLayer(filling, book, design, layer, index, wires, all[index]!, side),
    ),
    lays,
  });
  const laySets = leads.choices.reduce<readonly (readonly Lay[])[]>(
    (sets, { options }) =>
      sets.length * options.length > MOST_OPTIONS
        ? sets.map((set) => [...set, ...options.flat()])
        : sets.flatMap((set) => options.map((option) => [...set, ...option])),
    [[]],
  );
  const sides = starts.both ? (['left', 'right'] as const) : (['left'] as const);
  const sideFor = (other: Side) => (winding: string) => starts.known.get(winding) ?? other;
  const [betterSides, worseSides] = starts.best ? [sides, [null]] : [[null], sides];
  const drawn = laySets.flatMap((lays) =>
    widths.better.flatMap((better) =>
      betterSides.map((side) =>
        widths
          .worse(better)
          .flatMap((all) => worseSides.map((other) => buildOf(lays, all, sideFor(side ?? other ?? 'left')))),
      ),
    ),
  );
  const builds = drawn.map((worse) =>
    worse.flatMap((build) => [
      build,
      ...grownBuilds(design, choice, build),
      ...pastLeads(build, leads.choices),
    ]),
  );
  const bonds = coreBonds(filling, design);
  const outside = fillOutside(filling, design);
  const pollutionDegree = fillPollution(filling, design);
  if (book.asksMeans) noteMeans(filling, design);
  // last, when every field has been asked for
  const counted = [...filling.counted.values()];
  return {
    pollutionDegree,
    builds,
    drawn: drawn.flat(),
    stuffs: filling.stuffs.all,
    counted,
    coreBonds: bonds.all,
    bestBond: bonds.best,
    rooms: filling.rooms,
    notJudged: leads.notJudged,
    outside,
  };
}

/** At which side layers begin that are not spread over their width. */
function startSides(filling: Filling, design: Design) {
  const known = new Map<string, Side>();
  let open = false;
  let best = false;
  design.windings.forEach((winding, w) => {
    const matters = design.layers.some(
      (layer) => layer.kind === 'winding' && layer.winding === winding.id && !layer.spread,
    );
    if (!matters) return;
    const { leads } = winding;
    const start = leads === 'not-judged' || 'kind' in leads ? null : leads.start;
    const at = start === null || 'kind' in start ? null : start.at;
    if (typeof at === 'string') known.set(winding.id, at);
    else {
      open = true;
      best = filling.unknown(`windings[${w}].leads.start.at`, plainly('each-side')) === 'best';
    }
  });
  return { known, both: open, best };
}

interface Bonds {
  readonly all: readonly (string | null)[];
  readonly best: boolean;
}

function coreBonds(filling: Filling, design: Design): Bonds {
  const { bond } = design.core;
  const touched = touchedBy(design);
  if (typeof bond === 'string') return { all: [bond === 'floating' ? touched : bond], best: false };
  const best = filling.unknown('core.bond', plainly('floating-or-tied')) === 'best';
  const others = design.circuits.map(({ id }) => id).filter((id) => id !== touched);
  return { all: [touched, ...others], best };
}

/** Degree 1 wants a proof as potting does; without one it is degree 2. */
function fillPollution(filling: Filling, { surroundings }: Design): PollutionDegree {
  const { pollutionDegree, proof } = surroundings;
  if (pollutionDegree !== 1 || proof === 'tested') return pollutionDegree;
  return filling.unknown('surroundings.proof', plainly('pollution-2')) === 'best' ? 1 : 2;
}

/** For a book that tells patients from operators, whom a touchable circuit protects. */
function noteMeans(filling: Filling, { circuits }: Design): void {
  circuits.forEach(({ role, means }, i) => {
    if (role === 'touchable' && means === null) filling.unknown(meansField(i), plainly('patient'));
  });
}

function fillFormer(filling: Filling, book: Book, design: Design): Omit<Build, 'layers' | 'lays'> {
  const { former, core, surroundings } = design;
  const flange = isKnown(former.flange)
    ? former.flange.value
    : filling.unknown('former.flange', plainly('unshown-ply')) === 'best'
      ? book.leastThickness().value
      : NO_WALL;
  const proven = surroundings.proof === 'tested';
  return {
    height: former.height.value,
    wall: fillWall(filling, book, design),
    flange,
    split: former.split,
    moulding: mouldingStuff(filling, book, design),
    chambers: former.chambers.map((chamber) => chamber.width.value),
    dividers: former.dividers.map((divider) => divider.value),
    outerGap: outerGap(filling, design),
    wrap: core.wrap ? fillSheet(filling, book, core.wrap, 'core.wrap') : null,
    potted: surroundings.impregnation === 'potted' && proven,
    closedJoint: closedJoint(filling, proven),
  };
}

function fillWall(filling: Filling, book: Book, design: Design): BuildWall {
  const { wall } = design.former;
  switch (wall.kind) {
    case 'moulded':
      return { kind: 'moulded', thickness: wall.thickness.value };
    case 'plies':
      return { kind: 'plies', ...fillSheet(filling, book, wall, 'former.wall') };
    case 'unknown': {
      const best = filling.unknown('former.wall', plainly('unshown-ply')) === 'best';
      return { kind: 'moulded', thickness: best ? book.leastThickness().value : NO_WALL };
    }
  }
}

function outerGap(filling: Filling, design: Design): Nm {
  const { outerGap: gap } = design.core;
  if (isCoreOutOfReach(design, filling.choice)) return FAR;
  if (isKnown(gap)) return gap.value;
  // a core on a third circuit shuts ways, and of a bond that is not known it may be on any
  const owner = coreCircuit(design);
  const end =
    owner === null
      ? filling.unknown('core.outerGap', plainly('no-length'))
      : filling.room('core.outerGap', owner, plainly('no-length'));
  return end === 'best' ? FAR : nm(0);
}

function mouldingStuff(filling: Filling, book: Book, design: Design): StuffId {
  const { material } = design.former;
  const known = typeof material === 'string' ? groupOf(formerById(material)?.group ?? null) : material;
  const group = groupOrAssumed(filling, known, 'former.material');
  const id = typeof material === 'string' ? material : null;
  const { value, because: why } = book.shownPerMm(id);
  const isBest =
    id === null
      ? isBestField(filling.choice, 'former.material')
      : filling.unknown('former.material', { as: 'per-mm', peak: value }, 'house-rule') === 'best';
  return filling.stuffs.id({
    perMm: isBest ? Infinity : value,
    material: id,
    solid: nm(0),
    kind: 'wall',
    alike: 'moulding',
    group,
    strength: null,
    stated: false,
    thickness: nm(0),
    bonded: null,
    layers: null,
    because: because('moulding', { material: id, group }, [], [why]),
  });
}

function closedJoint(filling: Filling, proven: boolean): StuffId {
  // a short closed joint is one ply of unknown strength: functional at worst, basic at best
  const best = proven && filling.choice.at === 'best';
  return filling.stuffs.id({
    kind: 'closed-joint',
    perMm: 0,
    material: null,
    solid: nm(0),
    alike: 'closed joint',
    group: 'IIIb',
    strength: best ? 'whatever' : null,
    stated: false,
    thickness: nm(0),
    bonded: null,
    layers: null,
    because: because('closed-joint', { proven }),
  });
}

function fillLayer(
  filling: Filling,
  book: Book,
  design: Design,
  layer: Layer,
  index: number,
  wires: ReadonlyMap<string, BuildWire>,
  widths: Widths,
  startsAt: (winding: string) => Side,
): BuildLayer {
  const field = `layers[${index}]`;
  const margins = fillMargins(filling, book, layer, index, widths);
  const placed = { index, chamber: layer.chamber, margins };
  switch (layer.kind) {
    case 'winding': {
      const winding = design.windings.find(({ id }) => id === layer.winding)!;
      const w = design.windings.indexOf(winding);
      return {
        kind: 'winding',
        ...placed,
        winding: winding.id,
        circuit: winding.circuit,
        beside: layer.beside,
        turns: turnsOf(filling, design, layer, field, wires, margins),
        strands: layer.strands,
        spread: layer.spread,
        startsAt: startsAt(winding.id),
        wire: wires.get(winding.id)!,
        anchored: winding.anchored && isShown(design, `windings[${w}].anchored`),
        extent: layer.extent && { from: layer.extent.from.value, to: layer.extent.to.value },
      };
    }
    case 'tape':
      return {
        kind: 'tape',
        ...placed,
        ...fillSheet(filling, book, layer, field, { bonded: layer.bonded ? index : null }),
        inset: { left: layer.inset.left.value, right: layer.inset.right.value },
        cemented: layer.cemented && design.surroundings.proof === 'tested',
        turnUp: layer.turnUp && isShown(design, `${field}.turnUp`) ? layer.turnUp.value : nm(0),
      };
    case 'screen':
      return {
        kind: 'screen',
        ...placed,
        circuit: layer.circuit,
        id: layer.id ?? unusedName(design, `screen ${index + 1}`),
        // a screen of no thickness is there all the same
        thickness: nm(Math.max(1, layer.thickness.value)),
        overlap: layer.overlap && fillSheet(filling, book, layer.overlap, `${field}.overlap`),
        inset: { left: layer.inset.left.value, right: layer.inset.right.value },
      };
  }
}

/** Turns that nobody counted fill one row. */
function turnsOf(
  filling: Filling,
  design: Design,
  layer: WindingLayer,
  field: string,
  wires: ReadonlyMap<string, BuildWire>,
  margins: Record<Side, BuildMargin>,
): number {
  if (typeof layer.turns === 'number') return layer.turns;
  filling.unknown(`${field}.turns`, plainly('full-row'));
  const { extent } = layer;
  const width =
    extent === null
      ? design.former.chambers[layer.chamber]!.width.value - margins.left.width - margins.right.width
      : extent.to.value - extent.from.value;
  return Math.max(1, Math.floor(width / (wires.get(layer.winding)!.overall * layer.strands)));
}

/** A name that no circuit, part or other screen has. */
function unusedName({ circuits, parts, layers }: Design, wish: string): string {
  const named = layers.map((layer) => (layer.kind === 'screen' ? layer.id : null));
  const taken = [...circuits.map(({ id }) => id), ...parts.map(({ id }) => id), ...named];
  let name = wish;
  while (taken.includes(name)) name += '*';
  return name;
}

/** Credit only where an entry of evidence names the field. */
const isShown = (design: Design, field: string): boolean =>
  design.evidence.some((entry) => entry.fields.includes(field));

function fillMargins(
  filling: Filling,
  book: Book,
  layer: Layer,
  index: number,
  widths: Widths,
): Record<Side, BuildMargin> {
  const fill = (side: Side): BuildMargin => {
    const margin = layer.margins[side];
    return {
      width: widths[side],
      filled: margin.filled,
      height: margin.height?.value ?? null,
      moulded: margin.moulded,
      ...fillBlock(filling, book, margin, `layers[${index}].margins.${side}`),
    };
  };
  return { left: fill('left'), right: fill('right') };
}

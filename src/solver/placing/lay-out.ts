// From a complete build to its cross-sections: the plain one, one for every lead-out, one for every two leads of
// different circuits at the same side of a chamber, and each of them again after handling has had its way.
// Coordinates as in section.ts; nothing here knows a standard: the least thickness comes in as an option.

import type { Build, BuildLayer, Lay } from '#solver/section/build.ts';
import { Bodies, Draft } from '#solver/section/draft.ts';
import { type PlacedBuild, placedBuild } from '#solver/section/placement.ts';
import type { Band, Section } from '#solver/section/section.ts';
import { type Slump, circuitOf, facesLooseEnd, isRetained, wanders } from '#solver/stack/displacement.ts';
import type { SleeveStrength } from '#solver/stack/lead-shape.ts';
import { chamberBeyond, risersOf } from '#solver/stack/risers.ts';
import { stackOf, topOf } from '#solver/stack/stack.ts';
import { type Nm, nm } from '#units/quantity.ts';
import { layBand } from './lay-chamber.ts';
import { layCore, layFormer } from './lay-former.ts';
import { layRiser } from './lead-runs.ts';
import type { LaidBand, LaidParts, LaidShell, Laying } from './placing.ts';
import { hasVoid, voidsOf } from './voids.ts';

/** A riser in a strong sleeve displaces nothing. */
export type LayOutOptions = SleeveStrength;

/** The section without a lead and with nothing moved. */
export const plainSection = (build: Build, options: LayOutOptions): Section =>
  layOut(placedBuild(build), [], DRAWN, options, newParts());

/** All sections of a build, the plain one first; a slumped section that equals its own is left out. */
export const sectionsOf = (build: Build, options: LayOutOptions): readonly Section[] => [
  ...sectionsIn(build, new LayOut(build, options)),
];

export function* sectionsIn(build: Build, layOut: LayOut): Generator<Section, void, void> {
  for (const lays of laySets(build)) yield* layOut.with(lays);
}

/** Those in which just the leads of these names are laid in; none where the build has no such section. */
export function sectionsWith(names: readonly string[], build: Build, layOut: LayOut): readonly Section[] {
  const lays = build.lays.filter(({ name }) => names.includes(name));
  return lays.length === names.length && isLaySet(build, lays) ? layOut.with(lays) : [];
}

/**
 * The slumped sections in which only what belongs to these circuits, and what belongs to none, has moved: a loose part of
 * another circuit may shut a way by having moved. None where all else lies as it was drawn anyway.
 */
export const sectionsMovedAlone = (
  build: Build,
  circuits: readonly string[],
  options: LayOutOptions,
): readonly Section[] => [...sectionsIn(build, new LayOut(build, options, circuits))];

/** The sections of builds that have all but their leads in common, each laid out when it is asked for and kept. Hence a class. */
export class LayOut {
  readonly #placed: PlacedBuild;
  readonly #options: LayOutOptions;
  /** Null: nothing of other circuits has moved, so that all lie as they do anyway. */
  readonly #handled: ReturnType<typeof handlingOf> | null;
  readonly #isAlone: boolean;
  readonly #parts = newParts();
  readonly #made = new Map<string, readonly Section[]>();

  /** `circuits`: see `sectionsMovedAlone`; null: as drawn, and with all that may move moved. */
  constructor(build: Build, options: LayOutOptions, circuits: readonly string[] | null = null) {
    this.#placed = placedBuild(build);
    this.#options = options;
    this.#isAlone = circuits !== null;
    this.#handled =
      circuits === null ? handlingOf(this.#placed, EVERYTHING) : movedAlone(this.#placed, circuits);
  }

  /** With just these leads laid in, of one of those builds. */
  with(lays: readonly Lay[]): readonly Section[] {
    const key = lays.map(toldLay).join();
    const made = this.#made.get(key) ?? this.#make(lays);
    this.#made.set(key, made);
    return made;
  }

  #make(lays: readonly Lay[]): readonly Section[] {
    if (this.#handled === null) return [];
    const { isLoose, ways } = this.#handled;
    const laid = (handling: Handling) => layOut(this.#placed, lays, handling, this.#options, this.#parts);
    if (this.#isAlone) return isLoose || hasVoid(laid(DRAWN)) ? ways.map(laid) : [];
    const own = laid(DRAWN);
    return [own, ...(isLoose || hasVoid(own) ? ways.map(laid) : [])];
  }
}

/** All that a lead lays into a section. */
function toldLay(lay: Lay): string {
  const told = TOLD.get(lay) ?? JSON.stringify(lay);
  TOLD.set(lay, told);
  return told;
}

/** What is told of an object that never changes. */
const TOLD = new WeakMap<Lay, string>();

function movedAlone(placed: PlacedBuild, circuits: readonly string[]): ReturnType<typeof handlingOf> | null {
  const isOwn = (layer: BuildLayer): boolean => {
    const circuit = circuitOf(layer);
    return circuit === null || circuits.includes(circuit);
  };
  if (!handlingOf(placed, { moved: [], moves: (layer) => !isOwn(layer) }).isLoose) return null;
  return handlingOf(placed, { moved: circuits, moves: isOwn });
}

/** What handling may have moved, and how. */
interface Handling extends Movable {
  readonly slump: Slump;
}

interface Movable {
  /** The circuits of which something may have moved, besides what belongs to none; null: all. */
  readonly moved: readonly string[] | null;
  readonly moves: (layer: BuildLayer) => boolean;
}

const newParts = (): LaidParts => ({ bodies: new Bodies(), bands: new Map(), shells: new Map() });

const EVERYTHING: Movable = { moved: null, moves: () => true };

const DRAWN: Handling = { ...EVERYTHING, slump: null };

/** The ways in which what may move can have moved, and whether anything has. */
function handlingOf(placed: PlacedBuild, movable: Movable) {
  const layers = placed.build.layers.filter(movable.moves);
  const ends = layers.flatMap((layer) =>
    layer.kind === 'winding' ? (['left', 'right'] as const).map((side) => ({ layer, side })) : [],
  );
  const isLoose = ends.some(({ layer, side }) => !isRetained(placed, layer, side));
  const goesEitherWay =
    layers.some((layer) => wanders(placed, layer)) ||
    ends.some(
      ({ layer, side }) =>
        !isRetained(placed, layer, side) && facesLooseEnd(placed, layer, side, movable.moves),
    );
  const slumps: readonly Slump[] = goesEitherWay ? ['left', 'right'] : ['as-is'];
  return {
    isLoose: isLoose || goesEitherWay,
    ways: slumps.map((slump): Handling => ({ ...movable, slump })),
  };
}

/** No lead; each lead alone; every two leads of different circuits that leave at one side of a chamber. */
function* laySets(build: Build): Generator<readonly Lay[], void, void> {
  const { lays, past } = build;
  const isAsked = (set: readonly Lay[]) => !past || set.some(({ group }) => past.groups.includes(group));
  yield* [[], ...lays.map((lay) => [lay])].filter(isAsked);
  yield* neighbourLays(build).filter(areLaidTogether).filter(isAsked);
}

const isLaySet = (build: Build, lays: readonly Lay[]): boolean =>
  lays.length < 2 || neighbourLays({ ...build, lays }).some(areLaidTogether);

/** A stated distance apart stands for two leads side by side. */
const areLaidTogether = ([a, b]: readonly [Lay, Lay]): boolean => a.apart === null && b.apart === null;

/** Every two leads of different circuits that lie at one side of a chamber, those through a divider at either of its faces. */
export function neighbourLays(build: Build): readonly (readonly [Lay, Lay])[] {
  const { lays, layers } = build;
  const sides = lays.map((lay) => {
    const { chamber } = layers[lay.layer]!;
    const beyond = lay.kind === 'link' ? null : chamberBeyond(build, chamber, lay.exit);
    const behind = lay.exit === 'left' ? 'right' : 'left';
    return [`${chamber} ${lay.exit}`, ...(beyond === null ? [] : [`${beyond} ${behind}`])];
  });
  const sidesOf = new Map(lays.map((lay, i) => [lay, sides[i]!]));
  const meet = (a: Lay, b: Lay) =>
    a.circuit !== b.circuit &&
    a.group !== b.group &&
    sidesOf.get(a)!.some((side) => sidesOf.get(b)!.includes(side));
  return lays.flatMap((a, i) => lays.slice(i + 1).flatMap((b) => (meet(a, b) ? [[a, b] as const] : [])));
}

/** One section. */
function layOut(
  placed: PlacedBuild,
  lays: readonly Lay[],
  handling: Handling,
  options: LayOutOptions,
  parts: LaidParts,
): Section {
  const { build, faces } = placed;
  const { slump, moves } = handling;
  const draft = new Draft(build, parts.bodies);
  const stacks = faces.map((_, chamber) => stackOf(placed, chamber, lays));
  const risers = risersOf(placed, lays, stacks, options);
  const bands: Band[] = [];
  const laidBands = parts.bands.get(handling) ?? new Map<string, LaidBand>();
  parts.bands.set(handling, laidBands);
  const laying: Laying = { draft, placed, risers, slump, moves, bands, laidBands };
  stacks.forEach((stack, chamber) => stack.forEach((band) => layBand(laying, chamber, band)));
  risers.forEach((riser) => layRiser(laying, riser));
  const top = nm(Math.max(0, ...stacks.map(topOf)));
  const { regions, frame, coreAbove } = shellOf(build, top, lays.length > 0, parts);
  draft.take(regions);
  return {
    name: nameOf(lays, handling),
    kind: lays.length > 0 ? 'lead' : 'plain',
    slumped: slump,
    ...(handling.moved === null ? {} : { moved: handling.moved }),
    lays: lays.map((lay) => lay.name),
    regions: draft.regions,
    parts: draft.parts(),
    bands,
    frame,
    sagging: slump === null ? [] : voidsOf(bands, faces),
    potted: build.potted,
    chambers: faces,
    stackTops: stacks.map(topOf),
    coreAbove,
  };
}

/** Former and core, laid once for all sections of which the stack is as high. */
function shellOf(build: Build, top: Nm, openSides: boolean, { bodies, shells }: LaidParts): LaidShell {
  const key = `${top} ${openSides}`;
  const known = shells.get(key);
  if (known) return known;
  const draft = new Draft(build, bodies);
  layFormer(draft);
  const shell = { regions: draft.regions, ...layCore(draft, top, openSides) };
  shells.set(key, shell);
  return shell;
}

function nameOf(lays: readonly Lay[], { slump, moved }: Handling): string {
  const how = slump === 'as-is' ? 'slumped' : `slumped ${slump}`;
  const slumped = moved === null ? how : `${how}, only ${moved.join(' and ')} moved`;
  if (lays.length === 0) return slump === null ? 'plain' : slumped;
  const leads = `${lays.length > 1 ? 'leads' : 'lead'} ${lays.map((lay) => lay.name).join(' + ')}`;
  return slump === null ? leads : `${leads}, ${slumped}`;
}

// The drawing of one section as plain data: what lies where, in millimetres, under role names instead of colours.
// x runs along the axis, y outward from the tube (upward on paper). Both renderers (SVG and the page's canvas) draw this.

import type { Section } from '#solver/section/section.ts';
import type { Turn } from '#solver/placing/turns.ts';
import type { Design } from '#model/design.ts';
import type { Judgement } from '#judge/judge.ts';
import { inMm } from '#units/quantity.ts';
import { areasOf, boundsOf } from './scene-areas.ts';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import { flagsOf, type Flag } from './scene-flags.ts';
import { countedNotes, notesOf, type Note } from './scene-notes.ts';
import type { Box, Point } from './outline.ts';
import type { MaterialKey } from './palette.ts';
import { sectionWords } from '#words/design/section-words.ts';
import { unknownPlaces, withUnknowns, type UnknownPlace } from './scene-unknown.ts';
import { otherPathScales, pathScaleOf, type PathScale } from './path-scale.ts';

export interface Scene {
  readonly section: string;
  /** `Plain section` and `no lead in it, nothing slumped`. */
  readonly title: string;
  readonly says: string;
  /** Everything drawn, the core's frame included. */
  readonly frame: Box;
  readonly looks: readonly CircuitLook[];
  /** In the order of painting. */
  readonly areas: readonly Area[];
  readonly turns: readonly TurnCircle[];
  /** One letter on each winding, screen and lead-out that has a circuit. */
  readonly letters: readonly Letter[];
  /** Where each layer of the file lies, for leader lines and for picking. */
  readonly layers: readonly LayerPlace[];
  /** Spans of the two rulers: chamber width and stack height. */
  readonly rulers: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
  /** The path that was asked for, where it lies on this section. */
  readonly path: PathScale | null;
  /** Limiting paths of the other pairs on this section. */
  readonly otherPaths: readonly PathScale[];
  readonly flags: readonly Flag[];
  readonly notes: readonly Note[];
  readonly unknowns: readonly UnknownPlace[];
}

/** A filled figure with one outline, holes included. */
export interface Area {
  readonly id: string;
  /** `counted`: room round a lead in which the worst case counts bare metal. */
  readonly kind: MaterialKey | 'turns' | 'lead' | 'counted' | 'screen';
  readonly layer: number | null;
  /** Id of a circuit; null for solids, the core and what floats. */
  readonly circuit: string | null;
  readonly loops: readonly (readonly Point[])[];
  readonly bounds: Box;
  /** Nobody measured or saw it: drawn dashed, as it was counted. */
  readonly isUnknown?: boolean;
}

export interface TurnCircle {
  readonly x: number;
  readonly y: number;
  /** Diameters. */
  readonly overall: number;
  readonly conductor: number;
  readonly circuit: string;
  readonly layer: number;
}

export interface Letter {
  readonly at: Point;
  readonly letter: string;
  readonly circuit: string;
  readonly layer: number | null;
}

export interface LayerPlace extends Box {
  readonly layer: number;
  readonly chamber: number;
  readonly kind: 'winding' | 'tape' | 'screen';
}

/** What a drawing is made from, for the rooms that do not see the rules. */
export type Drawable = Judgement;

export interface SceneChoices {
  /** The pair whose limiting path is drawn; null: the worst pair. */
  readonly pair?: readonly [string, string] | null;
  /** Draws the path of this spot (its place in `weakSpots`) instead. */
  readonly spot?: number | null;
  /** Draws this one of the pair's printed paths instead of its limiting one. */
  readonly printed?: number | null;
  /** How many flags of spots on other sections are shown. */
  readonly elsewhere?: number;
}

const ELSEWHERE = 3;

/** Null where no section has that name. */
export function sceneOf(
  design: Design,
  judgement: Judgement,
  sectionName: string,
  choices: SceneChoices = {},
): Scene | null {
  const section = judgement.sections.find(({ name }) => name === sectionName);
  if (section === undefined) return null;
  const looks = circuitLooks(design.circuits);
  const turns = judgement.turns.get(section.name) ?? [];
  const wireOf = (layer: number): number | null => {
    const turn = turns.find((each) => each.layer === layer);
    return turn === undefined ? null : inMm(turn.overall);
  };
  const areas = withUnknowns(areasOf(section, wireOf), design, section);
  const frame = boundsOf([boxInMm(section.frame), ...areas.map(({ bounds }) => bounds)]);
  const rulers = rulersOf(section);
  const path = pathScaleOf(judgement.verdict, section.name, choices, rulers.x);
  return {
    section: section.name,
    ...sectionWords(section),
    frame,
    looks,
    areas,
    turns: turns.map(circleOf),
    letters: lettersOf(section, looks),
    layers: layersOf(section),
    rulers,
    path,
    otherPaths: otherPathScales(judgement.verdict, section.name, path, rulers.x),
    flags: flagsOf(judgement.verdict.weakSpots, section.name, frame, choices.elsewhere ?? ELSEWHERE),
    notes: [...notesOf(design, section), ...countedNotes(areas)],
    unknowns: unknownPlaces(design, section),
  };
}

const boxInMm = (box: Section['frame']): Box => ({
  x0: inMm(box.x0),
  y0: inMm(box.y0),
  x1: inMm(box.x1),
  y1: inMm(box.y1),
});

const circleOf = (turn: Turn): TurnCircle => ({
  x: inMm(turn.x),
  y: inMm(turn.y),
  overall: inMm(turn.overall),
  conductor: inMm(turn.conductor),
  circuit: turn.circuit,
  layer: turn.layer,
});

/** On the widest conductor of each circuit in each layer, so that no letter stands twice in a row. */
function lettersOf(section: Section, looks: readonly CircuitLook[]): readonly Letter[] {
  const widest = new Map<string, { readonly width: number; readonly letter: Letter }>();
  for (const region of section.regions) {
    if (region.kind !== 'conductor' || region.of === 'core') continue;
    const look = looks.find(({ circuit }) => circuit === region.conductor);
    if (look === undefined) continue;
    const part = region.of === 'winding' || region.of === 'screen' ? 'turns' : region.of;
    const key = `${region.layer} ${part} ${region.conductor}`;
    const width = region.x1 - region.x0;
    if (width <= (widest.get(key)?.width ?? 0)) continue;
    const at: Point = [inMm(region.x0) + inMm(region.x1), inMm(region.y0) + inMm(region.y1)].map(
      (sum) => sum / 2,
    ) as unknown as Point;
    widest.set(key, {
      width,
      letter: { at, letter: look.letter, circuit: look.circuit, layer: region.layer },
    });
  }
  return [...widest.values()].map(({ letter }) => letter);
}

function layersOf(section: Section): readonly LayerPlace[] {
  return section.bands.flatMap((band) =>
    band.kind === 'crossing-lead'
      ? []
      : [
          {
            layer: band.layer,
            chamber: band.chamber,
            kind: band.kind,
            ...boxInMm(band),
          },
        ],
  );
}

function rulersOf(section: Section): Scene['rulers'] {
  const ends = section.chambers.flatMap(({ x0, x1 }) => [inMm(x0), inMm(x1)]);
  const tops = section.regions.flatMap((region) => (region.kind === 'moulding' ? [inMm(region.y1)] : []));
  const stacks = section.stackTops.map(inMm);
  return { x: [Math.min(0, ...ends), Math.max(0, ...ends)], y: [0, Math.max(0, ...tops, ...stacks)] };
}

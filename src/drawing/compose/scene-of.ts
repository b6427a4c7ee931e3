// Composes the drawing of one section of a judged build.

import type { Section } from '#solver/section/section.ts';
import type { Turn } from '#solver/placing/turns.ts';
import type { Design } from '#model/design.ts';
import type { Judgement } from '#judge/judging/judge.ts';
import { inMm } from '#units/quantity.ts';
import { areasOf, boundsOf } from './scene-areas.ts';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import { flagsOf } from './scene-flags.ts';
import { countedNotes, notesOf } from './scene-notes.ts';
import type { Box, Point } from '#drawing/scene/outline.ts';
import type { LayerPlace, Letter, Scene, SceneChoices, TurnCircle } from '#drawing/scene/scene.ts';
import { sectionWords } from '#words/design/section-words.ts';
import { unknownPlaces, withUnknowns } from './scene-unknown.ts';
import { otherPathScales, pathScaleOf } from '#drawing/path/path-scale.ts';

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

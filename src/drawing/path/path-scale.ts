// A path laid out as a scale: one millimetre filled, one hollow, so that its length is counted, not believed.
// What is missing goes on as a shortfall beyond one end. All in millimetres on the section.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { Point } from '#drawing/scene/outline.ts';
import { shortfallOf, type Width } from './shortfall.ts';
import type { SceneChoices, PathScale, ScalePiece } from '#drawing/scene/scene.ts';
import { chosenPath, limitingPath, type ChosenPath } from './chosen-path.ts';

/** The path that the choices name, where it lies on this section; else null. */
export function pathScaleOf(
  verdict: Verdict,
  sectionName: string,
  choices: SceneChoices,
  width: Width,
): PathScale | null {
  const chosen = chosenPath(verdict, sectionName, choices);
  return chosen === null ? null : laidOut(chosen, width);
}

/** The limiting paths on this section of every pair that asks something, but for the pair already drawn. */
export function otherPathScales(
  verdict: Verdict,
  sectionName: string,
  drawn: PathScale | null,
  width: Width,
): readonly PathScale[] {
  return verdict.pairs.flatMap((pair) => {
    const { between, required, verdict: answer } = pair;
    const limiting = leadingPath(pair);
    if (limiting === null || required === null || limiting.section !== sectionName) return [];
    if (drawn !== null && drawn.between.every((id) => between.includes(id))) return [];
    const path = limitingPath(between, limiting, answer === 'falls-short');
    const scale = path === null ? null : laidOut(path, width);
    return scale === null ? [] : [scale];
  });
}

function laidOut(path: ChosenPath, width: Width): PathScale | null {
  const [first, last] = [path.legs[0], path.legs.at(-1)];
  if (first === undefined || last === undefined) return null;
  const { legs } = path;
  return {
    between: path.between,
    metric: path.metric,
    legs,
    pieces: piecesOf(legs),
    uncounted: legs.flatMap((leg, k) =>
      (leg.length === 0 || leg.counts === false) && leg.plies === 0 && !same(leg.from, leg.to)
        ? [{ leg: k, from: leg.from, to: leg.to }]
        : [],
    ),
    punctures: legs.flatMap((leg, k) =>
      leg.plies > 0 ? [{ leg: k, from: leg.from, to: leg.to, plies: leg.plies }] : [],
    ),
    ends: [first.from, last.to],
    shortfall: shortfallOf(path, width),
    length: path.length,
    required: path.required,
    short: path.short,
  };
}

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** Cuts every leg where the counted length passes a whole millimetre. */
function piecesOf(legs: readonly PathLeg[]): readonly ScalePiece[] {
  const pieces: ScalePiece[] = [];
  let walked = 0;
  legs.forEach((leg, k) => {
    if (leg.length === 0 || leg.counts === false) return;
    let done = 0;
    while (leg.length - done > EPSILON_MM) {
      const place = Math.floor(walked + EPSILON_MM);
      const step = Math.min(leg.length - done, place + 1 - walked);
      const [from, to] = [along(leg, done), along(leg, done + step)];
      done += step;
      walked += step;
      const tick = Math.abs(walked - Math.round(walked)) < EPSILON_MM;
      pieces.push({ leg: k, from, to, filled: place % 2 === 0, tick });
    }
  });
  return pieces;
}

/** A millionth of a millimetre is the unit of every length; half of it separates two. */
const EPSILON_MM = 5e-7;

/** The place on the drawing after `done` of a leg's counted length. */
function along(leg: PathLeg, done: number): Point {
  const part = done / leg.length;
  return [leg.from[0] + (leg.to[0] - leg.from[0]) * part, leg.from[1] + (leg.to[1] - leg.from[1]) * part];
}

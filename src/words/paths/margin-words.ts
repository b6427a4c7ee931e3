// The one sentence for a path that runs out along one margin and back along another: which winding begins too near
// its flange, and where it would have to begin.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import { isWhatever, leadingPath } from './leading-path.ts';
import { lengthDown, lengthUp } from '#words/text/number-words.ts';

/** Null where the limiting path is not of that kind. `nameOf` gives the circuit's name. */
export function marginSentence(pair: PairVerdict, nameOf: (circuit: string) => string): string | null {
  const { between } = pair;
  const limiting = leadingPath(pair);
  if (pair.verdict !== 'falls-short' || !limiting?.length || limiting.required === null) return null;
  if (limiting.plies > 0 || limiting.over.length > 0) return null;
  const { legs } = limiting;
  const [first, last] = [legs[0], legs.at(-1)];
  const rounds = legs.some(
    ({ course }) => course !== null && 'what' in course && course.what === 'tape-edges-at-flange',
  );
  if (!rounds || !first || !last || ![first, last].every(isAlongMargin)) return null;
  // the narrower margin is the one to widen
  const [leg, circuit, end, face] =
    last.length <= first.length
      ? [last, between[1], last.to, last.from]
      : [first, between[0], first.from, first.to];
  const side = end[0] > face[0] ? 'left' : 'right';
  const wanted = leg.length + limiting.required - limiting.length;
  const winding = `The ${inSentence(nameOf(circuit))} winding`;
  return (
    `${winding} begins ${lengthDown(leg.length)} ${lengthUnit()} from the ${side} flange; it would have to begin at ` +
    `${lengthUp(wanted)}. ${stands(pair, limiting.grade)}; ${pair.needed} is asked.`
  );
}

const stands = (pair: PairVerdict, grade: string): string =>
  isWhatever(pair)
    ? `Whatever the unknowns are, at most ${grade} insulation stands there`
    : `${capitalised(pair.achieved)} insulation stands there`;

const isAlongMargin = ({ course, length }: PathLeg): boolean =>
  course?.by === 'along' && course.what === 'margin' && length > 0;

/** A plain word loses its capital; names such as `12 V` stay. */
const inSentence = (name: string): string => (/^[A-Z][a-z]+$/.test(name) ? name.toLowerCase() : name);

const capitalised = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

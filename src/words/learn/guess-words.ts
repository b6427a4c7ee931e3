// What a pupil said against what the solver found, line by line, and why they differ: told from the reasons of the judgement.
// Nothing here knows an answer: every figure is the judge's.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { DrawnWay } from '#learn/lesson/drawn-way.ts';
import type { PathLeg } from '#judge/verdict/path.ts';
import type { Limiting, PairVerdict } from '#judge/verdict/pair.ts';
import type { Grade } from '#units/terms.ts';
import { dimension, lengthDown, lengthUp, plies } from '#words/text/number-words.ts';
import { gradeHeight } from '#words/verdict/grade-height.ts';
import { leadingPath } from '#words/paths/leading-path.ts';
import { pathParts } from '#words/paths/path-words.ts';

/** Null where it was not asked, or the answer was that one does not know. */
export interface Said {
  readonly way: DrawnWay | null;
  /** Millimetres. */
  readonly length: number | null;
  readonly grade: Grade | null;
}

export interface GuessLine {
  readonly what: 'way' | 'length' | 'grade';
  readonly said: string;
  readonly is: string;
  /** Empty where nothing was said. */
  readonly differs: string;
  readonly isOther: boolean;
}

type WayKind = 'through' | 'round' | 'core' | 'along' | 'touch' | 'part';

const WAYS: Readonly<Record<WayKind, string>> = {
  through: 'through the tape',
  round: 'round its edge, at the flange',
  core: 'over the core',
  along: 'along surfaces and air',
  touch: 'they touch',
  part: 'over a part that bridges them',
};
const NOT_SAID = 'not said';
/** Hundredths of a millimetre are counted; half of one more is the same. */
const SAME_MM = 0.015;

export function guessLines(
  asked: readonly GuessLine['what'][],
  said: Said,
  pair: PairVerdict,
): readonly GuessLine[] {
  const leading = leadingPath(pair);
  return asked.map((what) =>
    what === 'way'
      ? wayLine(said.way, leading)
      : what === 'length'
        ? lengthLine(said.length, leading)
        : gradeLine(said.grade, pair.achieved),
  );
}

function wayLine(way: DrawnWay | null, leading: Limiting | null): GuessLine {
  const [drawn, found] = [way === null ? null : drawnKind(way), foundKind(leading)];
  return {
    what: 'way',
    said: drawn === null ? NOT_SAID : WAYS[drawn],
    is: WAYS[found],
    differs: drawn === null ? '' : drawn === found ? 'the same' : 'other',
    isOther: drawn !== null && drawn !== found,
  };
}

function lengthLine(said: number | null, leading: Limiting | null): GuessLine {
  const length = leading?.length ?? null;
  const apart = said === null || length === null ? null : length - said;
  return {
    what: 'length',
    said: said === null ? NOT_SAID : `${dimension(said)} ${lengthUnit()}`,
    is: length === null ? 'no length: a solid alone' : `${lengthDown(length)} ${lengthUnit()}`,
    differs:
      said === null
        ? ''
        : apart === null
          ? 'other'
          : Math.abs(apart) < SAME_MM
            ? 'the same'
            : `${lengthDown(Math.abs(apart))} ${apart > 0 ? 'more' : 'less'}`,
    isOther: said !== null && (apart === null || Math.abs(apart) >= SAME_MM),
  };
}

function gradeLine(said: Grade | null, is: Grade): GuessLine {
  const rungs = said === null ? 0 : gradeHeight(is) - gradeHeight(said);
  const count = ['no', 'one', 'two', 'three', 'four'][Math.abs(rungs)] ?? String(Math.abs(rungs));
  return {
    what: 'grade',
    said: said ?? NOT_SAID,
    is,
    differs: said === null ? '' : rungs === 0 ? 'the same' : `${count} ${rungs > 0 ? 'higher' : 'lower'}`,
    isOther: rungs !== 0,
  };
}

const drawnKind = (way: DrawnWay): WayKind =>
  way.isOverCore ? 'core' : way.plies > 0 ? 'through' : way.isAtFlange ? 'round' : 'along';

function foundKind(leading: Limiting | null): WayKind {
  if (leading === null) return 'touch';
  if (leading.bridge !== null) return 'part';
  if (leading.over.includes('core')) return 'core';
  if (leading.legs.some((leg) => leg.plies > 0)) return 'through';
  if (leading.legs.some(isAtFlange)) return 'round';
  return leading.length === 0 ? 'touch' : 'along';
}

const isAtFlange = ({ course }: PathLeg): boolean =>
  course !== null && 'what' in course && (course.what === 'tape-edges-at-flange' || course.what === 'flange');

/** Why what was said differs, one sentence for each line that does. */
export function differences(said: Said, pair: PairVerdict): readonly string[] {
  const leading = leadingPath(pair);
  return [
    wayDiffers(said.way, pair, leading),
    lengthDiffers(said.length, leading),
    gradeDiffers(said.grade, pair, leading),
  ].filter((sentence) => sentence !== null);
}

/** What the drawn way is worth, where the judge knows the shortest of its kind. */
function wayDiffers(way: DrawnWay | null, pair: PairVerdict, leading: Limiting | null): string | null {
  if (way === null || drawnKind(way) === foundKind(leading)) return null;
  if (drawnKind(way) !== 'through')
    return `Your line runs ${WAYS[drawnKind(way)]}; a weaker way is there: ${WAYS[foundKind(leading)]}.`;
  const through = pair.paths.find(
    (path) => path.plies >= way.plies && path.legs.some((leg) => leg.plies > 0),
  );
  const worth = through?.grade == null ? '' : `; that way is worth ${through.grade}`;
  return `Your line goes through ${plies(way.plies)}${worth}. The weakest way goes through none.`;
}

const countedOf = (leg: PathLeg | undefined): number =>
  leg === undefined || leg.counts === false ? 0 : leg.length;

/** The pieces that the figure leaves out, or has too many; found where it is the sum of some of them. */
function lengthDiffers(said: number | null, leading: Limiting | null): string | null {
  if (said === null || leading?.length == null || Math.abs(said - leading.length) < SAME_MM) return null;
  const parts = pathParts(leading.legs).map(({ text, legs }) => ({
    text,
    length: legs.reduce((sum, place) => sum + countedOf(leading.legs[place]), 0),
  }));
  const sum = parts
    .filter(({ length }) => length > 0)
    .map(({ length }) => lengthDown(length))
    .join(' + ');
  const whole = `The way is ${sum} = ${lengthDown(leading.length)} ${lengthUnit()}`;
  const left = parts.find(({ length }) => length > 0 && Math.abs(leading.length! - length - said) < SAME_MM);
  const only = parts.find(({ length }) => length > 0 && Math.abs(length - said) < SAME_MM);
  if (left !== undefined) return `${whole}; yours leaves out “${left.text}”.`;
  if (only !== undefined && parts.length > 1) return `${whole}; yours has only “${only.text}”.`;
  return `${whole}.`;
}

/** What each grade asks of the length that stands. */
function gradeDiffers(said: Grade | null, pair: PairVerdict, leading: Limiting | null): string | null {
  if (said === null || gradeHeight(said) === gradeHeight(pair.achieved)) return null;
  const metric = leading?.metric === 'clearance' ? 'clearance' : 'creepage';
  const asked = pair.required?.[metric];
  if (asked === undefined || leading === null) return null;
  if (leading.bridge !== null)
    return `What bridges them, ${leading.bridge}, is worth ${leading.grade}, and no way beside it can be worth more.`;
  if (leading.legs.some((leg) => leg.plies > 0) || leading.length === null || leading.length === 0)
    return `What lies between them there is worth ${leading.grade}${leading.plies > 0 ? `: ${plies(leading.plies)}` : ''}.`;
  const words = metric === 'creepage' ? 'along surfaces' : 'through air';
  const both = asked.basic === null || asked.reinforced === null;
  return both
    ? `${lengthDown(leading.length)} ${lengthUnit()} stand ${words}; the rule book has no figure for so much voltage.`
    : `${lengthDown(leading.length)} ${lengthUnit()} stand ${words}; basic asks ${lengthUp(asked.basic)}, reinforced ${lengthUp(asked.reinforced)}.`;
}

// A path told piece by piece, each piece tied to the legs that it speaks of, so that they can light up as it is read.

import type { LegCourse, PathLeg } from '#judge/verdict/path.ts';
import { unreachable } from '#units/unreachable.ts';
import { lengthDown, plies } from '#words/text/number-words.ts';

export interface PathPart {
  readonly text: string;
  /** Places in the path's legs. */
  readonly legs: readonly number[];
}

/** Neighbouring legs that say the same are told together. */
export function pathParts(legs: readonly PathLeg[]): readonly PathPart[] {
  const groups: { readonly legs: number[]; readonly leg: PathLeg }[] = [];
  legs.forEach((leg, place) => {
    const last = groups.at(-1);
    if (last !== undefined && tellsTheSame(last.leg, leg)) {
      last.legs.push(place);
      groups[groups.length - 1] = { legs: last.legs, leg: together(last.leg, leg) };
    } else groups.push({ legs: [place], leg });
  });
  return groups.map(({ legs: places, leg }) => ({ text: `${legWords(leg)}${uncounted(leg)}`, legs: places }));
}

export const pathSentence = (legs: readonly PathLeg[]): string =>
  pathParts(legs)
    .map(({ text }) => text)
    .join(', ');

const tellsTheSame = (a: PathLeg, b: PathLeg): boolean =>
  (a.kind === b.kind && a.counts === b.counts && courseWords(a) === courseWords(b)) ||
  (throughPlies(a) && throughPlies(b));

/** What a path goes through, told once each: `2 plies`, `the margin block`. */
export function solidsCrossed(legs: readonly PathLeg[]): readonly string[] {
  const through = legs.filter(({ kind }) => kind === 'through');
  const count = through.filter(throughPlies).reduce((sum, leg) => sum + leg.plies, 0);
  const named = through.filter((leg) => !throughPlies(leg)).map(solidWords);
  // also straight through compound
  const closed = legs.some(({ kind }) => kind === 'closed-joint') ? ['a short closed joint'] : [];
  return [...(count === 0 ? [] : [plies(count)]), ...new Set(named), ...closed];
}

/** `a, b and c` */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** Told by their number, however many of them the judgement put into one leg. */
const throughPlies = ({ kind, course }: PathLeg): boolean =>
  kind === 'through' && (course?.by !== 'through' || course.what === 'plies');

const together = (a: PathLeg, b: PathLeg): PathLeg => ({
  ...a,
  to: b.to,
  length: a.length + b.length,
  plies: a.plies + b.plies,
});

/** Millimetres. Ways past a corner come as near as one likes; less than this is told without its length. */
const HAIR = 0.005;

/** Else the pieces told do not add up to the length told. */
const uncounted = (leg: PathLeg): string =>
  leg.counts === false && leg.length >= HAIR ? ' (too short, counts nothing)' : '';

const isHair = ({ length }: PathLeg): boolean => length > 0 && length < HAIR;

function legWords(leg: PathLeg): string {
  const length = lengthDown(leg.length);
  if (leg.kind === 'surface' && isHair(leg)) return `past ${surfaceWords(leg)}`;
  const words = courseWords(leg);
  // a contact has no length to tell
  if (leg.length === 0 && leg.kind === 'surface') return words === '' ? 'in contact' : words;
  switch (leg.kind) {
    case 'surface':
      return `${length} ${words === '' ? 'along a surface' : words}`;
    case 'air':
      return `${length} through air`;
    case 'through':
      return throughPlies(leg) ? `through ${plies(leg.plies)}` : words;
    case 'closed-joint':
      return words === '' ? `through a closed joint of ${length}` : words;
    case 'over':
      return words === '' ? 'over a conductor' : words;
    default:
      return unreachable(leg.kind);
  }
}

/** Where a leg runs: `along the margin`, `up the tape edges at the flange`; empty where that is not known. */
export function courseWords(leg: PathLeg): string {
  const { course } = leg;
  switch (course?.by) {
    case undefined:
      return '';
    case 'air':
      return 'through air';
    case 'closed-joint':
      return 'through a closed joint';
    case 'contact':
      return 'in contact';
    case 'over':
      return course.conductor === 'core' ? 'over the core' : `over ${course.conductor}`;
    case 'through':
      return `through ${solidWords(leg)}`;
    case 'along': {
      const way = course.what === 'former' ? 'over' : 'along';
      return `${course.back ? 'back ' : ''}${way} ${surfaceWords(leg)}`;
    }
    case 'up':
    case 'down':
      return `${course.by} ${surfaceWords(leg)}`;
  }
}

function surfaceWords({ course }: PathLeg): string {
  return course !== null && 'what' in course && course.by !== 'through' ? SURFACES[course.what] : 'a surface';
}

const SURFACES: Readonly<Record<Extract<LegCourse, { by: 'along' | 'up' | 'down' }>['what'], string>> = {
  margin: 'the margin',
  tape: 'the tape',
  former: 'the former',
  sleeve: 'the sleeve',
  cover: 'the wire’s cover',
  surface: 'the surface',
  'tape-edges-at-flange': 'the tape edges at the flange',
  'tape-edge': 'the tape’s edge',
  flange: 'the flange',
  block: 'the block',
};

/** What is gone through, with its number where it has layers. */
function solidWords({ course, plies: count }: PathLeg): string {
  switch (course?.by === 'through' ? course.what : 'plies') {
    case 'block':
      return 'the margin block';
    case 'sleeve':
      return 'the sleeve';
    case 'cover':
      return count === 1 ? 'the wire’s cover' : `the wire’s cover of ${count} layers`;
    case 'wall':
      return 'the former’s thin wall';
    case 'wrap':
      return `${plies(count)} round the core`;
    case 'plies':
      return plies(count);
  }
}

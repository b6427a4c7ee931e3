// A path told piece by piece, each piece tied to the legs that it speaks of, so that they can light up as it is read.

import type { PathLeg } from '#judge/verdict/verdict.ts';
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
  return groups.map((group) => ({ text: legWords(group.leg), legs: group.legs }));
}

export const pathSentence = (legs: readonly PathLeg[]): string =>
  pathParts(legs)
    .map(({ text }) => text)
    .join(', ');

const tellsTheSame = (a: PathLeg, b: PathLeg): boolean =>
  (a.kind === b.kind && a.says === b.says) || (throughPlies(a) && throughPlies(b));

/** What a path goes through, told once each: `2 plies`, `the margin block`. */
export function solidsCrossed(legs: readonly PathLeg[]): readonly string[] {
  const through = legs.filter(({ kind }) => kind === 'through');
  const count = through.filter(throughPlies).reduce((sum, leg) => sum + leg.plies, 0);
  const named = through.filter((leg) => !throughPlies(leg)).map(({ says }) => says.replace(/^through /, ''));
  return [...(count === 0 ? [] : [plies(count)]), ...new Set(named)];
}

/** `a, b and c` */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

/** Told by their number, however many of them the judgement put into one leg. */
const throughPlies = ({ kind, says }: PathLeg): boolean =>
  kind === 'through' && (says === '' || /\bpl(y|ies)$/.test(says));

const together = (a: PathLeg, b: PathLeg): PathLeg => ({
  ...a,
  to: b.to,
  length: a.length + b.length,
  plies: a.plies + b.plies,
});

/** Millimetres. Ways past a corner come as near as one likes; less than this is told without its length. */
const HAIR = 0.005;

const isHair = ({ length }: PathLeg): boolean => length > 0 && length < HAIR;

function legWords(leg: PathLeg): string {
  const length = lengthDown(leg.length);
  if (leg.kind === 'surface' && isHair(leg))
    return `past ${leg.says.replace(/^(back )?(along|over|up|down) /, '') || 'a surface'}`;
  // a contact has no length to tell
  if (leg.length === 0 && leg.kind === 'surface') return leg.says || 'in contact';
  switch (leg.kind) {
    case 'surface':
      return `${length} ${leg.says || 'along a surface'}`;
    case 'air':
      return `${length} ${leg.says || 'through air'}`;
    case 'through':
      return throughPlies(leg) ? `through ${plies(leg.plies)}` : leg.says;
    case 'closed-joint':
      return leg.says || `through a closed joint of ${length}`;
    case 'over':
      return leg.says || 'over a conductor';
    default:
      return unreachable(leg.kind);
  }
}

// A verdict as it is handed out (format layerwright-verdict/1): what the judge found, with its words filled in at the door.

import type { Limiting, PairVerdict, PathLeg, PrintedPath, Proven, Verdict } from '#judge/verdict/verdict.ts';
import { courseWords } from './verdict/path-words.ts';

/** In words: `along the margin`, `up the tape edges at the flange`, … */
export type ToldLeg = Omit<PathLeg, 'course'> & { readonly says: string };

type WithLegs<T> = Omit<T, 'legs'> & { readonly legs: readonly ToldLeg[] };

export type ToldPair = Omit<PairVerdict, 'paths' | 'limiting' | 'proven'> & {
  readonly paths: readonly WithLegs<PrintedPath>[];
  readonly limiting: WithLegs<Limiting> | null;
  readonly proven: WithLegs<Limiting> | Exclude<Proven, Limiting> | null;
};

export type ToldVerdict = Omit<Verdict, 'pairs'> & { readonly pairs: readonly ToldPair[] };

export const told = (verdict: Verdict): ToldVerdict => ({ ...verdict, pairs: verdict.pairs.map(toldPair) });

const toldPair = (pair: PairVerdict): ToldPair => ({
  ...pair,
  paths: pair.paths.map(withLegs),
  limiting: pair.limiting && withLegs(pair.limiting),
  proven: pair.proven && 'legs' in pair.proven ? withLegs(pair.proven) : pair.proven,
});

const withLegs = <T extends { readonly legs: readonly PathLeg[] }>(path: T): WithLegs<T> => ({
  ...path,
  legs: path.legs.map(toldLeg),
});

function toldLeg(leg: PathLeg): ToldLeg {
  const { kind, from, to, length, plies } = leg;
  return { kind, from, to, length, plies, says: courseWords(leg) };
}

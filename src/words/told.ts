// A verdict as it is handed out (format layerwright-verdict/1): what the judge found, with its words filled in at the door.

import type { Assumption, Verdict } from '#judge/verdict/verdict.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';
import type { PathLeg, PrintedPath } from '#judge/verdict/path.ts';
import type { Limiting, PairVerdict, Proven, Required } from '#judge/verdict/pair.ts';
import { conditionSays } from '#words/unknowns/condition-words.ts';
import { countedAsWords } from '#words/unknowns/counted-words.ts';
import { notJudgedWords } from '#words/unknowns/not-judged-words.ts';
import { courseWords } from '#words/paths/path-words.ts';
import { plyWords } from './verdict/ply-words.ts';
import { remarkSays } from './verdict/remark-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { turningWords } from '#words/unknowns/turning-words.ts';

/** In words: `along the margin`, `up the tape edges at the flange`, … */
export type ToldLeg = Omit<PathLeg, 'course'> & { readonly says: string };

type WithLegs<T> = Omit<T, 'legs'> & { readonly legs: readonly ToldLeg[] };

export type ToldLimiting = Omit<WithLegs<Limiting>, 'conditions'> & {
  readonly conditions: readonly string[];
};

type ThroughInsulation = Required['throughInsulation'];

export type ToldRequired = Omit<Required, 'throughInsulation'> & {
  readonly throughInsulation: Omit<ThroughInsulation, 'plies'> & { readonly plies: string };
};

export type ToldPair = Omit<PairVerdict, 'paths' | 'limiting' | 'proven' | 'required'> & {
  readonly required: ToldRequired | null;
  readonly paths: readonly WithLegs<PrintedPath>[];
  readonly limiting: ToldLimiting | null;
  readonly proven: ToldLimiting | Exclude<Proven, Limiting> | null;
};

/** `mend`: what would mend it, in one sentence, where one figure would do; else empty. */
export type ToldSpot = Omit<WeakSpot, 'cause' | 'conditions'> & {
  readonly conditions: readonly string[];
  readonly says: string;
  readonly mend: string;
};

export interface ToldRemark {
  readonly kind: string;
  readonly says: string;
}

export type ToldAssumption = Omit<Assumption, 'counted' | 'figure'> & {
  readonly counted: string;
  readonly figure: string | null;
};

export type ToldVerdict = Omit<Verdict, 'pairs' | 'weakSpots' | 'notJudged' | 'remarks' | 'assumptions'> & {
  readonly notJudged: readonly string[];
  readonly pairs: readonly ToldPair[];
  readonly weakSpots: readonly ToldSpot[];
  readonly remarks: readonly ToldRemark[];
  readonly assumptions: readonly ToldAssumption[];
};

export const told = (verdict: Verdict): ToldVerdict => ({
  ...verdict,
  notJudged: verdict.notJudged.map(notJudgedWords),
  pairs: verdict.pairs.map(toldPair),
  weakSpots: verdict.weakSpots.map(toldSpot),
  remarks: verdict.remarks.map(toldRemark),
  assumptions: verdict.assumptions.map((each) => ({
    ...each,
    counted: countedAsWords(each.counted),
    figure: turningWords(each),
  })),
});

export const toldRemark = (remark: Verdict['remarks'][number]): ToldRemark => ({
  kind: remark.kind,
  says: remarkSays(remark),
});

const toldPair = (pair: PairVerdict): ToldPair => ({
  ...pair,
  required: pair.required && {
    ...pair.required,
    throughInsulation: {
      ...pair.required.throughInsulation,
      plies: plyWords(pair.required.throughInsulation.plies),
    },
  },
  paths: pair.paths.map(withLegs),
  limiting: pair.limiting && toldLimiting(pair.limiting),
  proven: pair.proven && 'legs' in pair.proven ? toldLimiting(pair.proven) : pair.proven,
});

const toldLimiting = (limiting: Limiting): ToldLimiting => ({
  ...withLegs(limiting),
  conditions: limiting.conditions.map(conditionSays),
});

const withLegs = <T extends { readonly legs: readonly PathLeg[] }>(path: T): WithLegs<T> => ({
  ...path,
  legs: path.legs.map(toldLeg),
});

function toldLeg(leg: PathLeg): ToldLeg {
  const { kind, from, to, length, plies } = leg;
  return { kind, from, to, length, plies, says: courseWords(leg) };
}

const toldSpot = (spot: WeakSpot): ToldSpot =>
  inPlaceOf({ ...spot, conditions: spot.conditions.map(conditionSays) }, 'cause', {
    says: spotSays(spot),
    mend: spotMend(spot),
  });

/** With words where their facts stood, so that the order of the fields stays. */
const inPlaceOf = <T extends object, K extends keyof T, W extends object>(
  whole: T,
  key: K,
  words: W,
): Omit<T, K> & W =>
  Object.fromEntries(
    Object.entries(whole).flatMap((entry) => (entry[0] === key ? Object.entries(words) : [entry])),
  ) as Omit<T, K> & W;

// The shapes of a judgement, handed on to the page: `ui` sees what `state` shows and never asks `rules` itself.

export type {
  Answer,
  Assumption,
  Fit,
  Grade,
  Metric,
  PairVerdict,
  PathLeg,
  PrintedPath,
  Verdict,
  WeakSpot,
} from '#judge/verdict/verdict.ts';
export type { StressPair, StressReport } from '#judge/study/stress-report.ts';
export type { PlacedLayer } from '#stress/turns/placed-layers.ts';
export type { Place } from '#stress/turns/place-voltage.ts';
export type { Because, Confirmed } from '#standards/because.ts';

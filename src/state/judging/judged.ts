// The shapes of a judgement, handed on to the page: `ui` sees what `state` shows and never asks `rules` itself.

export type { Assumption, Fit, Verdict } from '#judge/verdict/verdict.ts';
export type { WeakSpot } from '#judge/verdict/spot.ts';
export type { PathLeg, PrintedPath } from '#judge/verdict/path.ts';
export type { PairVerdict } from '#judge/verdict/pair.ts';
export type { Answer } from '#judge/verdict/answer.ts';
export type { Grade, Metric } from '#units/terms.ts';
export type { StressPair, StressReport } from '#judge/study/stress-report.ts';
export type { PlacedLayer } from '#stress/turns/placed-layers.ts';
export type { Place } from '#stress/turns/place-voltage.ts';
export type { Because, Confirmed } from '#standards/because.ts';

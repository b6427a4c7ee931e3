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
  Remark,
  Verdict,
  WeakSpot,
} from '#judge/verdict/verdict.ts';
export type { Because, Confirmed } from '#standards/because.ts';

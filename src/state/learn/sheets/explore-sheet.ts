// What every sheet to explore is made of: an axis, a knob and curves over it. Where the judge is asked, it is asked beside the
// page, once for each place on the axis, of the invented build of a lesson.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Axis, Curve, Spot } from '#drawing/plot/figure-plot.ts';
import type { Verdict } from '#state/judging/judged.ts';

export interface ExploreSheet {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly x: ExploreAxis;
  readonly y: { readonly name: string; readonly unit: string };
  /** What else may be set; the first is set as it opens. */
  readonly knob: { readonly name: string; readonly options: readonly string[] };
  readonly source: string;
  readonly curves: (option: string, judge: JudgeDoc) => Promise<readonly Curve[]>;
}

export interface ExploreAxis extends Axis {
  readonly name: string;
  readonly unit: string;
  readonly step: number;
}

/** Null: it could not be judged there. */
export type JudgeDoc = (doc: DesignFile) => Promise<Verdict | null>;

export const placesOn = ({ from, to, step }: ExploreAxis): readonly number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) =>
    Number((from + i * step).toPrecision(12)),
  );

/** A curve that is worked out, without the judge. */
export const workedOut = (
  name: string,
  look: Curve['look'],
  x: ExploreAxis,
  figure: (place: number) => number,
): Curve => ({ name, look, spots: placesOn(x).map((place): Spot => [place, figure(place)]) });

/** One judgement for each place; where there is none, the curve has no spot. */
export async function judgedOver(
  at: readonly number[],
  docAt: (place: number) => DesignFile,
  judge: JudgeDoc,
  figure: (verdict: Verdict) => number | null,
): Promise<readonly Spot[]> {
  const spots: Spot[] = [];
  for (const place of at) {
    const verdict = await judge(docAt(place));
    const value = verdict === null ? null : figure(verdict);
    if (value !== null) spots.push([place, value]);
  }
  return spots;
}

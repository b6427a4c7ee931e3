// How the voltage of a pair divides along the way through its first gap, named by what is passed.

import { AIR } from '#field/mesh/body-map.ts';
import { divisionAt } from '#field/read/division.ts';
import type { FieldView } from '#field/read/field-view.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { FieldCase } from './field-cases.ts';
import type { DividedPart, FieldGap } from './field-report.ts';

export function divisionOf(
  drawn: DrawnField,
  views: readonly FieldView[],
  cases: readonly FieldCase[],
  gap: FieldGap,
): readonly DividedPart[] {
  const i = cases.findIndex(({ between }) => between.join() === gap.between.join());
  const view = views[i];
  const [from, to] = [gap.points[0], gap.points.at(-1)];
  if (view === undefined || from === undefined || to === undefined) return [];
  const parts = divisionAt(view, gap.at, [to[0] - from[0], to[1] - from[1]]);
  return parts.map(({ body, length, volts }): DividedPart => {
    if (body === AIR) return { what: 'air', layer: null, ply: null, length, volts };
    const { kind, layer, ply } = drawn.bodies[body]!;
    return { what: kind === 'turn' ? 'enamel' : kind, layer, ply, length, volts };
  });
}

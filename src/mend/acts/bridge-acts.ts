// A part across the barrier of the class that may stand there, rated as high as parts of the class are, or one whose ends are as
// far apart as is asked.
//
// Y1 capacitors are rated up to 500 V: IEC 60384-14, table of rated voltages (memory).

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { upToStep } from './file-lengths.ts';

const RATED = '500 V';

export const bridgeActs = (doc: DesignFile, spot: WeakSpot): readonly Act[] => [
  ...classActs(doc, spot),
  ...longerActs(doc, spot),
];

const classActs = (doc: DesignFile, { between }: WeakSpot): readonly Act[] =>
  (doc.bridges ?? []).flatMap((bridge, i): readonly Act[] => {
    const isThere = between === null || between.every((id) => bridge.between.includes(id));
    if (!isThere || bridge.kind !== 'capacitor') return [];
    const on = `bridges[${i}].safetyClass`;
    const classed = { field: on, to: 'Y1' };
    const rated = { field: `bridges[${i}].rated`, to: RATED };
    const isClassed = fieldAt(doc, on) === 'Y1';
    return [
      ...(isClassed ? [] : [[classed]]),
      ...(fieldAt(doc, rated.field) === RATED ? [] : [isClassed ? [rated] : [classed, rated]]),
    ].map((set): Act => ({ kind: 'bridge', on, set, amount: null }));
  });

/** The same part in a longer body. */
function longerActs(doc: DesignFile, { cause, metric, length, required }: WeakSpot): readonly Act[] {
  if (cause.of !== 'bridge' || metric === null || length === null || required === null) return [];
  const index = (doc.bridges ?? []).findIndex(({ id }) => id === cause.bridge.id);
  if (index < 0 || required <= length) return [];
  const field = `bridges[${index}].${metric}`;
  return [
    {
      kind: 'bridge',
      on: field,
      set: [{ field, to: `${upToStep(required)} mm` }],
      amount: required - length,
    },
  ];
}

// The distances outside the window that the file states; one that an entry leaves out may be none at all.

import { plainly } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { MaterialGroup, Metric } from '#units/terms.ts';
import { nm, type Nm } from '#units/quantity.ts';
import type { Filling } from '#judge/assume/fill-context.ts';
import { groupOrAssumed } from '#judge/fill/solids/fill-group.ts';

export interface FilledOutside {
  readonly group: MaterialGroup;
  /** Null: as long as is asked. */
  readonly length: Readonly<Record<Metric, Nm | null>>;
}

export const fillOutside = (filling: Filling, { outside }: Design): readonly FilledOutside[] =>
  outside.map((entry, i) => {
    const length = (metric: Metric): Nm | null => {
      const stated = entry[metric];
      if (stated !== null) return stated.value;
      return filling.unknown(`outside[${i}].${metric}`, plainly('no-length')) === 'best' ? null : nm(0);
    };
    return {
      group: groupOrAssumed(filling, entry.materialGroup, `outside[${i}].materialGroup`),
      length: { clearance: length('clearance'), creepage: length('creepage') },
    };
  });

// Outer bands and clips of which the file does not say where they lie: no metal that they touch, no distance to anything.

import type { Design } from '#model/design.ts';
import type { Part } from '#model/design/former.ts';

export const unplacedParts = ({ parts, outside }: Design): readonly Part[] =>
  parts.filter(
    ({ id, touches }) =>
      touches.length === 0 &&
      !parts.some((other) => other.touches.includes(id)) &&
      !outside.some(({ between }) => between.includes(id)),
  );

/** One on a circuit concerns the pairs of that circuit; one that floats may lie on the way of any pair. */
export const concerns = ({ bond }: Part, between: readonly [string, string]): boolean =>
  bond === 'floating' || between.includes(bond);

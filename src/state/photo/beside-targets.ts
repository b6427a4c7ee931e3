// Fields beside the one that a measurement goes to which are of the same sort and read nearly the same: the other layers' margins
// of a margin. Those within the measurement's uncertainty may well be the same edge; the others are named with what they read.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Option } from '#state/fields/field-options.ts';
import { inMm } from '#units/quantity.ts';

export interface BesideTarget {
  readonly path: string;
  readonly label: string;
  /** As the file has it, `3 mm`. */
  readonly reads: string;
  readonly isWithin: boolean;
}

const MOST = 4;

/** `found` in millimetres. The nearest first. */
export function besideTargets(
  doc: DesignFile,
  targets: readonly Option[],
  target: string,
  found: { readonly value: number; readonly plusMinus: number },
): readonly BesideTarget[] {
  return targets
    .filter(({ value }) => value !== target && sortOf(value) === sortOf(target))
    .flatMap(({ value: path, label }) => {
      const read = quantityField(fieldAt(doc, path), {
        dimension: 'length',
        aboveZero: false,
        mayBeUnknown: true,
      });
      if (read.kind !== 'known') return [];
      const [mm, half] = [inMm(read.value), inMm(read.plusMinus)];
      const apart = Math.abs(mm - found.value);
      // a millionth of a millimetre is nothing
      const isWithin = apart <= found.plusMinus + half + 1e-6;
      return [{ path, label, reads: `${mm} mm`, isWithin, apart }];
    })
    .sort((a, b) => a.apart - b.apart)
    .slice(0, MOST)
    .map(({ path, label, reads, isWithin }) => ({ path, label, reads, isWithin }));
}

/** `layers[2].margins.left.width` and that of another layer are of one sort; a left one is no right one. */
const sortOf = (path: string): string => path.replace(/\[\d+\]/g, '[]');

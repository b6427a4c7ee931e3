// Lengths of a design file as numbers in mm, and back as one types them.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';

/** Lengths are proposed in such steps, mm: finer is not wound by hand. */
export const STEP = 0.05;

/** Null where the field holds no known length; a field left out is `missing`. */
export function lengthAt(doc: DesignFile, field: string, missing: number | null = null): number | null {
  const value = fieldAt(doc, field);
  if (value === undefined) return missing;
  const read = quantityField(value, { dimension: 'length', aboveZero: false, mayBeUnknown: true });
  return read.kind === 'known' ? read.value / 1e6 : null;
}

/** Up to the next step; what lies within a nanometre of one stays there. */
export const upToStep = (mm: number): number => Math.round(Math.ceil(mm / STEP - 1e-6) * STEP * 100) / 100;

/** A new width in the place of one that may carry its tolerance, which stays. */
export function widthText(doc: DesignFile, field: string, mm: number): unknown {
  const text = `${Number(mm.toFixed(3))} mm`;
  const before = fieldAt(doc, field);
  return typeof before === 'object' && before !== null && 'plusMinus' in before
    ? { ...before, value: text }
    : text;
}

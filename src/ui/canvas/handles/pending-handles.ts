// Grips ahead of the drawing: while the judgement of a change is still being made, an edge whose figure was changed already
// stands where the file says, so that the next step of a key starts from there.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { positionOf, type Handle } from './handle.ts';

const LENGTH = { dimension: 'length', aboveZero: false, mayBeUnknown: false } as const;

/** `judged` is what the handles are of. */
export const ahead = (
  handles: readonly Handle[],
  judged: DesignFile,
  shown: DesignFile,
): readonly Handle[] =>
  judged === shown ? handles : handles.map((handle) => aheadOne(handle, judged, shown));

function aheadOne(handle: Handle, judged: DesignFile, shown: DesignFile): Handle {
  const field = fieldAt(shown, handle.path);
  if (field === fieldAt(judged, handle.path)) return handle;
  const reading = quantityField(field, LENGTH);
  if (reading.kind !== 'known') return handle;
  const { value, plusMinus } = reading;
  return { ...handle, value, plusMinus, at: positionOf(handle, value), isUnknown: false };
}

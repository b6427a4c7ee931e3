// What the file leaves open of a part that bridges two circuits, field by field, and what each counts as at worst.

import { plainly, type CountedAs, type PlainlyCounted } from '#judge/verdict/assumed.ts';
import type { Design } from '#model/design.ts';
import type { OpenKey } from '#books/shared/parts/bridge-grade.ts';

export interface OpenBridgeField {
  readonly field: string;
  readonly counted: CountedAs;
}

export const openBridgeFields = (
  bridge: Design['bridges'][number],
  index: number,
): readonly OpenBridgeField[] =>
  openKeys(bridge).map((key) => ({ field: bridgeField(index, key), counted: plainly(COUNTED[key]) }));

export const bridgeField = (index: number, key: OpenKey): string => `bridges[${index}].${key}`;

const COUNTED: Readonly<Record<OpenKey, PlainlyCounted>> = {
  safetyClass: 'no-safety-part',
  approval: 'no-approval',
  clearance: 'no-length',
  creepage: 'no-length',
  working: 'as-between-windings',
};

/** A capacitor's distances are its certificate's matter. */
function openKeys({
  kind,
  safetyClass,
  approval,
  clearance,
  creepage,
  rated,
  working,
}: Design['bridges'][number]): readonly OpenKey[] {
  const atPart: readonly OpenKey[] = rated !== null && !working?.rms ? ['working'] : [];
  if (kind === 'capacitor')
    return [...(typeof safetyClass === 'string' ? [] : ['safetyClass' as const]), ...atPart];
  return [
    ...atPart,
    ...(typeof approval === 'string' ? [] : (['approval'] as const)),
    ...(clearance === null ? (['clearance'] as const) : []),
    ...(creepage === null ? (['creepage'] as const) : []),
  ];
}

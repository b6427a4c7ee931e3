// What the file leaves open of a part that bridges two circuits, field by field, and what each counts as at worst.

import type { Design } from '#model/design.ts';
import type { OpenKey } from '#books/shared/parts/bridge-grade.ts';

export interface OpenBridgeField {
  readonly field: string;
  readonly counted: string;
}

export const openBridgeFields = (
  bridge: Design['bridges'][number],
  index: number,
): readonly OpenBridgeField[] =>
  openKeys(bridge).map((key) => ({ field: bridgeField(index, key), counted: COUNTED[key] }));

export const bridgeField = (index: number, key: OpenKey): string => `bridges[${index}].${key}`;

const COUNTED: Readonly<Record<OpenKey, string>> = {
  safetyClass: 'no safety part',
  approval: 'without approval',
  clearance: '0 mm',
  creepage: '0 mm',
  working: 'as high as between the windings',
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

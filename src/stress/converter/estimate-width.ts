// How far a computed working voltage may be off: what held against measured reports, where the mode of the converter, the
// low line and the rail are known, and where one of them is not.

import type { Design } from '#model/design.ts';
import { isKnown } from '#model/quantity/reading.ts';

import type { BestFields, OpenVoltage } from '#stress/pair/pair-stress.ts';
import { openTurns } from './winding-turns.ts';

/** With all of them known; without. Against measured reports, most of their inputs fitted: house rule. */
export const KNOWN_WITHIN = 0.05;
export const OPEN_WITHIN = 0.2;

/** What the file does not say of its converter, and what is counted instead. */
export function openConverter(design: Design, isBest: BestFields): readonly OpenVoltage[] {
  const { converter, supply } = design;
  if (converter === null) return [];
  const open: OpenVoltage[] = [];
  if (typeof converter.mode !== 'string')
    open.push({ field: 'converter.mode', counted: { as: 'either-mode' } });
  if (!isKnown(supply.lowest) && converter.bulk === null)
    open.push({ field: 'supply.lowest', counted: { as: 'marked-voltage' } });
  if (converter.rail.kind === 'unknown')
    open.push({ field: 'converter.rail', counted: { as: 'mains-rail' } });
  for (const { index } of openTurns(design))
    open.push({ field: `layers[${index}].turns`, counted: { as: 'turns-by-voltage' } });
  return open.filter(({ field }) => !isBest(field));
}

export const estimateWithin = (open: readonly OpenVoltage[]): number =>
  open.length === 0 ? KNOWN_WITHIN : OPEN_WITHIN;

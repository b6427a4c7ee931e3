// The grade of a part that bridges two circuits on purpose, and whether one fault of it would put the mains on the
// other side. Whether a barrier stands there at all is for the caller to say; its distances are handed in.

import type { Bridge } from '#model/design/outside.ts';
import { because, type Because } from '#standards/because.ts';
import { voltsRms } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';

import { capacitorBridge } from './bridge-capacitor.ts';
import type { BridgeGrade, BridgeQuestion, PartGrade, PartTables } from './bridge-grade.ts';
import { optocouplerBridge, resistorBridge } from './bridge-approved.ts';

export function gradeOfBridge(tables: PartTables, bridge: Bridge, asked: BridgeQuestion): BridgeGrade {
  const part = partGrade(tables, bridge, asked);
  const rating = ratingOf(tables, bridge, asked);
  const unsafe = part.unsafe ?? (rating.low && asked.barrier ? 'rating' : null);
  const grade = unsafe === null ? part.grade : 'none';
  const values = { id: bridge.id, kind: bridge.kind, grade, unsafe };
  return {
    id: bridge.id,
    between: bridge.between,
    grade,
    unsafe,
    ratingAssumed: rating.assumed,
    short: unsafe === null ? part.short : null,
    because: because('bridge', values, [], [...part.because, rating.because]),
  };
}

function partGrade(tables: PartTables, bridge: Bridge, asked: BridgeQuestion): PartGrade {
  switch (bridge.kind) {
    case 'capacitor':
      return capacitorBridge(tables, bridge, asked);
    case 'optocoupler':
      return optocouplerBridge(tables, bridge, asked);
    case 'resistor':
      return resistorBridge(bridge, asked);
    default:
      return unreachable(bridge.kind);
  }
}

/**
 * Rated below the mains it is unsafe; between that and what stands across the pair it depends on what stands at the part,
 * which counts at best as enough where nobody said it. A rating that is left out is taken to reach, unless no part of the
 * class is made for so much.
 */
function ratingOf(
  { capacitorRatedAtMost }: PartTables,
  { rated, kind, safetyClass, working }: Bridge,
  { rms: pair, mains, isBest }: BridgeQuestion,
): { readonly low: boolean; readonly assumed: boolean; readonly because: Because } {
  const rms = voltsRms(Math.max(mains, working?.rms?.value ?? (isBest('working') ? 0 : pair)));
  if (rated !== null) {
    const low = rated.value < rms;
    return { low, assumed: false, because: because('bridge-rating', { rated: rated.value, rms, low }) };
  }
  const most =
    kind === 'capacitor' && typeof safetyClass === 'string' ? capacitorRatedAtMost(safetyClass) : null;
  if (most !== null && most.value < rms) {
    const values = { rated: most.value, rms, low: true };
    return { low: true, assumed: false, because: because('bridge-rating', values, [], [most.because]) };
  }
  return { low: false, assumed: true, because: because('bridge-rating-assumed', { rms }) };
}

// A bridging capacitor by its class: Y1 reinforced, Y2 basic or supplementary, two equal Y2 in series double, as far as
// the distances reach that the file gives of it. Across a barrier an X class or none at all is unsafe: its short circuit
// puts the mains on the other side.

import type { Bridge } from '#model/design/outside.ts';
import { because, type Because } from '#standards/because.ts';

import type { BridgeQuestion, CapacitorClass, PartGrade, PartTables } from './bridge-grade.ts';
import { lowerReached, reachedRound, type Reached } from './reached-round.ts';

export function capacitorBridge(tables: PartTables, bridge: Bridge, asked: BridgeQuestion): PartGrade {
  const safetyClass = classOf(bridge, asked.isBest('safetyClass'));
  const found = tables.capacitorGrade(safetyClass);
  const why: Because[] = [
    because('bridge-class', { class: safetyClass, grade: found.value }, [], [found.because]),
  ];
  if (found.value === 'none' || found.value === 'functional') {
    return { grade: found.value, unsafe: asked.barrier ? 'class' : null, short: null, because: why };
  }
  const limited = withinLimits(tables.singlePart, found.value, asked);
  if (limited.because !== null) why.push(limited.because);
  const inSeries = bridge.inSeries > 1 && (safetyClass === 'Y1' || safetyClass === 'Y2');
  const isDouble = limited.grade === 'basic' && inSeries;
  if (isDouble)
    why.push(because('bridge-series', { inSeries: bridge.inSeries, each: 'basic', grade: 'double' }));
  const reached = reachedRound(bridge, asked, true);
  why.push(reached.because);
  const own = isDouble ? 'reinforced' : limited.grade;
  const grade = lowerReached(own, reached.grade);
  return {
    // one part of the class may be the basic or the supplementary half of a double barrier
    grade: grade === 'basic' ? 'supplementary' : grade === 'reinforced' && isDouble ? 'double' : grade,
    unsafe: null,
    short: reached.shortOf(own),
    because: why,
  };
}

function classOf({ safetyClass }: Bridge, best: boolean): CapacitorClass {
  if (typeof safetyClass === 'string') return safetyClass;
  return best ? 'Y1' : 'unknown';
}

/** One part earns its grade up to the mains voltage and category of the rule; beyond them one grade less. */
function withinLimits(
  single: PartTables['singlePart'],
  grade: 'basic' | 'reinforced',
  { mains, category }: BridgeQuestion,
): { readonly grade: Reached; readonly because: Because | null } {
  const { mainsMost, categoryMost } = single.value;
  if (mains <= mainsMost && category <= categoryMost) return { grade, because: null };
  const less = grade === 'reinforced' ? 'basic' : 'functional';
  const values = { mains, mainsMost, category, categoryMost, from: grade, grade: less };
  return { grade: less, because: because('bridge-limits', values, [], [single.because]) };
}

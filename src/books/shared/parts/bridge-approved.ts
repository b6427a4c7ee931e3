// Parts that hold a grade by approval: an optocoupler, a resistor chain. The grade holds as far as the distances round
// the part reach it too. Without approval only its figures count, and for basic at most: those distances, and what lies
// inside an optocoupler; one resistor without approval across a barrier is unsafe, for a single fault bridges it.

import type { Bridge } from '#model/design/outside.ts';
import { because, type Because } from '#standards/because.ts';

import type { BridgeQuestion, PartGrade, PartTables } from './bridge-grade.ts';
import { lowerReached, reachedRound, type Reached } from './reached-round.ts';

type Approval = 'none' | 'basic' | 'reinforced';

export function optocouplerBridge(tables: PartTables, bridge: Bridge, asked: BridgeQuestion): PartGrade {
  const approval = approvalOf(bridge, asked.isBest('approval'));
  const reached = reachedRound(bridge, asked, false);
  const inside = bridge.throughInsulation?.value ?? 0;
  const least = tables.leastThickness();
  // what lies inside an approved part is its certificate's matter
  const isThin = approval.value === 'none' && inside < least.value;
  const most: Reached = isThin ? 'functional' : approval.most;
  return {
    grade: lowerReached(most, reached.grade),
    unsafe: null,
    short: reached.shortOf(most),
    because: [approval.because, reached.because, ...(isThin ? [least.because] : [])],
  };
}

export function resistorBridge(bridge: Bridge, asked: BridgeQuestion): PartGrade {
  const approval = approvalOf(bridge, asked.isBest('approval'));
  const reached = reachedRound(bridge, asked, false);
  const alone = bridge.inSeries < 2 && approval.value === 'none';
  const why = [approval.because, reached.because];
  if (alone && asked.barrier) {
    const single = because('bridge-alone', { inSeries: bridge.inSeries });
    return { grade: 'none', unsafe: 'single-part', short: null, because: [...why, single] };
  }
  return {
    grade: lowerReached(approval.most, reached.grade),
    unsafe: null,
    short: reached.shortOf(approval.most),
    because: why,
  };
}

function approvalOf(
  { approval }: Bridge,
  best: boolean,
): { readonly value: Approval; readonly most: Reached; readonly because: Because } {
  const value = typeof approval === 'string' ? approval : best ? 'reinforced' : 'none';
  const most = value === 'none' ? 'basic' : value;
  return { value, most, because: because('bridge-approval', { approval: value, most }) };
}

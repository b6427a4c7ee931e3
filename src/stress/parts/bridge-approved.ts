// Parts that hold a grade by approval: an optocoupler, a resistor chain. The grade holds as far as the distances round
// the part reach it too. Without approval only those distances count, and for basic at most; one resistor without
// approval across a barrier is unsafe, for a single fault bridges it.

import type { Bridge } from '#model/design.ts';
import { because, type Because } from '#standards/because.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';

import type { BridgeQuestion, PartGrade } from './bridge-grade.ts';
import { reachOf, type DistanceGrade } from './outside-grade.ts';

type Approval = 'none' | 'basic' | 'reinforced';
type Reached = DistanceGrade;

const ORDER: readonly Reached[] = ['functional', 'basic', 'reinforced'];

export function optocouplerBridge(bridge: Bridge, asked: BridgeQuestion): PartGrade {
  const approval = approvalOf(bridge, asked.isBest('approval'));
  const reached = reachedRound(bridge, asked);
  return {
    grade: lower(approval.most, reached.grade),
    unsafe: null,
    because: [approval.because, reached.because],
  };
}

export function resistorBridge(bridge: Bridge, asked: BridgeQuestion): PartGrade {
  const approval = approvalOf(bridge, asked.isBest('approval'));
  const reached = reachedRound(bridge, asked);
  const alone = bridge.inSeries < 2 && approval.value === 'none';
  const why = [approval.because, reached.because];
  if (alone && asked.barrier) {
    const single = because('bridge-alone', { inSeries: bridge.inSeries });
    return { grade: 'none', unsafe: 'single-part', because: [...why, single] };
  }
  return { grade: lower(approval.most, reached.grade), unsafe: null, because: why };
}

function approvalOf(
  { approval }: Bridge,
  best: boolean,
): { readonly value: Approval; readonly most: Reached; readonly because: Because } {
  const value = typeof approval === 'string' ? approval : best ? 'reinforced' : 'none';
  const most = value === 'none' ? 'basic' : value;
  return { value, most, because: because('bridge-approval', { approval: value, most }) };
}

/** A distance that the file leaves out reaches nothing at worst and everything at best. */
function reachedRound(
  { clearance, creepage }: Bridge,
  { required, isBest }: BridgeQuestion,
): { readonly grade: Reached; readonly because: Because } {
  const of = (key: 'clearance' | 'creepage', distance: Nm | undefined): Reached => {
    const needed = required?.[key];
    if (distance === undefined && needed !== undefined) return isBest(key) ? 'reinforced' : 'functional';
    return reachOf(distance ?? nm(0), needed ?? null);
  };
  const byClearance = of('clearance', clearance?.value);
  const byCreepage = of('creepage', creepage?.value);
  const grade = lower(byClearance, byCreepage);
  const values = {
    clearance: clearance === null ? null : inMm(clearance.value),
    creepage: creepage === null ? null : inMm(creepage.value),
    byClearance,
    byCreepage,
    grade,
  };
  return { grade, because: because('bridge-distances', values) };
}

const lower = (a: Reached, b: Reached): Reached => (ORDER.indexOf(a) < ORDER.indexOf(b) ? a : b);

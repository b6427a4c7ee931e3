// Bridging parts by IEC 60601-1: one Y1 or one Y2 is one means; of the operator one Y1 or two Y2 in series are two, of the
// patient two Y1 in series and nothing less.

import type { Bridge } from '#model/design/outside.ts';
import type { BridgeGrade, BridgeQuestion, PartTables } from '#books/shared/parts/bridge-grade.ts';
import { gradeOfBridge } from '#books/shared/parts/bridges.ts';
import { because, judged } from '#standards/because.ts';
import type { Rule } from '#standards/tables/rules-in-words.ts';

export function partOf(tables: PartTables, rule: Rule, bridge: Bridge, asked: BridgeQuestion): BridgeGrade {
  if (asked.means === 'operator') return gradeOfBridge(tables, bridge, asked);
  const forPatient: PartTables = {
    ...tables,
    capacitorGrade: (safetyClass) =>
      safetyClass === 'Y1'
        ? judged('basic', because('capacitor', { at: safetyClass, value: 'basic' }, rule.because().cites))
        : tables.capacitorGrade(safetyClass),
  };
  const counts = bridge.kind !== 'capacitor' || bridge.safetyClass !== 'Y2';
  return gradeOfBridge(forPatient, counts ? bridge : { ...bridge, inSeries: 1 }, asked);
}

// Times the stress of a converter with four windings and three variants: working voltages of every pair, neighbours,
// touch current and heat. Median of many, warmed up.

import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { ruleBook } from '#books/shelf.ts';
import { runningConverter } from '#stress/converter/computed-stress.ts';
import { heatOf } from '#stress/heat/heat.ts';
import { leakageOf } from '#stress/current/leakage.ts';
import { localStresses } from '#stress/turns/local-stress.ts';
import { windingCapacitances } from '#stress/current/winding-capacitance.ts';
import { workingVoltages } from '#stress/voltages/working-voltage.ts';

const CIRCUITS = [
  ['pri', 'mains', 'P', 62],
  ['aux', 'mains', 'A', 10],
  ['out', 'touchable', 'S', 8],
  ['side', 'touchable', 'T', 4],
] as const;

const output = (circuit: string, volts: number) => ({ circuit, voltage: `${volts} V` });

function converterDesign(): Design {
  const read = readDesign(
    {
      format: 'layerwright-design/1',
      title: 'four windings, three variants',
      origin: 'proposed',
      rules: 'iec-62368-1',
      supply: { kind: 'ac', voltage: '240 V' },
      converter: {
        mode: 'continuous',
        switchingFrequency: '65 kHz',
        reflectedVoltage: '90 V',
        clampOvershoot: '60 V',
        outputs: [output('out', 12), output('side', 6), output('aux', 15)],
        variants: [5, 9, 20].map((volts) => ({ name: `${volts} V`, outputs: [output('out', volts)] })),
      },
      circuits: CIRCUITS.map(([id, role]) => ({ id, role })),
      former: { height: '7 mm', wall: '1 mm', flange: '1 mm', chambers: [{ width: '16 mm' }] },
      windings: CIRCUITS.map(([circuit, , id]) => ({
        id,
        circuit,
        wire: { kind: 'enamelled', conductor: '0.25 mm', grade: 1 },
      })),
      layers: CIRCUITS.flatMap(([, , winding, turns]) => [
        { kind: 'winding', winding, turns },
        { kind: 'tape', material: 'polyester-tape-25', plies: 3 },
      ]),
      bridges: [
        { id: 'CY', kind: 'capacitor', between: ['pri', 'out'], capacitance: '1 nF', safetyClass: 'Y1' },
      ],
    },
    knownIds,
  );
  if (read.kind === 'bad') throw new Error(JSON.stringify(read.faults));
  return read.design;
}

/** Milliseconds. */
export function stressing(runs: number): number {
  const design = converterDesign();
  const book = ruleBook(design.rules)!;
  const times = Array.from({ length: runs }, () => {
    const before = performance.now();
    workingVoltages(design);
    const running = runningConverter(design)!;
    localStresses(design, running);
    leakageOf(design, book, windingCapacitances(design), running);
    heatOf(design, book);
    return performance.now() - before;
  });
  return times.slice(runs >> 1).sort((a, b) => a - b)[runs >> 2]!;
}

// What switching drives through a person: the fundamental of the swing between two facing layers, through the
// capacitance between them, shared between the body and the bridging capacitors that lead it back to the mains. Taken
// as if a whole layer swung with the switched end: more than there is.

import type { Design } from '#model/design.ts';
import { amperes, hertz, type Amperes, type Hertz } from '#units/quantity.ts';

import { complex, magnitude, over, type Complex } from './complex.ts';
import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { bridgingBranches, EARTH, heldNodes, nodeOf, TOUCHED } from './leakage-branches.ts';
import { currentFrom, nodeVoltages, type Branch } from './node-voltages.ts';
import { touchBody } from './touch-body.ts';
import type { LayersCapacitance } from './winding-capacitance.ts';

export interface SwitchingCurrent {
  readonly frequency: Hertz;
  readonly plain: Amperes;
  readonly weighed: Amperes;
}

type Run = RunningConverter['runs'][number];

/** The run that is felt the most. */
export function switchingCurrent(
  design: Design,
  capacitances: readonly LayersCapacitance[],
  { runs }: RunningConverter,
): SwitchingCurrent | null {
  let worst: SwitchingCurrent | null = null;
  for (const run of runs) {
    const found = currentOf(design, capacitances, run);
    if (worst === null || found.weighed > worst.weighed) worst = found;
  }
  return worst;
}

function currentOf(design: Design, capacitances: readonly LayersCapacitance[], run: Run): SwitchingCurrent {
  const frequency = hertz(run.run.frequency);
  const roleOf = (circuit: string) => design.circuits.find(({ id }) => id === circuit)?.role;
  const driven = capacitances.filter(
    ({ between: [a, b] }) => (roleOf(a) === 'mains') !== (roleOf(b) === 'mains'),
  );
  const held = new Map<string, Complex>(heldNodes(complex(0)));
  const drivers = driven.map(({ between: [a, b], farads }, i): Branch => {
    held.set(` swing ${i}`, complex(fundamental(run, a, b)));
    const to = nodeOf(design, roleOf(a) === 'mains' ? b : a);
    return { from: ` swing ${i}`, to, admittance: complex(0, 2 * Math.PI * frequency * farads) };
  });
  const body = touchBody(frequency);
  const bodied: Branch = { from: TOUCHED, to: EARTH, admittance: over(complex(1), body.impedance) };
  const parts = bridgingBranches(design, [], frequency).branches;
  const voltages = nodeVoltages([...parts, ...drivers, bodied], held);
  const current = magnitude(currentFrom(TOUCHED, [bodied], voltages));
  return { frequency, plain: amperes(current), weighed: amperes(current * body.weighed) };
}

/** Rms of the first harmonic of the widest swing between ends of two circuits. */
function fundamental({ run, ends }: Run, a: string, b: string): number {
  const duty = run.shares.find(({ state }) => state === 'on')?.share ?? 0;
  let swing = 0;
  for (const from of ends.get(a) ?? []) {
    for (const to of ends.get(b) ?? []) {
      const on = from.levels.on - to.levels.on;
      const off = from.levels.off - to.levels.off;
      swing = Math.max(swing, Math.abs(on - off));
    }
  }
  return ((Math.SQRT2 * swing) / Math.PI) * Math.sin(Math.PI * duty);
}

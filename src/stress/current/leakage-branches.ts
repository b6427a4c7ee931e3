// The network that leakage runs through: every bridging part and every capacitance between layers as a branch between
// circuits. Circuits on the mains side are one node, those that may be touched another, earth is held at 0.

import type { Design } from '#model/design.ts';
import type { Bridge } from '#model/design/outside.ts';
import type { Because } from '#standards/because.ts';
import type { Hertz } from '#units/quantity.ts';

import { complex, type Complex } from './complex.ts';
import type { Branch } from './node-voltages.ts';
import type { LayersCapacitance } from './winding-capacitance.ts';

export const LIVE = ' live';
export const TOUCHED = ' touched';
export const EARTH = ' earth';

export interface BridgingParts {
  readonly branches: readonly Branch[];
  readonly parts: readonly BridgingPart[];
  readonly missing: readonly string[];
  readonly because: readonly Because[];
}

export interface BridgingPart {
  /** Id of the part; null for a capacitance between layers. */
  readonly id: string | null;
  readonly between: readonly [string, string];
  /** Of all parts in series, at the end of the tolerance that passes more. */
  readonly farads: number | null;
  readonly ohms: number | null;
  readonly from: 'file' | LayersCapacitance['from'];
}

export function bridgingBranches(
  design: Design,
  capacitances: readonly LayersCapacitance[],
  frequency: Hertz,
): BridgingParts {
  const passing = design.bridges.filter(({ kind }) => kind !== 'optocoupler');
  const known = passing.flatMap((bridge) => valueOf(bridge) ?? []);
  const layers = capacitances.map(({ between, farads, from }): BridgingPart => {
    return { id: null, between, farads, ohms: null, from };
  });
  const parts = [...known, ...layers].filter(
    ({ between: [a, b] }) => nodeOf(design, a) !== nodeOf(design, b),
  );
  return {
    parts,
    branches: parts.map((part) => branchOf(design, part, frequency)),
    missing: passing.filter((bridge) => valueOf(bridge) === null).map(({ id }) => id),
    because: capacitances.map((capacitance) => capacitance.because),
  };
}

/** Every isolated circuit is a node of its own. */
export function nodeOf({ circuits }: Design, circuit: string): string {
  const role = circuits.find(({ id }) => id === circuit)?.role;
  return role === undefined || role === 'isolated' ? circuit : NODES[role];
}

const NODES = { mains: LIVE, touchable: TOUCHED, earth: EARTH } as const;

/** Earth at 0 and the mains side at `volts`. */
export const heldNodes = (volts: Complex): ReadonlyMap<string, Complex> =>
  new Map([
    [EARTH, complex(0)],
    [LIVE, volts],
  ]);

function branchOf(design: Design, { between: [a, b], farads, ohms }: BridgingPart, frequency: Hertz): Branch {
  const admittance =
    farads !== null
      ? complex(0, 2 * Math.PI * frequency * farads)
      : complex(1 / Math.max(ohms ?? 0, LEAST_OHMS));
  return { from: nodeOf(design, a), to: nodeOf(design, b), admittance };
}

/** A resistor of no resistance is a wire; some is needed to reckon with it. */
const LEAST_OHMS = 1e-3;

function valueOf({ id, kind, between, capacitance, resistance, inSeries }: Bridge): BridgingPart | null {
  if (kind === 'capacitor') {
    if (capacitance === null) return null;
    const farads = (capacitance.value + capacitance.plusMinus) / inSeries;
    return { id, between, farads, ohms: null, from: 'file' };
  }
  if (resistance === null) return null;
  const ohms = Math.max(0, resistance.value - resistance.plusMinus) * inSeries;
  return { id, between, farads: null, ohms, from: 'file' };
}

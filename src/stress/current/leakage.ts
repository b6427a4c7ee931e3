// The current that a person would take over who touches the output: through every bridging part and the capacitance of
// the windings, at the highest mains voltage and frequency, plain and through the body of IEC 60990; with the part at
// switching frequency beside it; against the rule book's limits. All parts that may be touched are held together, all
// mains ends are the live one: the worst case.
//
// Steps: touch-current-found {mains, frequency, plain, weighed, ...}, protective-current {value}.

import type { Design } from '#model/design.ts';
import { because, type Because } from '#standards/because.ts';
import type { Book, TouchCurrentLimits } from '#books/questions/book.ts';
import { touchNetwork } from '#standards/tables/touch-network.ts';
import { amperes, hertz, voltsRms, type Amperes, type Hertz, type VoltsRms } from '#units/quantity.ts';

import { complex, magnitude, over } from './complex.ts';
import type { RunningConverter } from '#stress/converter/computed-stress.ts';
import { bridgingBranches, EARTH, heldNodes, TOUCHED, type BridgingParts } from './leakage-branches.ts';
import { currentFrom, nodeVoltages, type Branch } from './node-voltages.ts';
import { switchingCurrent, type SwitchingCurrent } from './switching-current.ts';
import { touchBody } from './touch-body.ts';
import type { LayersCapacitance } from './winding-capacitance.ts';

export interface Leakage {
  readonly mains: VoltsRms;
  readonly frequency: Hertz;
  readonly parts: BridgingParts['parts'];
  /** Parts whose capacitance or resistance the file leaves out: the figures are then least figures. */
  readonly missing: readonly string[];
  /** Null where no circuit may be touched. */
  readonly touch: TouchCurrent | null;
  /** Null where nothing is earthed. */
  readonly protective: ProtectiveCurrent | null;
}

export type LeakageAnswer = 'meets' | 'falls-short' | 'not-shown';

export interface TouchCurrent {
  /** With the output tied straight to earth. */
  readonly plain: Amperes;
  /** Of that, what each of the leakage's `parts` brings, in their order; 0 for a part that does not reach the output. */
  readonly through: readonly Amperes[];
  /** Through the body. */
  readonly throughBody: Amperes;
  /** Through the body, weighed by how it is felt: this is what the limit is for. */
  readonly weighed: Amperes;
  readonly weighedPeak: Amperes;
  /** What switching adds; null without a converter. */
  readonly switching: SwitchingCurrent | null;
  readonly total: { readonly rms: Amperes; readonly peak: Amperes };
  readonly limit: { readonly rms: Amperes; readonly peak: Amperes };
  readonly answer: LeakageAnswer;
  readonly because: Because;
}

export interface ProtectiveCurrent {
  readonly value: Amperes;
  readonly limit: Amperes;
  readonly answer: LeakageAnswer;
  readonly because: Because;
}

export function leakageOf(
  design: Design,
  book: Book,
  capacitances: readonly LayersCapacitance[],
  running: RunningConverter | null,
): Leakage {
  const { supply, circuits } = design;
  const mains = voltsRms(supply.voltage.value * (1 + supply.tolerance));
  const direct = supply.kind === 'dc';
  const frequency = direct ? hertz(0) : hertz(supply.frequency.value + supply.frequency.plusMinus);
  const { touchCurrentLimits: limits } = book;
  const bridging = bridgingBranches(design, capacitances, frequency);
  const has = (role: string) => circuits.some((circuit) => circuit.role === role);
  const switching = running === null ? null : switchingCurrent(design, capacitances, running);
  return {
    mains,
    frequency,
    parts: bridging.parts,
    missing: bridging.missing,
    touch:
      limits && has('touchable') ? touchCurrent(limits, { mains, frequency, bridging, switching }) : null,
    protective: limits && has('earth') ? protectiveCurrent(limits, mains, bridging) : null,
  };
}

interface Found {
  readonly mains: VoltsRms;
  readonly frequency: Hertz;
  readonly bridging: BridgingParts;
  readonly switching: SwitchingCurrent | null;
}

function touchCurrent({ normal }: TouchCurrentLimits, found: Found): TouchCurrent {
  const { mains, frequency, bridging, switching } = found;
  const body = touchBody(frequency);
  const held = heldNodes(complex(mains));
  const tied = nodeVoltages(bridging.branches, new Map([...held, [TOUCHED, complex(0)]]));
  const plain = magnitude(currentFrom(TOUCHED, bridging.branches, tied));
  const through = bridging.branches.map((branch) => amperes(magnitude(currentFrom(TOUCHED, [branch], tied))));
  const bodied: Branch = { from: TOUCHED, to: EARTH, admittance: over(complex(1), body.impedance) };
  const voltages = nodeVoltages([...bridging.branches, bodied], held);
  const throughBody = magnitude(currentFrom(TOUCHED, [bodied], voltages));
  const weighed = throughBody * body.weighed;
  const peak = weighed * (frequency === 0 ? 1 : Math.SQRT2);
  const total = {
    rms: amperes(Math.hypot(weighed, switching?.weighed ?? 0)),
    peak: amperes(peak + (switching?.weighed ?? 0) * Math.SQRT2),
  };
  const { value, because: why } = normal;
  const limit = frequency === 0 ? { rms: value.dc, peak: value.dc } : { rms: value.rms, peak: value.peak };
  const short = total.rms > limit.rms || total.peak > limit.peak;
  const values = { mains, frequency, plain, throughBody, weighed, rms: total.rms, peak: total.peak };
  return {
    plain: amperes(plain),
    through,
    throughBody: amperes(throughBody),
    weighed: amperes(weighed),
    weighedPeak: amperes(peak),
    switching,
    total,
    limit,
    answer: answerOf(short, bridging),
    because: because('touch-current-found', values, [], [why, touchNetwork.because, ...bridging.because]),
  };
}

function protectiveCurrent(
  { protectiveConductor }: TouchCurrentLimits,
  mains: VoltsRms,
  bridging: BridgingParts,
): ProtectiveCurrent {
  const value = amperes(into(EARTH, bridging.branches, heldNodes(complex(mains))));
  const { value: limit, because: why } = protectiveConductor;
  return {
    value,
    limit,
    answer: answerOf(value > limit, bridging),
    because: because('protective-current', { mains, value }, [], [why, ...bridging.because]),
  };
}

const into = (node: string, branches: readonly Branch[], held: Parameters<typeof nodeVoltages>[1]): number =>
  magnitude(currentFrom(node, branches, nodeVoltages(branches, held)));

const answerOf = (short: boolean, { missing }: BridgingParts): LeakageAnswer =>
  short ? 'falls-short' : missing.length > 0 ? 'not-shown' : 'meets';

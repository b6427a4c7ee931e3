// Third circuits of which something is open, and the pairs that lie past them: a conductor that may be smaller than it
// is counted opens ways that it would shut, so those pairs are judged with it taking the least room as well.

import type { Design } from '#model/design.ts';
import type { Ends } from '#judge/assume/assumption.ts';
import type { Filled } from '#judge/fill/fill-build.ts';
import { coreCircuit } from '#judge/conductors/core-circuit.ts';
import { circuitOf } from '#judge/conductors/layer-circuit.ts';
import type { PairOutcome } from '#judge/paths/case-result.ts';

export interface Past {
  /** The third circuits. */
  readonly turned: ReadonlySet<string>;
  /** Places of the pairs. */
  readonly pairs: readonly number[];
  /** The third circuits' intervals where these take the least room. */
  readonly room: Ends;
}

export function pastOthers(
  design: Design,
  { filled, pairs }: { readonly filled: Filled; readonly pairs: readonly PairOutcome[] },
  intervals: readonly string[],
): readonly Past[] {
  const open = intervals.flatMap((path) => roomOf(design, path) ?? []);
  const owners = new Set([...filled.rooms.values(), ...open.map(({ circuit }) => circuit)]);
  if (owners.size === 0) return [];
  const found = new Map<string, { readonly turned: ReadonlySet<string>; readonly pairs: number[] }>();
  pairs.forEach(({ between, needed }, i) => {
    const turned = [...owners].filter((circuit) => !between.includes(circuit));
    if (needed === null || turned.length === 0) return;
    const name = JSON.stringify(turned);
    const known = found.get(name);
    if (known) known.pairs.push(i);
    else found.set(name, { turned: new Set(turned), pairs: [i] });
  });
  return [...found.values()].map((past) => ({
    ...past,
    room: new Map(
      open.flatMap(({ path, circuit, end }) => (past.turned.has(circuit) ? [[path, end] as const] : [])),
    ),
  }));
}

interface OpenRoom {
  readonly path: string;
  readonly circuit: string;
  /** Of the interval, where the circuit takes the least room. */
  readonly end: -1 | 1;
}

/** Null where the interval says nothing of the room that a circuit takes. */
function roomOf(design: Design, path: string): OpenRoom | null {
  const [, list = '', at = '', field = ''] = /^(layers|windings)\[(\d+)\]\.(.+)$/.exec(path) ?? [];
  if (list === 'windings') {
    const { circuit } = design.windings[Number(at)]!;
    return field === 'wire.overallDiameter' || field === 'wire.conductor' ? { path, circuit, end: -1 } : null;
  }
  if (list === 'layers') {
    const circuit = circuitOf(design, design.layers[Number(at)]!);
    const end = LAYER_ENDS[field.replace(/\.(left|right)(?=\.|$)/, '')];
    return circuit === null || end === undefined ? null : { path, circuit, end };
  }
  if (path !== 'core.outerGap' && path !== 'former.height') return null;
  const circuit = coreCircuit(design);
  return circuit === null ? null : { path, circuit, end: 1 };
}

const LAYER_ENDS: Readonly<Record<string, -1 | 1>> = {
  'margins.width': 1,
  'extent.from': 1,
  'extent.to': -1,
  inset: 1,
  thickness: -1,
};

// What an act costs whoever winds: what a hand does anyway is light, another wire or former has to be bought and fitted. Weights
// of our own, common practice of the winding table; only for ordering.

import type { Act, ActKind } from './act.ts';

const EFFORT: Readonly<Record<ActKind, number>> = {
  fill: 0.5,
  'tape-wide': 0.5,
  margin: 1,
  'tape-down': 1,
  sleeve: 1,
  plies: 1,
  'tape-between': 1.5,
  slot: 1.5,
  bridge: 2,
  bond: 2,
  'outer-gap': 2.5,
  wrap: 2.5,
  wire: 3,
  order: 4,
  wall: 6,
  height: 8,
  width: 8,
};

/** A sleeve of another kind, beside one that is only pushed further in. */
const NEW_SLEEVE = 0.5;
/** Each ply more than the first. */
const PLY = 0.35;

export function effortOf(act: Act): number {
  const more = act.kind === 'plies' ? PLY * ((act.amount ?? 1) - 1) : isNewSleeve(act) ? NEW_SLEEVE : 0;
  return EFFORT[act.kind] + more;
}

const isNewSleeve = ({ kind, amount }: Act): boolean => kind === 'sleeve' && amount === null;

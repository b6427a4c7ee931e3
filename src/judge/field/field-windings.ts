// Capacitance between every two windings: each at one volt in turn, everything else held at none, and the charge that
// the others then carry. Asked for only where a circuit has more than one winding: else the circuits say the same.

import { extrapolatedOne } from '#field/solve/capacitance.ts';
import type { AskedState, SolvedField } from '#field/solve/solve-field.ts';
import type { Design } from '#model/design.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { WindingCapacitance } from './field-report.ts';
import { meanTurn, middleHeight } from '#judge/drawn-field/mean-turn.ts';
import { VACUUM } from './vacuum.ts';

/** One for each winding that is drawn, in the order of `drawnWindings`. */
export function windingStates(drawn: DrawnField): readonly AskedState[] {
  return drawnWindings(drawn).map(({ id }) => ({
    electrodes: Float64Array.from(drawn.electrodes, ({ turn }) => (turn?.winding === id ? 1 : 0)),
    floating: [],
  }));
}

/** `first`: place of the first of these states among those that were solved. */
export function windingCapacitances(
  design: Design,
  drawn: DrawnField,
  { states, section, coarser }: SolvedField,
  first: number,
): readonly WindingCapacitance[] {
  const windings = drawnWindings(drawn);
  const charge = (of: SolvedField['states'], state: number, id: string): number =>
    drawn.electrodes.reduce(
      (sum, { turn }, i) => (turn?.winding === id ? sum + of[first + state]!.charges[i]! : sum),
      0,
    );
  return windings.flatMap((one, i) =>
    windings.slice(i + 1).map((other, k): WindingCapacitance => {
      // the two differ by what either mesh leaves over
      const on = (of: SolvedField['states']): number =>
        -(charge(of, i, other.id) + charge(of, i + 1 + k, one.id)) / 2;
      const told = extrapolatedOne(on((coarser ?? { states }).states), on(states));
      const value = Math.max(0, told.value);
      const error = coarser === null ? null : told.error;
      const between = [one.id, other.id] as const;
      if (section.axis !== null) return { between, farads: value * VACUUM * 1e-3, error, meanTurn: null };
      const turn = meanTurn(design, middleHeight(drawn, [one.owner, other.owner])).millimetres;
      return { between, farads: value * VACUUM * turn * 1e-3, error, meanTurn: turn };
    }),
  );
}

/** Empty where every circuit has one winding only. */
function drawnWindings({
  electrodes,
}: DrawnField): readonly { readonly id: string; readonly owner: string }[] {
  const all = new Map(
    electrodes.flatMap(({ turn, owner }) => (turn === null ? [] : [[turn.winding, owner]])),
  );
  const isMore = new Set(all.values()).size < all.size;
  return isMore ? [...all].map(([id, owner]) => ({ id, owner })) : [];
}

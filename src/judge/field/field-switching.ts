// What switching drives onto the circuits that may be touched, for each volt at the primary's switched end: every turn of
// a mains winding swings by its place. Once as it is, once with every bonded screen floating, which tells what the
// screens are good for. Held circuits stand still: the charge is what a tied output would have to carry away.

import { extrapolatedOne } from '#field/solve/capacitance.ts';
import type { AskedState, SolvedField } from '#field/solve/solve-field.ts';
import type { Design } from '#model/design.ts';
import type { DrawnField } from '#judge/drawn-field/drawn-field.ts';
import type { SwitchingCharge } from './field-report.ts';
import { meanTurn, middleHeight } from '#judge/drawn-field/mean-turn.ts';
import { VACUUM } from './vacuum.ts';

/** Empty where no mains winding is drawn, or nothing that may be touched. */
export function switchingCases(design: Design, drawn: DrawnField): readonly AskedState[] {
  const primary = primaryOf(design, drawn);
  if (primary === null || touchedOf(design, drawn).length === 0) return [];
  const most =
    Math.max(...drawn.electrodes.map(({ turn }) => (turn?.winding === primary ? turn.at : 0))) + 0.5;
  const electrodes = Float64Array.from(drawn.electrodes, ({ turn, owner }) => {
    if (turn === null || roleOf(design, owner) !== 'mains') return 0;
    const count = Math.max(
      ...drawn.electrodes.map((one) => (one.turn?.winding === turn.winding ? one.turn.at : 0)),
    );
    // by the turns ratio, the start at the switched end
    return (count + 0.5 - turn.at) / most;
  });
  const asIs = { electrodes, floating: drawn.floating };
  return drawn.screens.length === 0
    ? [asIs]
    : [asIs, { electrodes, floating: [...drawn.floating, ...drawn.screens] }];
}

/** `first`: place of the first of these cases among the states that were solved. */
export function switchingCharges(
  design: Design,
  drawn: DrawnField,
  solved: SolvedField,
  first: number,
): readonly SwitchingCharge[] {
  const primary = primaryOf(design, drawn);
  const [asIs, bare] = [solved.states[first], solved.states[first + 1]];
  if (asIs === undefined || primary === null) return [];
  const frequency = design.converter?.switchingFrequency.value ?? null;
  return touchedOf(design, drawn).map((onto): SwitchingCharge => {
    const on = (of: SolvedField, state: number): number => {
      let sum = 0;
      drawn.electrodes.forEach(({ owner, turn }, i) => {
        if (owner === onto && turn !== null) sum += of.states[state]!.charges[i]!;
      });
      return sum;
    };
    const charge = (state: number): { readonly farads: number; readonly error: number } => {
      const { value, error } = extrapolatedOne(on(solved.coarser ?? solved, state), on(solved, state));
      const circuit = drawn.electrodes.find(({ turn }) => turn?.winding === primary)!.owner;
      const metres = meanTurn(design, middleHeight(drawn, [circuit, onto])).millimetres / 1000;
      const farads = Math.abs(value) * VACUUM * (solved.section.axis === null ? metres : 1e-3);
      return { farads, error };
    };
    const { farads, error } = charge(first);
    return {
      onto,
      farads,
      error: solved.coarser === null ? null : error,
      withoutScreens: bare === undefined ? null : charge(first + 1).farads,
      amperesPerVolt: frequency === null ? null : 2 * Math.PI * frequency * farads,
    };
  });
}

const roleOf = ({ circuits }: Design, id: string) => circuits.find((one) => one.id === id)?.role;

function touchedOf(design: Design, drawn: DrawnField): readonly string[] {
  return design.circuits
    .filter(
      ({ id, role }) => role === 'touchable' && drawn.electrodes.some((one) => one.owner === id && one.turn),
    )
    .map(({ id }) => id);
}

/** The mains winding of the most turns drawn. */
function primaryOf(design: Design, drawn: DrawnField): string | null {
  let found: { readonly winding: string; readonly at: number } | null = null;
  for (const { owner, turn } of drawn.electrodes) {
    if (turn === null || roleOf(design, owner) !== 'mains') continue;
    if (found === null || turn.at > found.at) found = turn;
  }
  return found?.winding ?? null;
}

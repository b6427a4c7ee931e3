// Circuits of which nothing lies in the window: no winding, no screen, no core. Between such a circuit and another there is
// nothing to judge; that nothing was drawn is no insulation. Parts near the coil lie in no section.

import type { Design } from '#model/design.ts';
import { metalTies } from './metal-ties.ts';

/**
 * An earth is left out: it often is only outside, and is asked of bridging parts. A core whose bond is unknown does
 * not stand in for a winding.
 */
export function undrawnCircuits(design: Design): ReadonlySet<string> {
  const { circuits, windings, layers, core } = design;
  const { nameOf } = metalTies(
    design,
    typeof core.bond === 'string' && core.bond !== 'floating' ? core.bond : null,
  );
  const wound = new Set(layers.flatMap((layer) => (layer.kind === 'winding' ? [layer.winding] : [])));
  const drawn = new Set([
    ...windings.flatMap(({ id, circuit }) => (wound.has(id) ? [circuit] : [])),
    ...layers.flatMap((layer) => (layer.kind === 'screen' && layer.circuit !== null ? [layer.circuit] : [])),
    nameOf('core'),
  ]);
  return new Set(circuits.flatMap(({ id, role }) => (role === 'earth' || drawn.has(id) ? [] : [id])));
}

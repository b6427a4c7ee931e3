// Whose the core is: that of its bond, or of the parts that touch it.

import type { Design } from '#model/design.ts';
import { metalTies } from './metal-ties.ts';

/** The circuit that the core belongs to; `core` where that is not known, null where to none. */
export function coreCircuit(design: Design): string | null {
  const { bond } = design.core;
  if (typeof bond !== 'string') return 'core';
  return bond === 'floating' ? touchedBy(design) : bond;
}

/** The circuit whose parts touch the core; null where none does. */
export function touchedBy(design: Design): string | null {
  const touched = metalTies(design, null).nameOf('core');
  return design.circuits.some(({ id }) => id === touched) ? touched : null;
}

// What a photograph may show of a build that is taken apart: a step, by the path of what is looked at there.

import type { ApartStep } from '#state/begin/taking-apart.ts';

const PLACES: Readonly<Record<Exclude<ApartStep['kind'], 'layer'>, string | null>> = {
  label: 'supply',
  outside: 'outside',
  bridges: 'bridges',
  core: 'core',
  next: null,
  former: 'former',
};

/** Null where a step looks at nothing of its own. */
export const placeOfStep = (step: ApartStep): string | null =>
  step.kind === 'layer' ? `layers[${step.layer}]` : PLACES[step.kind];

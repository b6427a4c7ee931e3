// Weak spots of the whole build, which lie between no two circuits: too hot, or not fitting its window.

import type { Build } from '#solver/section/build.ts';
import { chamberFits } from '#solver/section/lay-out.ts';
import type { Heat } from '#stress/heat/heat.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { WeakSpot } from './verdict.ts';

/** Null where nothing is known to be too hot. */
export function hotSpot({ system, hottest, plusMinus, reserve }: Heat): WeakSpot | null {
  if (!system || hottest === null || !reserve || reserve.asRead >= plusMinus) return null;
  const parts = system.setBy.map(({ material }) => material).join(', ');
  const give = plusMinus > 0 ? ` give or take ${plusMinus} K` : '';
  return {
    ...placeless('hot'),
    verdict: reserve.asRead < 0 ? 'falls-short' : 'not-shown',
    says: `The hottest insulation is at ${hottest} degC${give}; ${parts} is of class ${system.thermalClass}.`,
    mend: 'Take material of a higher class, or keep it cooler.',
  };
}

/** A turn that finds no room in its width is told before a stack that is too high. */
export function overfullSpot(build: Build): WeakSpot {
  const fits = chamberFits(build);
  const wide = fits.flatMap(({ layers }) => layers).find(({ tooWide }) => tooWide);
  return wide === undefined
    ? tooHigh(build, Math.max(...fits.map((fit) => fit.used)) as Nm)
    : tooWide(wide.layer);
}

function tooHigh({ height }: Build, used: Nm): WeakSpot {
  const [stack, former] = [Math.ceil(used / 1e4) / 100, inMm(height)];
  return {
    ...placeless('overfull'),
    length: inMm(used),
    required: former,
    says: `The layers are ${stack.toFixed(2)} mm high, the former ${former.toFixed(2)} mm: they do not fit the window.`,
    mend: 'Take a higher former or fewer layers.',
  };
}

const tooWide = (layer: number): WeakSpot => ({
  ...placeless('overfull'),
  layers: [layer],
  says: `One turn of layer ${layer + 1} is wider than the place it has beside its margins: it does not fit the window.`,
  mend: 'Take thinner wire, fewer wires side by side, or narrower margins.',
});

const placeless = (kind: 'hot' | 'overfull'): WeakSpot => ({
  kind,
  between: null,
  section: 'plain',
  at: [0, 0],
  proven: true,
  also: [],
  layers: [],
  metric: null,
  length: null,
  required: null,
  achieved: 'functional',
  needed: null,
  verdict: 'not-shown',
  points: [],
  says: '',
  mend: '',
});

// Weak spots of the whole build, which lie between no two circuits: too hot, too much current for a person who touches the
// output, or not fitting its window.

import type { Build } from '#solver/section/build.ts';
import { chamberFits } from '#solver/placing/chamber-fits.ts';
import type { Heat } from '#stress/heat/heat.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { JudgedTouch } from '#judge/cases/judged-touch.ts';
import type { WeakSpot } from '#judge/verdict/spot.ts';

/** Null where the hottest spot is cool enough, or nothing says how hot it is. */
export function hotSpot({ system, hottest, plusMinus, limits }: Heat): WeakSpot | null {
  if (hottest === null || limits === null || hottest + plusMinus <= limits.worst.value) return null;
  const isShort = hottest > limits.best.value;
  return {
    ...placeless('hot'),
    verdict: isShort ? 'falls-short' : 'not-shown',
    cause: {
      of: 'heat',
      hottest,
      plusMinus,
      limit: isShort ? limits.best.value : limits.worst.value,
      made: system && {
        thermalClass: system.thermalClass,
        of: [...new Set(system.setBy.map(({ material }) => material))],
      },
      open: { method: limits.methodOpen, thermalClass: limits.classOpen },
    },
  };
}

/** Null where the current stays under the limit. */
export function touchSpot({ touch, mains }: JudgedTouch): WeakSpot | null {
  if (touch.verdict === 'meets') return null;
  const { rms, limit, windings, missing } = touch;
  return {
    ...placeless('touch-current'),
    section: 'outside',
    verdict: touch.verdict,
    cause: { of: 'touch-current', mains, rms, limit, windings, missing },
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

const tooHigh = ({ height }: Build, used: Nm): WeakSpot => ({
  ...placeless('overfull'),
  length: inMm(used),
  required: inMm(height),
  cause: { of: 'stack' },
});

const tooWide = (layer: number): WeakSpot => ({
  ...placeless('overfull'),
  layers: [layer],
  cause: { of: 'turn', layer },
});

const placeless = (kind: 'hot' | 'overfull' | 'touch-current'): Omit<WeakSpot, 'cause'> => ({
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
  conditions: [],
  points: [],
});

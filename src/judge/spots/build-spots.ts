// Weak spots of the whole build, which lie between no two circuits: too hot, too much current for a person who touches the
// output, or not fitting its window.

import type { Build } from '#solver/section/build.ts';
import { chamberFits } from '#solver/placing/lay-out.ts';
import type { Heat } from '#stress/heat/heat.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import type { HeatLimits } from '#stress/heat/heat-limits.ts';
import type { JudgedTouch } from '#judge/answers/judged-touch.ts';
import type { WeakSpot } from '#judge/verdict/verdict.ts';

/** Null where the hottest spot is cool enough, or nothing says how hot it is. */
export function hotSpot({ system, hottest, plusMinus, limits }: Heat): WeakSpot | null {
  if (hottest === null || limits === null || hottest + plusMinus <= limits.worst.value) return null;
  const isShort = hottest > limits.best.value;
  const give = plusMinus > 0 ? ` give or take ${plusMinus} K` : '';
  const parts = system && [...new Set(system.setBy.map(({ material }) => material))].join(', ');
  const made = parts === null ? '' : ` for class ${system!.thermalClass} (${parts})`;
  const limit = isShort ? limits.best.value : limits.worst.value;
  return {
    ...placeless('hot'),
    verdict: isShort ? 'falls-short' : 'not-shown',
    says: `The hottest insulation is at ${hottest} degC${give}; the rule book allows ${limit} degC${made}${openSays(limits, isShort)}.`,
    mend: isShort ? 'Take material of a higher class, or keep it cooler.' : openMend(limits),
  };
}

function openSays({ methodOpen, classOpen }: HeatLimits, isShort: boolean): string {
  if (isShort) return '';
  const method = methodOpen ? ', if it was read by thermocouple' : '';
  return `${method}${classOpen ? ', if what has no class is of the lowest' : ''}`;
}

function openMend({ methodOpen, classOpen }: HeatLimits): string {
  if (methodOpen) return 'Say how it was measured.';
  return classOpen ? 'Name what the tapes and the former are made of.' : 'Measure it more closely.';
}

/** Null where the current stays under the limit. */
export function touchSpot({ touch, mains }: JudgedTouch): WeakSpot | null {
  if (touch.verdict === 'meets') return null;
  const isShort = touch.verdict === 'falls-short';
  const what = isShort
    ? 'through the parts across the barrier alone'
    : touch.missing.length > 0
      ? `at the least: of ${touch.missing.join(', ')} no value is given`
      : 'with the estimated capacitance of the windings';
  return {
    ...placeless('touch-current'),
    section: 'outside',
    verdict: touch.verdict,
    says: `At ${Math.round(mains)} V a person who touches the output takes ${touch.rms.toFixed(2)} mA ${what}; the limit is ${touch.limit} mA.`,
    mend: isShort ? 'Take less capacitance across the barrier.' : '',
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

const placeless = (kind: 'hot' | 'overfull' | 'touch-current'): WeakSpot => ({
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
  says: '',
  mend: '',
});

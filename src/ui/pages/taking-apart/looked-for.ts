// What is looked for at each step, as pictures: terms of the glossary drawn from builds of the lessons, each with what the eye
// should settle on there. What lies outside the winding window is in no section and has no picture.

import type { ApartStep } from '#state/begin/taking-apart.ts';

export interface LookedFor {
  /** Id of the term. */
  readonly term: string;
  readonly says: string;
}

type LayerKind = 'tape' | 'winding' | 'screen';

const LAYERS: Readonly<Record<LayerKind, readonly LookedFor[]>> = {
  tape: [
    { term: 'ply', says: 'plies on one another: count them where they are fewest' },
    { term: 'flange', says: 'the edge at the flange: does it reach, or is there a gap?' },
  ],
  winding: [
    { term: 'block', says: 'the margin between turns and flange: filled or empty?' },
    { term: 'sleeve', says: 'a lead in its sleeve: how far does it reach in?' },
    { term: 'insulated-wire', says: 'the wire close up: enamel alone, or a cover in layers?' },
  ],
  screen: [{ term: 'screen', says: 'the foil: where do its edges end?' }],
};

const STEPS: Readonly<Record<Exclude<ApartStep['kind'], 'layer'>, readonly LookedFor[]>> = {
  label: [],
  outside: [],
  bridges: [],
  core: [{ term: 'core', says: 'the core round the window: what lies next to it?' }],
  next: [],
  former: [
    { term: 'wall', says: 'the wall of the tube, where it is thinnest' },
    { term: 'chamber', says: 'flanges and chambers, from face to face' },
  ],
};

export const lookedFor = (step: ApartStep, layerKind: string): readonly LookedFor[] =>
  step.kind === 'layer' ? (LAYERS[layerKind as LayerKind] ?? []) : STEPS[step.kind];

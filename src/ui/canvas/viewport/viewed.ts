// What a scene gives to look at: its frame, the height of its stack, the ply that sets the offered scales.

import type { Scene } from '#drawing/scene/scene.ts';
import type { Sights } from './viewport.svelte.ts';

const NOTHING: Sights = { frame: { x0: 0, y0: 0, x1: 1, y1: 1 }, stack: 1, ply: null };

export function sightsOf(scene: Scene | null): Sights {
  if (scene === null) return NOTHING;
  const plies = scene.areas.filter(({ kind }) => kind === 'ply').map(({ bounds }) => bounds.y1 - bounds.y0);
  return {
    frame: scene.frame,
    stack: Math.max(...scene.layers.map(({ y1 }) => y1), scene.rulers.y[1] / 4),
    ply: plies.length === 0 ? null : Math.min(...plies),
  };
}

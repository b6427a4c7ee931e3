// Hatches of the materials and textures of the circuits, as SVG patterns in screen pixels.

import { LINE, type MaterialKey, type Theme } from '#drawing/scene/palette.ts';
import type { HueKey } from '#words/design/circuit-look.ts';
import { element, type View } from './svg-view.ts';

export const materialFill = (view: View, key: MaterialKey): string =>
  HATCHED.includes(key) ? `url(#${view.prefix}${key})` : view.theme.materials[key].fill;

export const textureFill = (view: View, hue: HueKey): string => `url(#${view.prefix}${hue})`;

const HATCHED: readonly MaterialKey[] = ['core', 'former', 'block'];

export function patterns(view: View): string {
  const { theme, prefix } = view;
  const hatches = [coreHatch(theme, prefix), formerHatch(theme, prefix), stipple(theme, prefix)];
  const textures = HUES.map((hue) => texture(theme, prefix, hue));
  return element('defs', {}, [...hatches, ...textures].join(''));
}

const HUES: readonly HueKey[] = ['primary', 'auxiliary', 'output', 'second-output', 'earth', 'isolated'];

const pattern = (
  id: string,
  size: readonly [number, number],
  fill: string,
  content: string,
  turn = 0,
): string =>
  element(
    'pattern',
    {
      id,
      width: size[0],
      height: size[1],
      patternUnits: 'userSpaceOnUse',
      patternTransform: turn === 0 ? null : `rotate(${turn})`,
    },
    element('rect', { width: size[0], height: size[1], fill }) + content,
  );

const bar = (y: number, width: number, stroke: string, thick: number): string =>
  element('path', { d: `M0 ${y}H${width}`, stroke, 'stroke-width': thick, fill: 'none' });

/** Double lines leaning right. */
function coreHatch(theme: Theme, prefix: string): string {
  const { fill, hatch } = theme.materials.core;
  const lines = bar(2, 9, hatch, LINE.hatch) + bar(4.5, 9, hatch, LINE.hatch);
  return pattern(`${prefix}core`, [9, 9], fill, lines, -45);
}

/** Single lines leaning the other way. */
function formerHatch(theme: Theme, prefix: string): string {
  const { fill, hatch } = theme.materials.former;
  return pattern(`${prefix}former`, [11, 11], fill, bar(5.5, 11, hatch, LINE.hatch), 45);
}

function stipple(theme: Theme, prefix: string): string {
  const { fill, hatch } = theme.materials.block;
  const dot = (cx: number, cy: number): string => element('circle', { cx, cy, r: 0.75, fill: hatch });
  return pattern(`${prefix}block`, [11, 9], fill, dot(2.5, 2.5) + dot(8, 7));
}

/** The circuit's texture on its fill, for rows too small for circles and for black and white. */
function texture(theme: Theme, prefix: string, hue: HueKey): string {
  const { ring, fill } = theme.circuits[hue];
  const id = `${prefix}${hue}`;
  switch (hue) {
    case 'primary':
      return pattern(id, [5, 5], fill, bar(2.5, 5, ring, 1.6), -45);
    case 'auxiliary':
      return pattern(id, [6, 6], fill, element('circle', { cx: 3, cy: 3, r: 1.3, fill: ring }));
    case 'output':
      return pattern(id, [5, 5], fill, bar(2.5, 5, ring, 1.5));
    case 'second-output':
      return pattern(id, [6, 6], fill, element('rect', { x: 1.5, y: 1.5, width: 3, height: 3, fill: ring }));
    case 'earth':
      return pattern(id, [8, 4], fill, element('path', { d: 'M1 2H6', stroke: ring, 'stroke-width': 1.5 }));
    case 'isolated':
      return pattern(
        id,
        [7, 7],
        fill,
        element('circle', { cx: 3.5, cy: 3.5, r: 2, fill: 'none', stroke: ring }),
      );
  }
}

// The ladder of grades with nothing reached, to be filled by pencil up to the grade that stands: four rungs over the ground.

import type { Theme } from '#drawing/scene/palette.ts';
import { element } from '#drawing/svg/svg-element.ts';

const RUNGS = ['reinforced', 'double', 'basic, supplementary', 'functional'] as const;
const STEP = 15;
/** 8.25 pt on paper. */
const SIZE = 11;
const WIDTH = 200;

export function emptyLadder(theme: Theme): string {
  const bottom = RUNGS.length * STEP + 4;
  const rungs = RUNGS.map((word, i) => {
    const y = i * STEP + 4;
    const rung = {
      x: 4,
      y,
      width: 44,
      height: 7,
      fill: 'none',
      stroke: theme.ink,
      'stroke-dasharray': '3 2',
    };
    return (
      element('rect', rung) +
      element('text', { x: 58, y: y + 7.5, 'font-size': SIZE, fill: theme.second }, word)
    );
  });
  const ground = element('path', { d: `M0 ${bottom}H52`, stroke: theme.ink, 'stroke-width': 2 });
  const none = element('text', { x: 58, y: bottom + 3, 'font-size': SIZE, fill: theme.second }, 'none');
  const size = {
    width: WIDTH,
    height: bottom + 6,
    viewBox: `0 0 ${WIDTH} ${bottom + 6}`,
    'aria-hidden': 'true',
  };
  return element('svg', size, rungs.join('') + ground + none);
}

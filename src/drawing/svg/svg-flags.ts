// Draws the numbered pennants: filled where the spot is on this section, dashed and hollow where it is on another.

import { FLAG, flagPlaces, type FlagPlace } from '#drawing/scene/flag-places.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { element, line, px, text, type View } from './svg-view.ts';

export function flags(scene: Scene, view: View): string {
  return [...placesOf(scene, view)]
    .reverse()
    .map((place) => pennant(place, view))
    .join('');
}

export const placesOf = (scene: Scene, view: View): readonly FlagPlace[] =>
  flagPlaces(scene.flags, ([x, y]) => [view.x(x), view.y(y)]);

function pennant({ flag, tip, nose }: FlagPlace, view: View): string {
  const ink = flag.short ? view.theme.pencil : view.theme.ink;
  const side = flag.stands === 'left' ? -1 : 1;
  const [x, y] = nose;
  const [neck, back, half] = [x + side * FLAG.nose, x + side * FLAG.width, FLAG.height / 2];
  const body = element('path', {
    d: `M${px(x)} ${px(y)}L${px(neck)} ${px(y - half)}H${px(back)}V${px(y + half)}H${px(neck)}Z`,
    fill: flag.here ? ink : view.theme.sheet,
    stroke: flag.here ? view.theme.sheet : ink,
    'stroke-width': flag.here ? 1.2 : 1.5,
    'stroke-dasharray': flag.here ? null : '3.5 2.5',
  });
  const leader = tip[0] === x && tip[1] === y ? '' : line(tip, [x, y], ink, 1);
  const style = {
    size: 12.5,
    fill: flag.here ? view.theme.sheet : ink,
    weight: 700,
    anchor: 'middle',
  } as const;
  return leader + body + text([(neck + back) / 2, y + 4.5], `${flag.number}`, style);
}

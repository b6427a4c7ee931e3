// Which flags of a section are in sight, and where their bodies stand on the stage.

import { FLAG, flagBody, flagPlaces, type FlagPlace } from '#drawing/scene/flag-places.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { toScreenX, toScreenY, type Plate, type View } from '#drawing/scene/view.ts';

/** With its body, in pixels of the stage. */
export type PlacedFlag = FlagPlace & Plate;

/** Flags whose spot is in sight, the worst first, beside what is `kept` free. A body that would leave the stage turns to the other side. */
export function flagsInSight(
  scene: Scene,
  view: View,
  room: Plate,
  kept: readonly Plate[],
): readonly PlacedFlag[] {
  const pixels = (at: readonly [number, number]): readonly [number, number] => [
    toScreenX(view, at[0]),
    toScreenY(view, at[1]),
  ];
  const seen = scene.flags.filter(({ at }) => {
    const [x, y] = pixels(at);
    return x >= room.left && x <= room.right && y >= room.top && y <= room.bottom;
  });
  const turned = seen.map((flag) => {
    const [x] = pixels(flag.at);
    if (flag.stands === 'left' && x - FLAG.width < room.left) return { ...flag, stands: 'right' as const };
    if (flag.stands === 'right' && x + FLAG.width > room.right) return { ...flag, stands: 'left' as const };
    return flag;
  });
  return flagPlaces(turned, pixels, kept).map((place) => ({ ...place, ...flagBody(place) }));
}

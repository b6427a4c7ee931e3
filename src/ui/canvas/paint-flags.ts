// Paints the numbered pennants: filled where the spot is on this section, dashed and hollow where it is on another,
// with a ring where it is the picked one.

import { FLAG, flagPlaces, type FlagPlace } from '#report/flag-places.ts';
import { LETTERING } from '#report/palette.ts';
import type { Picture } from './picture.ts';
import { letter, line, stroke, type Pen } from './pen.ts';
import { toScreenX, toScreenY } from './view.ts';

export interface PlacedFlag extends FlagPlace {
  /** Its body, in pixels of the stage. */
  readonly left: number;
  readonly top: number;
}

/** Flags whose spot is in sight, the worst first. A body that would leave the stage turns to the other side. */
export function flagsInSight({
  scene,
  view,
  room,
}: Pick<Picture, 'scene' | 'view' | 'room'>): readonly PlacedFlag[] {
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
  return flagPlaces(turned, pixels).map((place) => ({
    ...place,
    left: place.flag.stands === 'left' ? place.nose[0] - FLAG.width : place.nose[0],
    top: place.nose[1] - FLAG.height / 2,
  }));
}

export function paintFlags(pen: Pen): void {
  for (const place of [...flagsInSight(pen.picture)].reverse()) pennant(pen, place);
}

function pennant({ ink, picture }: Pen, { flag, tip, nose }: FlagPlace): void {
  const { theme } = picture;
  const color = flag.short ? theme.pencil : theme.ink;
  const side = flag.stands === 'left' ? -1 : 1;
  const [x, y] = nose;
  const [neck, back, half] = [x + side * FLAG.nose, x + side * FLAG.width, FLAG.height / 2];
  if (tip[0] !== x) line(ink, tip[0], tip[1], x, y, { color, width: 1 });
  ink.beginPath();
  ink.moveTo(x, y);
  ink.lineTo(neck, y - half);
  ink.lineTo(back, y - half);
  ink.lineTo(back, y + half);
  ink.lineTo(neck, y + half);
  ink.closePath();
  if (flag.number === picture.flag) stroke(ink, { color: theme.ink, width: 5 });
  ink.fillStyle = flag.here ? color : theme.sheet;
  ink.fill();
  stroke(ink, {
    color: flag.here ? theme.sheet : color,
    width: flag.here ? 1.2 : 1.5,
    dash: flag.here ? [] : [3.5, 2.5],
  });
  const look = { size: 12.5, color: flag.here ? theme.sheet : color, bold: true, family: LETTERING };
  letter(ink, (neck + back) / 2, y, `${flag.number}`, look);
}

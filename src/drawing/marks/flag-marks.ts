// The numbered pennants: filled where the spot is on this section, dashed and hollow where it is on another, with a ring
// where it is the picked one.

import { FLAG, type FlagPlace } from '#drawing/scene/flag-places.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import type { Mark, Point } from '#drawing/paper/mark.ts';
import { CHIP_SIZE, line } from '#drawing/paper/shapes.ts';

/** The worst last, so that it lies on top. */
export const flagMarks = (
  places: readonly FlagPlace[],
  theme: Theme,
  picked: number | null,
): readonly Mark[] =>
  [...places].reverse().flatMap((place) => pennant(place, theme, place.flag.number === picked));

function pennant({ flag, tip, nose }: FlagPlace, theme: Theme, isPicked: boolean): readonly Mark[] {
  const role = 'spots';
  const color = flag.short ? theme.pencil : theme.ink;
  const side = flag.stands === 'left' ? -1 : 1;
  const [x, y] = nose;
  const [neck, back, half] = [x + side * FLAG.nose, x + side * FLAG.width, FLAG.height / 2];
  const loops: readonly (readonly Point[])[] = [
    [
      [x, y],
      [neck, y - half],
      [back, y - half],
      [back, y + half],
      [neck, y + half],
    ],
  ];
  const leader = tip[0] === x && tip[1] === y ? [] : [line(role, tip, nose, { color, width: 1 })];
  const ring = { kind: 'area', role, loops, fill: null, stroke: { color: theme.ink, width: 5 } } as const;
  const stroke = flag.here ? { color: theme.sheet, width: 1.2 } : { color, width: 1.5, dash: [3.5, 2.5] };
  return [
    ...leader,
    ...(isPicked ? [ring] : []),
    { kind: 'area', role, loops, fill: flag.here ? color : theme.sheet, stroke },
    {
      kind: 'words',
      role,
      at: [(neck + back) / 2, y],
      words: `${flag.number}`,
      size: CHIP_SIZE,
      color: flag.here ? theme.sheet : color,
      bold: true,
    },
  ];
}

// Paints the numbered pennants: filled where the spot is on this section, dashed and hollow where it is on another,
// with a ring where it is the picked one.

import { FLAG, type FlagPlace } from '#drawing/scene/flag-places.ts';
import { LETTERING } from '#drawing/scene/palette.ts';
import { letter, line, stroke, type Pen } from './pen.ts';

export function paintFlags(pen: Pen): void {
  for (const place of [...pen.picture.flags].reverse()) pennant(pen, place);
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

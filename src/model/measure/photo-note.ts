// A photograph as the desk holds it, and as an entry of `evidence` keeps it: words for people, its size, how it is turned and
// its scale in fields of their own. Older files wrote those into the words, in brackets; those are still read.

import type { Evidence } from '#model/design/evidence.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { inMm } from '#units/quantity.ts';
import { NUMBER, POINT, plainNumber, pointOf, type NotePoint } from './note-text.ts';

export interface PhotoNote {
  readonly words: string;
  /** Of the picture as kept, pixels. */
  readonly width: number;
  readonly height: number;
  /** Degrees clockwise by which it is shown turned; points are those of the unturned picture. */
  readonly turned: number;
  readonly scale: NotedScale | null;
}

/** A known length, mm, and where it lies on the picture. */
export interface NotedScale {
  readonly length: number;
  readonly plusMinus: number;
  readonly from: NotePoint;
  readonly to: NotePoint;
  /** Half-width of the picking, pixels. */
  readonly half: number;
}

type Entry = NonNullable<DesignFile['evidence']>[number];

/** An entry must say what it shows: where nobody does, that it is a photograph. */
export function photoFields(note: PhotoNote): {
  readonly says: string;
  readonly picture: NonNullable<Entry['picture']>;
} {
  const { words, width, height, turned, scale } = note;
  return {
    says: words.trim() || NAMELESS,
    picture: { width, height, turned, ...(scale === null ? {} : { scale: scaleField(scale) }) },
  };
}

const NAMELESS = 'photograph';

const scaleField = ({ length, plusMinus, from, to, half }: NotedScale) => ({
  length: { value: `${plainNumber(length)} mm`, plusMinus: `${plainNumber(plusMinus)} mm` },
  from: [from.x, from.y] as [number, number],
  to: [to.x, to.y] as [number, number],
  picked: half,
});

/** Null where nothing is known of its size. */
export function readPhoto({ says, picture }: Pick<Evidence, 'says' | 'picture'>): PhotoNote | null {
  if (picture === null) return readPhotoText(says);
  const { width, height, turned, scale } = picture;
  return { words: says === NAMELESS ? '' : says, width, height, turned, scale: scale && notedScale(scale) };
}

const notedScale = ({
  length,
  from,
  to,
  picked,
}: NonNullable<NonNullable<Evidence['picture']>['scale']>): NotedScale => ({
  length: inMm(length.value),
  plusMinus: inMm(length.plusMinus),
  from: { x: from[0], y: from[1] },
  to: { x: to[0], y: to[1] },
  half: picked,
});

const SCALE = String.raw`(${NUMBER}) mm ± (${NUMBER}) mm is from (${POINT}) to (${POINT}), picked to (${NUMBER}) px`;
const FORM = new RegExp(
  String.raw`^([^]*?) ?\[(\d{1,5}) x (\d{1,5}) px(?:; turned (-?\d{1,3}\.\d{2}) degrees)?; (?:no scale|${SCALE})\]$`,
);

function readPhotoText(says: string): PhotoNote | null {
  const found = FORM.exec(says);
  if (found === null) return null;
  const [, words = '', width, height, turned = '0', length, plusMinus, from = '', to = '', half] = found;
  const scale =
    length === undefined
      ? null
      : {
          length: Number(length),
          plusMinus: Number(plusMinus),
          from: pointOf(from),
          to: pointOf(to),
          half: Number(half),
        };
  return { words, width: Number(width), height: Number(height), turned: Number(turned), scale };
}

// What a photograph's entry in `evidence` says: free words, then in brackets its size, how it is turned, and its scale.
// Words for people and for the page alike: the report prints them, and the page reads them back.

import { NUMBER, POINT, notePoint, plainNumber, pointOf, type NotePoint } from './note-text.ts';

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

export function photoNoteText({ words, width, height, turned, scale }: PhotoNote): string {
  const turn = turned === 0 ? '' : `; turned ${turned.toFixed(2)} degrees`;
  const known = scale === null ? '; no scale' : `; ${scaleText(scale)}`;
  return `${words.trim()} [${width} x ${height} px${turn}${known}]`.trimStart();
}

const scaleText = ({ length, plusMinus, from, to, half }: NotedScale): string =>
  `${plainNumber(length)} mm ± ${plainNumber(plusMinus)} mm is from ${notePoint(from)} to ${notePoint(to)}, picked to ${plainNumber(half)} px`;

const SCALE = String.raw`(${NUMBER}) mm ± (${NUMBER}) mm is from (${POINT}) to (${POINT}), picked to (${NUMBER}) px`;
const FORM = new RegExp(
  String.raw`^([^]*?) ?\[(\d{1,5}) x (\d{1,5}) px(?:; turned (-?\d{1,3}\.\d{2}) degrees)?; (?:no scale|${SCALE})\]$`,
);

/** Null where the words are someone's own. */
export function readPhotoNote(says: string): PhotoNote | null {
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

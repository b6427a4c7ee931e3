// What a figure was seen on: photographs, measurements, documents, and copies of the standard.

import type { Known } from '#model/quantity/reading.ts';
import type { Nm } from '#units/quantity.ts';

/** Named as its citation names it; `value`, as printed, is null where ours is right. */
export interface ConfirmedCell {
  readonly standard: string;
  /** Id of the table; `rules` of a rule in words. */
  readonly table: string;
  readonly cell: string;
  readonly value: number | null;
  readonly clause: string;
  /** The day on which it was read. */
  readonly on: string;
}

export interface Evidence {
  readonly id: string;
  readonly kind: 'photo' | 'measurement' | 'document';
  readonly says: string;
  /** Paths of the fields that it stands behind, e.g. `layers[2].margins.left.width`. */
  readonly fields: readonly string[];
  /** A picture or file as a data address, or its name. */
  readonly file: string | null;
  readonly measured: Measured | null;
  readonly picture: Picture | null;
}

/** A point of the unturned picture, pixels. */
export type PicturePoint = readonly [x: number, y: number];

/** What was measured on a photograph, and where. */
export interface Measured {
  /** Id of the photograph; null where it was measured otherwise. */
  readonly photo: string | null;
  readonly kind: 'distance' | 'diameter' | 'angle' | 'count';
  readonly points: readonly PicturePoint[];
  /** Half-width of the picking, pixels. */
  readonly picked: number | null;
  /** Millimetres a pixel. */
  readonly scale: number | null;
  /** Millimetres, degrees of an angle, or a number; null where nothing could be measured yet. */
  readonly found: { readonly value: number; readonly plusMinus: number } | null;
}

/** How a photograph is kept: its size in pixels, how far it is shown turned clockwise, and a known length on it. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly turned: number;
  readonly scale: {
    readonly length: Known<Nm>;
    readonly from: PicturePoint;
    readonly to: PicturePoint;
    readonly picked: number;
  } | null;
}

// What sizes that nobody knows are counted as, so that the build can be laid out at all: thin, and with nothing shown of
// their strength. The design file's contract names them; they are no measurement and no figure of a standard.

import { mm } from '#units/quantity.ts';

/** Overall diameter of a wire of which no diameter is known. */
export const UNKNOWN_WIRE = mm(0.1);

/** A ply of tape of which neither thickness nor material is known. */
export const UNKNOWN_PLY = mm(0.02);

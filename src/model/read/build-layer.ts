// From the read file to the design, for one layer.

import { unreachable } from '#units/unreachable.ts';
import type { Layer, ScreenLayer } from '#model/design/layer.ts';
import { buildInset, buildMargins, buildSheet, orOpen } from './build-solid.ts';
import { buildLead } from './build-winding.ts';
import type { FileRead } from '#model/schema/schema.ts';

type LayerRead = FileRead['layers'][number];

export function buildLayer(read: LayerRead): Layer {
  const chamber = read.chamber ?? 0;
  const margins = buildMargins(read.margins);
  switch (read.kind) {
    case 'winding': {
      const { winding, strands = 1, spread = true, extent = null, beside = false } = read;
      const turns = orOpen(read.turns);
      return { kind: 'winding', chamber, winding, turns, strands, spread, margins, extent, beside };
    }
    case 'tape': {
      const { bonded = false, cemented = false, turnUp = null } = read;
      return {
        kind: 'tape',
        chamber,
        ...buildSheet(read),
        bonded,
        cemented,
        inset: buildInset(read.inset),
        margins,
        turnUp,
      };
    }
    case 'screen':
      return buildScreen(read, chamber, margins);
    default:
      return unreachable(read);
  }
}

function buildScreen(
  read: Extract<LayerRead, { kind: 'screen' }>,
  chamber: number,
  margins: ScreenLayer['margins'],
): ScreenLayer {
  const { circuit = null, id = null, thickness } = read;
  const overlap = read.overlap ? buildSheet(read.overlap) : null;
  const [inset, lead] = [buildInset(read.inset), buildScreenLead(read)];
  return { kind: 'screen', chamber, circuit, id, thickness, overlap, inset, margins, lead };
}

function buildScreenLead(read: Extract<LayerRead, { kind: 'screen' }>): ScreenLayer['lead'] {
  if (read.lead === 'not-judged') return read.lead;
  return read.lead === undefined && read.circuit === undefined ? null : buildLead(read.lead);
}

// Handles of one layer: where its winding, tape or screen begins and ends, where its margin blocks end, how high they are.
// A winding's end is its margin, or its measured extent where the file gives one; a tape stops by its inset, counted
// from the margin where it has one.

import type { Design } from '#model/design.ts';
import type { Layer, Margin } from '#model/design/layer.ts';
import type { Side } from '#units/terms.ts';
import { isKnown, known, type Known, type Reading } from '#model/quantity/reading.ts';
import { mm, nm, type Nm } from '#units/quantity.ts';
import { LEAST_ROOM, LONGEST, type DrawnSection, type Handle } from './handle.ts';

type Band = DrawnSection['bands'][number];

interface Place {
  readonly index: number;
  readonly band: Band;
  readonly face: { readonly x0: Nm; readonly x1: Nm };
  readonly width: Nm;
  readonly section: DrawnSection;
}

const SIDES = ['left', 'right'] as const;
const ZERO = mm(0);

export function layerHandles(
  design: Design,
  section: DrawnSection,
  layer: Layer,
  index: number,
): readonly Handle[] {
  // plies of it may lie further in, under a lead that crosses back; the layer itself lies outermost
  const band = section.bands.findLast((each) => each.layer === index && each.kind === layer.kind);
  const face = band && section.chambers[band.chamber];
  const width = design.former.chambers[layer.chamber]?.width.value;
  if (band === undefined || face === undefined || width === undefined) return [];
  const place: Place = { index, band, face, width, section };
  return SIDES.flatMap((side) => [
    ...endHandles(layer, side, place),
    ...blockHandles(layer.margins[side], side, place),
  ]);
}

function endHandles(layer: Layer, side: Side, place: Place): readonly Handle[] {
  const other = opposite(side);
  if (layer.kind !== 'winding') {
    const margin = widthOf(layer.margins[side]);
    const taken =
      upperOf(layer.margins[side].width) + upperOf(layer.margins[other].width) + upperOf(layer.inset[other]);
    const inset = edge(place, side, {
      path: `layers[${place.index}].inset.${side}`,
      reading: layer.inset[side],
      from: margin,
      most: nm(place.width - taken - LEAST_ROOM),
      label: `${side} inset`,
    });
    const ends = isShown(inset, side, place) ? [inset] : [];
    return margin > 0 ? [...ends, marginEdge(layer, side, place)] : ends;
  }
  if (layer.extent === null) {
    const margin = marginEdge(layer, side, place);
    return isShown(margin, side, place) || (!layer.spread && place.section.slumped === null) ? [margin] : [];
  }
  const { from, to } = layer.extent;
  const reading = side === 'left' ? from : to;
  const end: Handle = {
    ...edge(place, 'left', {
      path: `layers[${place.index}].extent.${side === 'left' ? 'from' : 'to'}`,
      reading,
      from: ZERO,
      most: side === 'left' ? nm(to.value - LEAST_ROOM) : place.width,
      label: side === 'left' ? 'start' : 'end',
    }),
    ...(side === 'left' ? {} : { least: nm(from.value + LEAST_ROOM) }),
  };
  const block = marginEdge(layer, side, place);
  const room = side === 'left' ? from.value : place.width - to.value;
  const apart = block.value > 0 && block.value < room;
  return [...(isShown(end, side, place) ? [end] : []), ...(apart ? [block] : [])];
}

function marginEdge(layer: Layer, side: Side, place: Place): Handle {
  const insets = layer.kind === 'winding' ? 0 : upperOf(layer.inset.left) + upperOf(layer.inset.right);
  const taken = upperOf(layer.margins[opposite(side)].width) + insets;
  return edge(place, side, {
    path: `layers[${place.index}].margins.${side}.width`,
    reading: layer.margins[side].width,
    from: ZERO,
    most: nm(place.width - taken - LEAST_ROOM),
    label: `${side} margin`,
  });
}

interface EdgeOf {
  readonly path: string;
  readonly reading: Reading<Nm>;
  /** Distance of the value's nought from the face. */
  readonly from: Nm;
  readonly most: Nm;
  readonly label: string;
}

function edge(place: Place, side: Side, { path, reading, from, most, label }: EdgeOf): Handle {
  const { value, plusMinus } = isKnown(reading) ? reading : known(ZERO);
  const sign = side === 'left' ? 1 : -1;
  const origin = nm((side === 'left' ? place.face.x0 : place.face.x1) + sign * from);
  return {
    id: path,
    path,
    part: place.index,
    axis: 'x',
    at: nm(origin + sign * value),
    span: [place.band.y0, place.band.y1],
    origin,
    sign,
    value,
    plusMinus,
    least: ZERO,
    most: nm(Math.max(value, most - plusMinus)),
    label: `${label} of layer ${place.index + 1}`,
    isUnknown: !isKnown(reading),
  };
}

/** Height of a margin block that is not as high as its layer. */
function blockHandles(margin: Margin, side: Side, place: Place): readonly Handle[] {
  const width = widthOf(margin);
  if (!margin.filled || margin.height === null || width === 0) return [];
  const { value, plusMinus }: Known<Nm> = margin.height;
  const path = `layers[${place.index}].margins.${side}.height`;
  const [x0, x1] =
    side === 'left' ? [place.face.x0, place.face.x0 + width] : [place.face.x1 - width, place.face.x1];
  return [
    {
      id: path,
      path,
      part: place.index,
      axis: 'y',
      at: nm(place.band.y0 + value),
      span: [nm(x0), nm(x1)],
      origin: place.band.y0,
      sign: 1,
      value,
      plusMinus,
      least: ZERO,
      most: LONGEST,
      label: `height of the ${side} margin of layer ${place.index + 1}`,
      isUnknown: false,
    },
  ];
}

/** The section draws this end where the file puts it. */
const isShown = (handle: Handle, side: Side, { band }: Place): boolean =>
  handle.at === (side === 'left' ? band.x0 : band.x1);

/** The upper end of what was measured: margins must leave room for a winding at that too. */
const upperOf = (reading: Reading<Nm>): number => (isKnown(reading) ? reading.value + reading.plusMinus : 0);

const widthOf = ({ width }: Margin): Nm => (isKnown(width) ? width.value : ZERO);

const opposite = (side: Side): Side => (side === 'left' ? 'right' : 'left');

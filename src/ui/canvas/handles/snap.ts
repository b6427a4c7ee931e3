// Where a dragged edge settles: on the grid of its own value, or on another edge that lies close enough.
// All in whole nanometres; what counts as close depends on the scale and comes in from outside.

import { mm, nm, type Nm } from '#units/quantity.ts';
import { limited, positionOf, valueAt, type DrawnSection, type Handle } from './handle.ts';

export const COARSE: Nm = mm(0.05);
export const FINE: Nm = mm(0.01);

export interface Snapped {
  readonly value: Nm;
  readonly position: Nm;
  /** Other edges that the dragged one now lines up with. */
  readonly guides: readonly Nm[];
}

export interface SnapTo {
  readonly step: Nm;
  readonly edges: readonly Nm[];
  /** Edges within this distance attract; 0 where none shall. */
  readonly reach: number;
}

export function snapped(handle: Handle, position: number, { step, edges, reach }: SnapTo): Snapped {
  const near = nearestEdge(position, edges, reach);
  const wished = near === null ? onGrid(valueAt(handle, Math.round(position)), step) : valueAt(handle, near);
  const value = limited(handle, wished);
  const at = positionOf(handle, value);
  return { value, position: at, guides: edges.filter((edge) => edge === at) };
}

/** One key press along the value: to the next multiple of the step. */
export function stepped(handle: Handle, value: Nm, step: Nm, direction: 1 | -1): Nm {
  const next = direction > 0 ? Math.floor(value / step) + 1 : Math.ceil(value / step) - 1;
  return limited(handle, nm(next * step + 0));
}

/** The other edges along the handle's axis, each once. */
export function otherEdges(section: DrawnSection, handle: Handle): readonly Nm[] {
  const others = section.bands.filter(({ layer }) => layer !== handle.part);
  const blocks = section.regions.filter((region) => region.kind === 'block' && region.layer !== handle.part);
  const edges =
    handle.axis === 'x'
      ? [...others, ...blocks].flatMap(({ x0, x1 }) => [x0, x1])
      : [...section.bands.map(({ y1 }) => y1), ...blocks.map(({ y1 }) => y1)];
  return [...new Set(edges)].filter((edge) => edge !== handle.origin).sort((a, b) => a - b);
}

const onGrid = (value: number, step: Nm): Nm => nm(Math.round(value / step) * step + 0);

function nearestEdge(position: number, edges: readonly Nm[], reach: number): Nm | null {
  const near = edges.filter((edge) => Math.abs(edge - position) <= reach && reach > 0);
  return near.sort((a, b) => Math.abs(a - position) - Math.abs(b - position))[0] ?? null;
}

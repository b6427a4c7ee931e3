// Where metal of two conductors touches: there is no field between them, unless they bear one name and belong together. Touching is contact, at a point too. Whole
// nanometres throughout, so nothing is rounded; distances of discs are compared as squares.

import { nm, type Nm } from '#units/quantity.ts';

import type { Body, Box, Disc, FieldSection } from '#field/field-section.ts';
import { BodyMap } from '#field/mesh/body-map.ts';

export interface Contact {
  /** Indices of the two conductors. */
  readonly between: readonly [number, number];
  readonly x: Nm;
  readonly y: Nm;
}

export function contactOf(section: FieldSection): Contact | null {
  const { bodies, electrodes, conductors } = section;
  const map = new BodyMap(section);
  for (const [i, body] of bodies.entries()) {
    if (body.electrode === null) continue;
    const [x0, y0, x1, y1] = hullOf(body).map((v) => v / 1e6) as [number, number, number, number];
    for (const k of map.near(x0, y0, x1, y1)) {
      const other = bodies[k]!;
      if (k <= i || other.electrode === null) continue;
      const [a, b] = [electrodes[body.electrode]!, electrodes[other.electrode]!];
      const at = conductors[a] === conductors[b] ? null : meet(body, other);
      if (at !== null) return { between: [a, b], x: nm(Math.round(at[0])), y: nm(Math.round(at[1])) };
    }
  }
  return null;
}

function hullOf(body: Body): readonly number[] {
  if (body.shape === 'box') return [body.x0, body.y0, body.x1, body.y1];
  const radius = body.metal / 2;
  return [body.x - radius, body.y - radius, body.x + radius, body.y + radius];
}

function meet(a: Body, b: Body): readonly [number, number] | null {
  if (a.shape === 'disc') return b.shape === 'disc' ? discs(a, b) : discAndBox(a, b);
  return b.shape === 'disc' ? discAndBox(b, a) : boxes(a, b);
}

function discs(a: Disc, b: Disc): readonly [number, number] | null {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  // doubled, so that odd diameters stay whole
  if (4 * (dx * dx + dy * dy) > (a.metal + b.metal) ** 2) return null;
  return [a.x + dx / 2, a.y + dy / 2];
}

function discAndBox(disc: Disc, box: Box): readonly [number, number] | null {
  const x = Math.min(Math.max(disc.x, box.x0), box.x1);
  const y = Math.min(Math.max(disc.y, box.y0), box.y1);
  return 4 * ((x - disc.x) ** 2 + (y - disc.y) ** 2) <= disc.metal ** 2 ? [x, y] : null;
}

function boxes(a: Box, b: Box): readonly [number, number] | null {
  const [x0, y0] = [Math.max(a.x0, b.x0), Math.max(a.y0, b.y0)];
  const [x1, y1] = [Math.min(a.x1, b.x1), Math.min(a.y1, b.y1)];
  return x0 <= x1 && y0 <= y1 ? [(x0 + x1) / 2, (y0 + y1) / 2] : null;
}

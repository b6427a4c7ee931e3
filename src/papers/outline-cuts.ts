// The edges of boxes and of the frame as lines that meet only at their ends: those on one line are joined and cut where
// others meet or cross them, and finely beside wires that all but touch them, for a mesher takes the pieces as they are.
// The frame runs round counter-clockwise. Each with the electrode that holds it, and into how many pieces a mesh may
// cut it. mm.

import type { Box, Disc, FieldSection } from '#field/field-section.ts';

export interface CutLine {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly electrode: number | null;
  readonly pieces: number;
}

interface Span {
  /** The same for all of the line, and its two ends along it, nm. */
  readonly across: number;
  readonly from: number;
  readonly to: number;
  readonly electrode: number | null;
  /** Thickness of the body that it bounds, nm. */
  readonly thin: number;
}

/** A wire that lies beside a line: where along it, how far from it its edge is, its radius, nm. */
interface Beside {
  readonly at: number;
  readonly across: number;
  readonly radius: number;
}

const MOST_PIECES = 400;
/** No piece beside a wire is shorter, nm. */
const LEAST_PIECE = 1000;
/** Where a line is cut beside a wire, in radii either way: finest where the two are closest. */
const BESIDE_WIRE = [0, 0.03, 0.07, 0.12, 0.2, 0.3, 0.45, 0.65, 0.9, 1.2];

export function outlineCuts({ frame, bodies }: FieldSection, boxes: readonly Box[]): readonly CutLine[] {
  const discs = bodies.filter((body): body is Disc => body.shape === 'disc');
  const along = discs.map(({ x, y, overall }) => ({ at: x, across: y, radius: overall / 2 }));
  const up = discs.map(({ x, y, overall }) => ({ at: y, across: x, radius: overall / 2 }));
  const whole = { ...frame, electrode: null };
  const all = [...boxes, whole].map((box) => ({ ...box, thin: Math.min(box.x1 - box.x0, box.y1 - box.y0) }));
  const level = all.flatMap(({ x0, x1, y0, y1, electrode, thin }): readonly Span[] =>
    [y0, y1].map((across) => ({ across, from: x0, to: x1, electrode, thin })),
  );
  const upright = all.flatMap(({ x0, x1, y0, y1, electrode, thin }): readonly Span[] =>
    [x0, x1].map((across) => ({ across, from: y0, to: y1, electrode, thin })),
  );
  const coarse = Math.max(frame.x1 - frame.x0, frame.y1 - frame.y0) / 40;
  return [
    ...cut(level, upright, along, coarse).map(({ across, ...line }) =>
      made(line, (at) => [at / 1e6, across / 1e6], across === frame.y1),
    ),
    ...cut(upright, level, up, coarse).map(({ across, ...line }) =>
      made(line, (at) => [across / 1e6, at / 1e6], across === frame.x0),
    ),
  ];
}

/** Where bodies end, and the others that are not all but there already; in order. */
function apart(ends: readonly number[], others: readonly number[]): readonly number[] {
  const kept: number[] = [];
  const known = new Set(ends);
  for (const at of [...known, ...others].sort((a, b) => a - b)) {
    const tooNear = (one: number | undefined) => one !== undefined && at - one < LEAST_PIECE;
    if (!known.has(at) && tooNear(kept.at(-1))) continue;
    if (known.has(at)) while (tooNear(kept.at(-1)) && !known.has(kept.at(-1)!)) kept.pop();
    kept.push(at);
  }
  return [...new Set(kept)];
}

function made(
  { from, to, electrode, pieces }: Omit<Span, 'across' | 'thin'> & { readonly pieces: number },
  place: (at: number) => readonly [number, number],
  turned: boolean,
): CutLine {
  const ends = [place(from), place(to)] as const;
  return { from: ends[turned ? 1 : 0], to: ends[turned ? 0 : 1], electrode, pieces };
}

function cut(
  spans: readonly Span[],
  others: readonly Span[],
  wires: readonly Beside[],
  coarse: number,
): readonly (Span & { readonly pieces: number })[] {
  const lines = new Map<number, Span[]>();
  for (const span of spans) {
    if (span.to > span.from) lines.set(span.across, [...(lines.get(span.across) ?? []), span]);
  }
  return [...lines].flatMap(([across, on]) => {
    const crossing = others.filter((one) => one.from <= across && one.to >= across).map((one) => one.across);
    const fine = wires
      .filter((wire) => Math.abs(wire.across - across) < 1.5 * wire.radius)
      .flatMap(({ at, radius }) => BESIDE_WIRE.flatMap((s) => [at - s * radius, at + s * radius]))
      .map(Math.round);
    const ends = apart([...on.flatMap(({ from, to }) => [from, to]), ...crossing], fine);
    return ends.slice(1).flatMap((to, i) => {
      const from = ends[i]!;
      const covering = on.filter((span) => span.from <= from && span.to >= to);
      if (covering.length === 0) return [];
      const held = covering.find(({ electrode }) => electrode !== null);
      const thin = Math.min(...covering.map((span) => span.thin));
      const step = Math.min(coarse, Math.max(thin * 1.5, 1000));
      const pieces = Math.min(MOST_PIECES, Math.max(1, Math.ceil((to - from) / step)));
      return [{ across, from, to, electrode: held?.electrode ?? null, thin, pieces }];
    });
  });
}

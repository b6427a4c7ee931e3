// The edges of boxes and of the frame as lines that meet only at their ends: those on one line are joined and cut where
// others meet or cross them. The frame runs round counter-clockwise. Each with the electrode that holds it, and into how many pieces a mesh may cut it. mm.

import type { Box, FieldSection } from '#field/field-section.ts';

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

const MOST_PIECES = 400;

export function outlineCuts({ frame }: FieldSection, boxes: readonly Box[]): readonly CutLine[] {
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
    ...cut(level, upright, coarse).map(({ across, ...line }) =>
      made(line, (at) => [at / 1e6, across / 1e6], across === frame.y1),
    ),
    ...cut(upright, level, coarse).map(({ across, ...line }) =>
      made(line, (at) => [across / 1e6, at / 1e6], across === frame.x0),
    ),
  ];
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
  coarse: number,
): readonly (Span & { readonly pieces: number })[] {
  const lines = new Map<number, Span[]>();
  for (const span of spans) {
    if (span.to > span.from) lines.set(span.across, [...(lines.get(span.across) ?? []), span]);
  }
  return [...lines].flatMap(([across, on]) => {
    const crossing = others.filter((one) => one.from <= across && one.to >= across).map((one) => one.across);
    const ends = [...new Set([...on.flatMap(({ from, to }) => [from, to]), ...crossing])].sort(
      (a, b) => a - b,
    );
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

// A picture of a field as plain data, which may go from one thread to another: rasters of the whole section and close by
// the first gaps, with their lines of equal potential, and the outlines of what is not a turn.

import { equipotentials, type Equipotential } from '#field/read/equipotentials.ts';
import type { FieldView } from '#field/read/field-view.ts';
import { rasterOf, type FieldWindow, type Raster } from '#field/read/raster.ts';
import { gapHolds } from '#stress/breakdown/paschen.ts';
import { inMm, metres, mm, type Metres } from '#units/quantity.ts';
import type { FoundField } from './field-of.ts';
import type { DrawnBody } from '#judge/drawn-field/drawn-field.ts';
import type { FieldGap, FieldReport } from './field-report.ts';

export interface FieldPicture {
  readonly report: FieldReport;
  readonly whole: FieldShot | null;
  /** Close by the first gaps, in their order. */
  readonly close: readonly FieldShot[];
  readonly boxes: readonly PictureBox[];
  /** What a gap holds by its length, mm and V, at the altitude of the build. */
  readonly curve: readonly (readonly [number, number])[];
}

export interface FieldShot {
  readonly raster: Raster;
  readonly lines: readonly Equipotential[];
  /** Volts from line to line. */
  readonly every: number;
}

export interface PictureBox extends FieldWindow {
  readonly kind: DrawnBody['kind'];
  /** Potential of metal; null for a solid. */
  readonly volts: number | null;
}

export interface PictureSize {
  readonly columns: number;
  readonly closeColumns: number;
  readonly gaps: number;
}

export const PICTURE: PictureSize = { columns: 520, closeColumns: 260, gaps: 4 };
/** Lines over the whole voltage, of the whole and close by. */
const LINES = 14;
/** What a close picture shows, in lengths of the gap and at least, mm. */
const CLOSE = { gaps: 11, least: 0.45, most: 2, height: 0.72 } as const;

export function fieldPicture(found: FoundField, size: PictureSize = PICTURE): FieldPicture {
  const { report, drawn, solved, cases, views } = found;
  const [first] = cases;
  if (solved === null || first === undefined) return { report, whole: null, close: [], boxes: [], curve: [] };
  const { x0, y0, x1, y1 } = drawn.section.frame;
  const frame = { x0: inMm(x0), y0: inMm(y0), x1: inMm(x1), y1: inMm(y1) };
  const state = solved.states[0]!;
  const boxes = drawn.section.bodies.flatMap((body, i): readonly PictureBox[] => {
    if (body.shape === 'disc') return [];
    const box = { x0: inMm(body.x0), y0: inMm(body.y0), x1: inMm(body.x1), y1: inMm(body.y1) };
    const volts = body.electrode === null ? null : state.electrodes[body.electrode]!;
    return [{ ...box, kind: drawn.bodies[i]!.kind, volts }];
  });
  const whole = shotOf(views[0]!, frame, size.columns);
  const close = report.gaps.slice(0, size.gaps).map((gap) => {
    const i = cases.findIndex(({ between }) => between.join() === gap.between.join());
    return shotOf(views[i]!, windowRound(gap), size.closeColumns);
  });
  return { report, whole, close, boxes, curve: curveAt(metres(report.altitude)) };
}

/** From 5 micrometres to 2 mm, evenly by their ratio. */
function curveAt(altitude: Metres): FieldPicture['curve'] {
  return Array.from({ length: 61 }, (_, i) => {
    const length = 0.005 * 400 ** (i / 60);
    return [length, gapHolds(mm(length), altitude)] as const;
  });
}

function shotOf(view: FieldView, window: FieldWindow, columns: number): FieldShot {
  const raster = rasterOf(view, window, columns);
  let [least, most] = [Infinity, -Infinity];
  for (const volts of raster.volts) [least, most] = [Math.min(least, volts), Math.max(most, volts)];
  const every = niceStep((most - least) / LINES);
  const levels: number[] = [];
  if (every > 0) {
    // a line at the very potential of metal would run round in it
    for (let level = Math.floor(least / every + 1) * every; level < most - 1e-3 * every; level += every) {
      levels.push(level);
    }
  }
  return { raster, lines: equipotentials(raster, levels), every };
}

/** 1, 2, 4 or 5 times a power of ten, at least `wanted`. */
function niceStep(wanted: number): number {
  if (!(wanted > 0)) return 0;
  const power = 10 ** Math.floor(Math.log10(wanted));
  return power * ([1, 2, 4, 5, 10].find((each) => each * power >= wanted) ?? 10);
}

function windowRound({ at: [x, y], length }: FieldGap): FieldWindow {
  const width = Math.min(CLOSE.most, Math.max(CLOSE.least, CLOSE.gaps * length));
  const height = width * CLOSE.height;
  return { x0: x - width / 2, x1: x + width / 2, y0: y - height / 2, y1: y + height / 2 };
}

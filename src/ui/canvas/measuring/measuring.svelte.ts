// Measuring on the section: from a press to where it is let go. Points settle on corners and edges of what is drawn; the way
// between them is worked out when the hand rests, by a part of the program that is fetched with the first measurement.

import type { Point } from '#drawing/scene/outline.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { toDrawingX, toDrawingY, type View } from '#drawing/scene/view.ts';
import type { MeasuredWay } from '#state/document/measured-way.ts';
import { mm } from '#units/quantity.ts';
import type { DrawnSection } from '#ui/canvas/handles/handle.ts';

export interface Measure {
  /** Millimetres on the section. */
  readonly from: Point;
  readonly to: Point;
  readonly way: MeasuredWay | null;
}

/** Pixels within which a corner or an edge attracts. */
const ATTRACTS_PX = 7;

export class Measuring {
  isOn = $state(false);
  shown: Measure | null = $state.raw(null);
  #isHeld = false;

  toggle(): void {
    this.isOn = !this.isOn;
    this.shown = null;
  }

  begin(scene: Scene, view: View, x: number, y: number): void {
    const at = settled(scene, view, x, y);
    this.#isHeld = true;
    this.shown = { from: at, to: at, way: null };
  }

  /** False where nothing is being measured. */
  extend(scene: Scene, view: View, x: number, y: number): boolean {
    if (!this.#isHeld || this.shown === null) return false;
    this.shown = { from: this.shown.from, to: settled(scene, view, x, y), way: null };
    return true;
  }

  async end(section: DrawnSection | null): Promise<void> {
    const measure = this.shown;
    if (!this.#isHeld || measure === null) return;
    this.#isHeld = false;
    if (measure.from.join() === measure.to.join()) this.shown = null;
    if (section === null || this.shown === null) return;
    const { measuredWay } = await import('#state/document/measured-way.ts');
    const spot = ([x, y]: Point) => [mm(x), mm(y)] as const;
    const way = measuredWay(section, spot(measure.from), spot(measure.to));
    if (this.shown === measure) this.shown = { ...measure, way };
  }
}

/** On the nearest corner, else on the nearest level and upright edge, to the hundredth of a millimetre elsewhere. */
function settled(scene: Scene, view: View, column: number, row: number): Point {
  const [x, y] = [toDrawingX(view, column), toDrawingY(view, row)];
  const reach = [ATTRACTS_PX / view.scale, ATTRACTS_PX / (view.scale * view.stretch)] as const;
  const near = scene.areas.flatMap(({ loops }) => loops).flat();
  const inReach = near.filter(([a, b]) => Math.abs(a - x) <= reach[0] && Math.abs(b - y) <= reach[1]);
  const [corner] = inReach.sort(([a, b], [c, d]) => Math.hypot(a - x, b - y) - Math.hypot(c - x, d - y));
  if (corner !== undefined) return corner;
  const nearest = (values: readonly number[], value: number, most: number): number =>
    values
      .filter((each) => Math.abs(each - value) <= most)
      .sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? Math.round(value * 100) / 100;
  const boxes = scene.areas.filter(
    ({ bounds: b }) =>
      b.x0 - reach[0] <= x && x <= b.x1 + reach[0] && b.y0 - reach[1] <= y && y <= b.y1 + reach[1],
  );
  return [
    nearest(
      boxes.flatMap(({ bounds }) => [bounds.x0, bounds.x1]),
      x,
      reach[0],
    ),
    nearest(
      boxes.flatMap(({ bounds }) => [bounds.y0, bounds.y1]),
      y,
      reach[1],
    ),
  ];
}

// How the drawing is looked at: size of the stage, scale, place, radial stretch. The whole section until one zooms or pans;
// the view then stays as it was set, also while the section changes under the hand.

import { nearestScale, nextScale, scaleAtMost, type PlyGrid } from './offered-scale.ts';
import { RULER } from '#drawing/marks/ruler-marks.ts';
import { roomOf } from './stage-room.ts';
import type { Plate, View } from '#drawing/scene/view.ts';
import { centred, fittingScale, keptInSight, limitScale, moved, zoomed, type Box } from './view.ts';

/** What is looked at, in millimetres. */
export interface Sights {
  readonly frame: Box;
  /** Height of the highest stack. */
  readonly stack: number;
  /** Thickness of the thinnest ply; null where there is none. */
  readonly ply: number | null;
}

/** The whole section small: where it stands on the stage, and where its millimetres lie. */
export interface Overview {
  readonly view: View;
  readonly box: Plate;
}

const EDGE = { left: 4, top: 5, right: 6, bottom: 8 } as const;
const NEAREST = { least: 200, most: 640 } as const;
/** Below this width a build is too small to read as a whole: it is seen close, under a small view of the whole. */
const SLIM_PX = 560;
const CLOSE_PX = 230;

export class Viewport {
  width = $state(0);
  /** Height that the page has for the stage at most. */
  most = $state<number>(NEAREST.most);
  density = $state(1);
  /** A part that is seen as large as it goes, until one zooms or pans. */
  #part: Box | null = $state.raw(null);
  #own: View | null = $state.raw(null);
  #held: View | null = $state.raw(null);
  #stretch = $state(1);
  /** The scale that the wheel has come to, between the offered ones. */
  #wished = 0;
  /** The small view in a corner of a wide stage is put away. */
  isOverviewHidden = $state(false);
  readonly #sights: () => Sights;

  constructor(sights: () => Sights) {
    this.#sights = sights;
  }

  /** Scale and height at which the whole section takes the full width. */
  readonly #fitting: { readonly scale: number; readonly height: number } = $derived.by(() => {
    const { frame, ply } = this.#sights();
    const across = Math.max(0, this.width - RULER.left - EDGE.left - EDGE.right);
    const wished = limitScale(across / Math.max(frame.x1 - frame.x0, 1e-6));
    const scale = scaleAtMost(wished, { ply, stretch: 1, density: this.density });
    return { scale, height: EDGE.top + EDGE.bottom + (frame.y1 - frame.y0) * scale };
  });

  readonly isSlim: boolean = $derived.by(() => this.width > 0 && this.width < SLIM_PX);

  /** The strip with the whole small above a close view on a narrow page; null where there is no need. */
  readonly strip: Overview | null = $derived.by(() => {
    if (!this.isSlim || this.isWhole) return null;
    const { scale, height } = this.#fitting;
    const box = { left: 0, top: 0, right: this.width, bottom: Math.round(height) };
    return { view: centred(this.#sights().frame, box, scale, 1), box };
  });

  /** As high as the whole section needs at the full width; for a close view, that much more. */
  readonly height: number = $derived.by(() => {
    const { height } = this.#fitting;
    if (this.strip !== null) return this.strip.box.bottom + RULER.top + CLOSE_PX;
    const least = this.isSlim ? 0 : NEAREST.least;
    return Math.ceil(Math.max(least, this.#heightWithin(RULER.top + height)));
  });

  /** Of a section too high at its full width, what it needs at the scale then offered: no air is kept for nothing. */
  #heightWithin(wished: number): number {
    if (wished <= this.most || this.#stretch !== 1) return Math.min(this.most, wished);
    const { frame } = this.#sights();
    const around = RULER.top + EDGE.top + EDGE.bottom;
    const high = frame.y1 - frame.y0;
    const scale = scaleAtMost(limitScale((this.most - around) / Math.max(high, 1e-6)), this.#grid);
    return Math.min(this.most, around + high * scale);
  }

  readonly room: Plate = $derived.by(() => roomOf(this.width, this.height, this.strip?.box.bottom ?? 0));

  /** The room without the air at its edges. */
  readonly inside: Plate = $derived.by(() => inset(this.room));

  readonly whole: View = $derived.by(() => {
    const { frame, stack } = this.#sights();
    const room = this.inside;
    // stretched, the section is as wide as ever and the stack stands in the middle
    const box = this.#stretch === 1 ? frame : { ...frame, y0: 0, y1: stack };
    const flat = this.#stretch === 1 ? frame : { ...frame, y0: 0, y1: 0 };
    const scale = scaleAtMost(fittingScale(flat, room, this.#stretch), this.#grid);
    return centred(box, room, scale, this.#stretch);
  });

  readonly view: View = $derived.by(() => {
    if (this.#held !== null) return this.#held;
    if (this.#own !== null) return keptInSight(this.#own, this.#sights().frame, this.room);
    return this.#part === null ? this.whole : this.#fitted(this.#part);
  });

  get isWhole(): boolean {
    return this.#own === null && this.#part === null;
  }

  /** Zoomed or panned by hand. */
  get isOwn(): boolean {
    return this.#own !== null;
  }

  get stretch(): number {
    return this.#stretch;
  }

  showWhole(): void {
    this.#own = null;
    this.#part = null;
  }

  /** By a factor about a pixel, settling on an offered scale. False where nothing changes: the page may scroll. */
  zoom(factor: number, column: number, row: number): boolean {
    const { scale } = this.view;
    const from = nearestScale(this.#wished, this.#grid) === scale ? this.#wished : scale;
    this.#wished = limitScale(from * factor);
    if (this.#wished <= this.whole.scale) {
      const changes = !this.isWhole;
      this.showWhole();
      return changes;
    }
    this.#to(nearestScale(this.#wished, this.#grid), column, row);
    return true;
  }

  /** One press of a zoom key or button. */
  step(direction: 1 | -1): void {
    const { left, right, top, bottom } = this.room;
    const scale = nextScale(this.view.scale, this.#grid, direction);
    if (scale <= this.whole.scale) this.showWhole();
    else this.#to(scale, (left + right) / 2, (top + bottom) / 2);
  }

  pan(columns: number, rows: number): void {
    if (columns === 0 && rows === 0) return;
    this.#own = keptInSight(moved(this.view, columns, rows), this.#sights().frame, this.room);
  }

  stretchTo(stretch: number): void {
    const { left, right, top, bottom } = this.room;
    const before = this.view;
    this.#stretch = stretch;
    if (this.#own === null) return;
    const scale = nearestScale(before.scale, this.#grid);
    this.#own = zoomed(before, { scale, stretch }, (left + right) / 2, (top + bottom) / 2);
  }

  /** Shows this box as large as it goes. */
  showPart(box: Box): void {
    this.#part = box;
    this.#own = null;
  }

  /** This place, in millimetres, comes into the middle. */
  centreOn(x: number, y: number): void {
    const spot = { x0: x, x1: x, y0: y, y1: y };
    this.#own = keptInSight(
      centred(spot, this.room, this.view.scale, this.#stretch),
      this.#sights().frame,
      this.room,
    );
  }

  /** Keeps the view as it is while an edge is in the hand. */
  hold(): void {
    this.#held = this.view;
  }

  letGo(): void {
    this.#held = null;
  }

  get #grid(): PlyGrid {
    return { ply: this.#sights().ply, stretch: this.#stretch, density: this.density };
  }

  #fitted(box: Box): View {
    const room = this.inside;
    const scale = scaleAtMost(fittingScale(box, room, this.#stretch), this.#grid);
    return centred(box, room, scale, this.#stretch);
  }

  #to(scale: number, column: number, row: number): void {
    this.#own = zoomed(this.view, { scale, stretch: this.#stretch }, column, row);
  }
}

const inset = ({ left, top, right, bottom }: Plate): Plate => ({
  left: left + EDGE.left,
  top: top + EDGE.top,
  right: right - EDGE.right,
  bottom: bottom - EDGE.bottom,
});

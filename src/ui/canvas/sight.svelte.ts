// How the drawing is looked at: size of the stage, scale, place, radial stretch. The whole section until one zooms or pans;
// the view then stays as it was set, also while the section changes under the hand.

import { nearestScale, nextScale, scaleAtMost, type PlyGrid } from './offered-scale.ts';
import { RULER, roomOf } from './picture.ts';
import {
  centred,
  fittingScale,
  keptInSight,
  limitScale,
  moved,
  zoomed,
  type Box,
  type Room,
  type View,
} from './view.ts';

/** What is looked at, in millimetres. */
export interface Sights {
  readonly frame: Box;
  /** Height of the highest stack. */
  readonly stack: number;
  /** Thickness of the thinnest ply; null where there is none. */
  readonly ply: number | null;
}

const EDGE = { left: 4, top: 2, right: 6, bottom: 8 } as const;
const NEAREST = { least: 200, most: 640 } as const;

export class Sight {
  width = $state(0);
  /** Height that the page has for the stage at most. */
  most = $state<number>(NEAREST.most);
  density = $state(1);
  #own: View | null = $state.raw(null);
  #held: View | null = $state.raw(null);
  #stretch = $state(1);
  /** The scale that the wheel has come to, between the offered ones. */
  #wished = 0;
  readonly #sights: () => Sights;

  constructor(sights: () => Sights) {
    this.#sights = sights;
  }

  /** As high as the whole section needs at the full width. */
  readonly height: number = $derived.by(() => {
    const { frame, ply } = this.#sights();
    const across = this.width - RULER.left - EDGE.left - EDGE.right;
    const fitting = limitScale(Math.max(0, across) / Math.max(frame.x1 - frame.x0, 1e-6));
    const scale = scaleAtMost(fitting, { ply, stretch: 1, density: this.density });
    const wished = RULER.top + EDGE.top + EDGE.bottom + (frame.y1 - frame.y0) * scale;
    return Math.round(Math.max(NEAREST.least, Math.min(this.most, wished)));
  });

  readonly room: Room = $derived.by(() => roomOf(this.width, this.height));

  readonly whole: View = $derived.by(() => {
    const { frame, stack } = this.#sights();
    const room = inset(this.room);
    // stretched, the section is as wide as ever and the stack stands in the middle
    const box = this.#stretch === 1 ? frame : { ...frame, y0: 0, y1: stack };
    const flat = this.#stretch === 1 ? frame : { ...frame, y0: 0, y1: 0 };
    const scale = scaleAtMost(fittingScale(flat, room, this.#stretch), this.#grid);
    return centred(box, room, scale, this.#stretch);
  });

  readonly view: View = $derived.by(() => {
    if (this.#held !== null) return this.#held;
    return this.#own === null ? this.whole : keptInSight(this.#own, this.#sights().frame, this.room);
  });

  get isWhole(): boolean {
    return this.#own === null;
  }

  get stretch(): number {
    return this.#stretch;
  }

  showWhole(): void {
    this.#own = null;
  }

  /** By a factor about a pixel, settling on an offered scale. False where nothing changes: the page may scroll. */
  zoom(factor: number, column: number, row: number): boolean {
    const { scale } = this.view;
    const from = nearestScale(this.#wished, this.#grid) === scale ? this.#wished : scale;
    this.#wished = limitScale(from * factor);
    if (this.#wished <= this.whole.scale) {
      const changes = this.#own !== null;
      this.#own = null;
      return changes;
    }
    this.#to(nearestScale(this.#wished, this.#grid), column, row);
    return true;
  }

  /** One press of a zoom key or button. */
  step(direction: 1 | -1): void {
    const { left, right, top, bottom } = this.room;
    const scale = nextScale(this.view.scale, this.#grid, direction);
    if (scale <= this.whole.scale) this.#own = null;
    else this.#to(scale, (left + right) / 2, (top + bottom) / 2);
  }

  pan(columns: number, rows: number): void {
    if (columns === 0 && rows === 0) return;
    this.#own = keptInSight(moved(this.view, columns, rows), this.#sights().frame, this.room);
  }

  stretchTo(stretch: number): void {
    const wasWhole = this.isWhole;
    const { left, right, top, bottom } = this.room;
    const before = this.view;
    this.#stretch = stretch;
    if (wasWhole) return;
    const scale = nearestScale(before.scale, this.#grid);
    this.#own = zoomed(before, { scale, stretch }, (left + right) / 2, (top + bottom) / 2);
  }

  /** Shows this box as large as it goes. */
  showBox(box: Box): void {
    const room = inset(this.room);
    const scale = scaleAtMost(fittingScale(box, room, this.#stretch), this.#grid);
    this.#own = centred(box, room, scale, this.#stretch);
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

  #to(scale: number, column: number, row: number): void {
    this.#own = zoomed(this.view, { scale, stretch: this.#stretch }, column, row);
  }
}

const inset = ({ left, top, right, bottom }: Room): Room => ({
  left: left + EDGE.left,
  top: top + EDGE.top,
  right: right - EDGE.right,
  bottom: bottom - EDGE.bottom,
});

// The pen: a way drawn on the section by hand, or walked from corner to corner by keys. Millimetres on the section; on
// letting go it settles on the surfaces near it.

import type { DrawnSection } from '#ui/canvas/handles/handle.ts';
import {
  drawnWay,
  groundOf,
  lengthOf,
  type DrawnWay,
  type Ground,
  type Point,
} from '#state/learn/drawing-ways.ts';

/** Millimetres between two points of a line drawn by hand. */
const STEP = 0.04;
/** A corner this far off the arrow's own direction is as good as one that much farther along it. */
const OFF = 3;

export class Pen {
  isOn = $state(false);
  points: readonly Point[] = $state.raw([]);
  way: DrawnWay | null = $state.raw(null);
  #isHeld = false;
  readonly #section: () => DrawnSection | null;
  readonly #from: string;

  /** `from`: the circuit at whose metal the walk by keys begins. */
  constructor(section: () => DrawnSection | null, from: string) {
    this.#section = section;
    this.#from = from;
  }

  get length(): number {
    return lengthOf(this.points);
  }

  down(at: Point): void {
    this.#isHeld = true;
    this.way = null;
    this.points = [at];
  }

  move(at: Point): void {
    const last = this.points.at(-1);
    if (!this.#isHeld || last === undefined) return;
    if (Math.hypot(at[0] - last[0], at[1] - last[1]) >= STEP) this.points = [...this.points, at];
  }

  up(): void {
    if (!this.#isHeld) return;
    this.#isHeld = false;
    this.end();
  }

  /** What was drawn is the way from now on; too short to be one, it is none. */
  end(): void {
    const ground = this.#ground();
    this.way = ground === null || this.points.length < 2 ? null : drawnWay(this.points, ground);
    if (this.way === null) this.points = [];
  }

  clear(): void {
    this.points = [];
    this.way = null;
  }

  back(): void {
    this.way = null;
    this.points = this.points.slice(0, -1);
  }

  /** On to the nearest corner of a surface that way; the first press sets the pen down at the metal. */
  walk(x: -1 | 0 | 1, y: -1 | 0 | 1): void {
    const ground = this.#ground();
    if (ground === null) return;
    this.way = null;
    const last = this.points.at(-1);
    if (last === undefined) {
      const start = this.#start();
      this.points = start === null ? [] : [start];
      return;
    }
    const next = nextCorner(last, [x, y], ground);
    if (next !== null) this.points = [...this.points, next];
  }

  #ground(): Ground | null {
    const section = this.#section();
    return section === null ? null : groundOf(section);
  }

  /** The upper left corner of the circuit's first winding. */
  #start(): Point | null {
    const metal = this.#section()?.regions.find(
      (region) => region.kind === 'conductor' && region.conductor === this.#from,
    );
    return metal === undefined ? null : [metal.x0 / NM, metal.y1 / NM];
  }
}

const NM = 1e6;

function nextCorner([x, y]: Point, [dx, dy]: readonly [number, number], { solids }: Ground): Point | null {
  const corners = solids.flatMap(({ x0, x1, y0, y1 }): readonly Point[] => [
    [x0, y0],
    [x0, y1],
    [x1, y0],
    [x1, y1],
  ]);
  const far = ([a, b]: Point): { readonly along: number; readonly off: number } =>
    dx === 0 ? { along: (b - y) * dy, off: Math.abs(a - x) } : { along: (a - x) * dx, off: Math.abs(b - y) };
  const cost = (corner: Point): number => {
    const { along, off } = far(corner);
    return along + OFF * off;
  };
  const [best] = corners
    .filter((corner) => {
      const { along, off } = far(corner);
      return along > 1e-6 && off <= along;
    })
    .sort((a, b) => cost(a) - cost(b));
  return best ?? null;
}

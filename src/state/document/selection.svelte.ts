// What is picked: pair, weak spot, layers, section, opened figure. One choice, seen by the drawing, the list and the schedule.
// Spots and pairs come and go with every judgement, so they are kept by name and looked up in the newest one.

import { leadingPath } from '#words/paths/leading-path.ts';
import type { PairVerdict, Verdict, WeakSpot } from '#state/judging/judged.ts';

export type FigureName = 'needed' | 'creepage' | 'clearance' | 'through' | 'test' | 'stress';

export interface OpenFigure {
  readonly between: readonly [string, string];
  readonly figure: FigureName;
}

export class Selection {
  /** Name of a section of the judgement. */
  section = $state('plain');
  pair: readonly [string, string] | null = $state.raw(null);
  spot: string | null = $state(null);
  /** Those that are worked on together: indices in the file's `layers`. */
  layers: readonly number[] = $state.raw([]);
  /** Those that are only pointed out, as by a lesson. */
  marked: readonly number[] = $state.raw([]);
  /** The row whose fields are open: a layer, the core, the former. */
  openRow: number | 'core' | 'former' | null = $state(null);
  figure: OpenFigure | null = $state.raw(null);
  /** The piece of the weakest path that lights up, by its place. */
  leg: number | null = $state(null);

  pickPair(pair: PairVerdict): void {
    this.pair = pair.between;
    this.spot = null;
    this.leg = null;
    this.figure = null;
    const section = leadingPath(pair)?.section ?? null;
    if (section !== null) this.section = section;
  }

  pickSpot(spot: WeakSpot): void {
    this.spot = spotKey(spot);
    this.leg = null;
    if (spot.between !== null) this.pair = spot.between;
    this.figure = null;
    this.section = spot.section;
    // its layers are only shown: what is done to a row then is done to that row
    this.layers = [];
    this.marked = [];
  }

  pickLayer(layer: number, adding = false): void {
    if (!adding) this.layers = [layer];
    else if (this.layers.includes(layer)) this.layers = this.layers.filter((other) => other !== layer);
    else this.layers = [...this.layers, layer];
  }

  openFigure(between: readonly [string, string], figure: FigureName): void {
    this.pair = between;
    this.figure = { between, figure };
  }

  /** Nothing was picked or opened since the start. */
  get isAtStart(): boolean {
    const { layers, openRow, pair, spot, figure, section } = this;
    return (
      layers.length === 0 && [openRow, pair, spot, figure].every((one) => one === null) && section === 'plain'
    );
  }

  /** Goes to the worst place of a judgement; `plain` where nothing is weak. */
  startAt(verdict: Verdict | null): void {
    this.layers = [];
    this.marked = [];
    this.openRow = null;
    this.pair = null;
    this.spot = null;
    this.leg = null;
    this.figure = null;
    this.section = verdict?.weakSpots[0]?.section ?? 'plain';
  }
}

/** Names a spot over changes of the figures in it. */
export const spotKey = (spot: WeakSpot): string =>
  [spot.kind, spot.between?.join('-') ?? '', spot.section, spot.layers.join('-')].join(' / ');

export const isPair = (a: readonly [string, string] | null, b: readonly [string, string] | null): boolean =>
  a !== null && b !== null && ((a[0] === b[0] && a[1] === b[1]) || (a[0] === b[1] && a[1] === b[0]));

// The bars of a histogram of lengths, in pixels of its drawing; the length that is asked always parts two bars.

import { inUnit, mmOfUnit } from '#words/text/length-unit.ts';
import { ticks } from 'd3-array';
import type { Distances } from '#state/searches/spread-search.svelte.ts';

const [LEFT, RIGHT, TOP, BASE] = [16, 624, 60, 252];
const BARS = 40;

export interface Histogram {
  readonly left: number;
  readonly right: number;
  readonly base: number;
  readonly bars: readonly {
    readonly x: number;
    readonly width: number;
    readonly y: number;
    readonly height: number;
    readonly isShort: boolean;
  }[];
  readonly ticks: readonly { readonly at: number; readonly words: string }[];
  readonly asked: number | null;
  readonly at: (length: number) => number;
}

/** `also`: other lengths that have to lie on the axis. */
export function histogram({ lengths, required }: Distances, also: readonly (number | null)[]): Histogram {
  const all = [...lengths, ...[required, ...also].flatMap((one) => (one === null ? [] : [one]))];
  const [from, to] = [Math.min(...all), Math.max(...all)];
  const step = Math.max(0.01, (to - from) / BARS);
  const origin = required ?? from;
  const counts = new Map<number, number>();
  for (const length of lengths) {
    // a length that just does lies on the side that does
    const bar = Math.floor((length - origin) / step + 1e-9);
    counts.set(bar, (counts.get(bar) ?? 0) + 1);
  }
  const most = Math.max(1, ...counts.values());
  const [low, high] = [from - step, to + step];
  const at = (length: number): number => LEFT + ((length - low) / (high - low)) * (RIGHT - LEFT);
  const width = Math.max(1, at(step) - at(0) - 1);
  const bars = [...counts].map(([bar, count]) => {
    const height = (count / most) * (BASE - TOP);
    return {
      x: at(origin + bar * step),
      width,
      y: BASE - height,
      height,
      isShort: required !== null && bar < 0,
    };
  });
  return {
    left: LEFT,
    right: RIGHT,
    base: BASE,
    bars,
    ticks: ticks(inUnit(low), inUnit(high), 8).map((tick) => ({
      at: at(mmOfUnit(tick)),
      words: String(Number(tick.toFixed(4))),
    })),
    asked: required === null ? null : at(required),
    at,
  };
}

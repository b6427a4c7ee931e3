// The voltage between two ends as a drawing: on the left over one period of the mains, one line for every switching
// state and the band between them that switching fills; on the right one switching period at the crest. Plain geometry
// in the units of the drawing; whoever renders it maps roles to strokes.

import type { ComputedFigure, PairWaveform, SwitchingState } from '#stress/pair/pair-stress.ts';
import { outlineOf } from './outline.ts';
import { frequency, volts } from '#words/text/number-words.ts';
import { stateWords } from '#words/stress/voltage-words.ts';
import { multiples, stepAtLeast } from '#drawing/marks/ruler-steps.ts';

export interface StressPlot {
  readonly width: number;
  readonly height: number;
  /** Area that switching sweeps, as the points of a polygon; the spike is not part of it. */
  readonly band: string;
  readonly lines: readonly PlotLine[];
  /** One switching period, as the points of one line. */
  readonly cycle: string;
  readonly levels: readonly PlotLevel[];
  readonly ticks: readonly PlotTick[];
  readonly mains: PlotBox & { readonly says: string };
  readonly switching: PlotBox & { readonly says: string };
}

export interface PlotBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlotLine {
  readonly state: SwitchingState;
  readonly says: string;
  readonly points: string;
  /** Where its name stands. */
  readonly at: readonly [number, number];
}

/** Peak and true rms of these two ends, as level lines. */
export interface PlotLevel {
  readonly kind: 'peak' | 'rms';
  readonly y: number;
  readonly says: string;
}

export interface PlotTick {
  readonly y: number;
  readonly says: string;
  readonly isZero: boolean;
}

const WIDTH = 776;
const HEIGHT = 300;
const MAINS: PlotBox = { left: 56, right: 430, top: 20, bottom: 262 };
const SWITCHING: PlotBox = { left: 560, right: 676, top: 20, bottom: 262 };
const POINTS = 73;
/** From the middle line to the top. */
const MOST_STEPS = 5;
/** A spike takes no time; drawn it takes this part of the period. */
const SPIKE = 0.04;

export function stressPlot({ waveform, rms, peak }: ComputedFigure<number>): StressPlot {
  const most = Math.max(peak, rms, 1);
  const step = stepAtLeast(most / MOST_STEPS);
  const top = Math.ceil(most / step) * step;
  const y = (value: number) => MAINS.top + ((top - value) / (2 * top)) * (MAINS.bottom - MAINS.top);
  return {
    width: WIDTH,
    height: HEIGHT,
    band: bandOf(waveform, y),
    lines: linesOf(waveform, y),
    cycle: cycleOf(waveform, y),
    levels: levelsOf(waveform, rms, peak, y),
    ticks: ticksOf(top, step, y),
    mains: { ...MAINS, says: mainsWords(waveform) },
    switching: { ...SWITCHING, says: `one period of ${frequency(waveform.switchingFrequency)}` },
  };
}

type Y = (value: number) => number;

const x = (angle: number): number => MAINS.left + (angle / 360) * (MAINS.right - MAINS.left);

const joined = (points: readonly (readonly [number, number])[]): string =>
  points.map(([px, py]) => `${px.toFixed(1)},${py.toFixed(1)}`).join(' ');

function bandOf(waveform: PairWaveform, y: Y): string {
  const lasting = { ...waveform, states: waveform.states.filter(({ share }) => share > 0) };
  const outline = outlineOf(lasting, POINTS);
  const upper = outline.map(({ angle, volts: all }) => [x(angle), y(Math.max(...all))] as const);
  const lower = outline.map(({ angle, volts: all }) => [x(angle), y(Math.min(...all))] as const);
  return joined([...upper, ...lower.reverse()]);
}

/** Names stand at the right ends, moved apart where lines run close. */
function linesOf(waveform: PairWaveform, y: Y): readonly PlotLine[] {
  const outline = outlineOf(waveform, POINTS);
  const lines = waveform.states.map(({ state }, i) => {
    const points = outline.map(({ angle, volts: all }) => [x(angle), y(all[i] ?? 0)] as const);
    return { state, says: stateWords(state), points: joined(points), end: points.at(-1)?.[1] ?? 0 };
  });
  let last = -Infinity;
  return [...lines]
    .sort((a, b) => a.end - b.end)
    .map(({ end, ...line }) => {
      last = Math.max(end, last + LETTERING);
      return { ...line, at: [MAINS.right + 6, last] as const };
    });
}

const LETTERING = 13;

/** At the crest of the side on which the peak lies. */
function cycleOf({ swing, states }: PairWaveform, y: Y): string {
  const highest = states.reduce((a, b) => (Math.abs(b.level) > Math.abs(a.level) ? b : a));
  const crest = Math.abs(swing) * (highest.level < 0 ? -1 : 1);
  const width = SWITCHING.right - SWITCHING.left;
  const order: readonly SwitchingState[] = ['on', 'spike', 'off', 'idle'];
  const points: (readonly [number, number])[] = [];
  let at = 0;
  for (const state of order) {
    const found = states.find((one) => one.state === state);
    if (found === undefined) continue;
    const until = state === 'spike' ? Math.min(1, at + SPIKE) : at + found.share;
    const level = y(found.level + crest);
    points.push([SWITCHING.left + at * width, level], [SWITCHING.left + Math.max(at, until) * width, level]);
    // the spike is taken out of the time that the switch is off, not added to it
    at = state === 'spike' ? at : until;
  }
  return joined(inOrder(points));
}

/** The spike overlaps the time after it: what follows begins where it ends. */
const inOrder = (points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] => {
  let last = -Infinity;
  return points.map(([px, py]) => {
    last = Math.max(last, px);
    return [last, py] as const;
  });
};

function levelsOf({ states }: PairWaveform, rms: number, peak: number, y: Y): readonly PlotLevel[] {
  const highest = states.reduce((a, b) => (Math.abs(b.level) > Math.abs(a.level) ? b : a));
  const sign = highest.level < 0 ? -1 : 1;
  return [
    { kind: 'peak', y: y(sign * peak), says: `peak ${volts(peak)}` },
    { kind: 'rms', y: y(sign * rms), says: `rms ${volts(rms)}` },
  ];
}

const ticksOf = (top: number, step: number, y: Y): readonly PlotTick[] =>
  multiples(step, -top, top).map((value) => ({ y: y(value), says: `${value}`, isZero: value === 0 }));

const mainsWords = ({ mainsFrequency }: PairWaveform): string =>
  mainsFrequency === 0 ? 'direct supply' : `one period of the mains, ${frequency(mainsFrequency)}`;

import { describe, expect, it } from 'vitest';

import { stressPlot } from '#drawing/plot/stress-plot.ts';
import { because } from '#standards/because.ts';
import type { ComputedFigure, PairWaveform } from '#stress/pair/pair-stress.ts';
import { peakOf, rmsOf } from '#stress/pair/waveform.ts';
import { hertz, voltsPeak } from '#units/quantity.ts';

const end = (circuit: string) => ({ circuit, winding: null, at: 'tied', diode: null }) as const;

const waveformAt = (mains: number): PairWaveform => ({
  swing: voltsPeak(170),
  mainsFrequency: hertz(mains),
  switchingFrequency: hertz(65_000),
  states: [
    { state: 'on', share: 0.2, level: voltsPeak(-170) },
    { state: 'off', share: 0.8, level: voltsPeak(260) },
    { state: 'spike', share: 0, level: voltsPeak(320) },
  ],
});

const figure = (mains: number): ComputedFigure<number> => ({
  value: 490,
  rms: rmsOf(waveformAt(mains)),
  peak: peakOf(waveformAt(mains)),
  ends: [end('pri'), end('out')],
  variant: null,
  line: 'high',
  mode: 'continuous',
  because: because('stress', {}),
  waveform: waveformAt(mains),
});

const numbers = (points: string) => points.split(' ').map((point) => point.split(',').map(Number));

describe('stressPlot', () => {
  const plot = stressPlot(figure(50));
  const zero = plot.ticks.find(({ isZero }) => isZero)?.y ?? NaN;
  const perVolt = (zero - (plot.ticks.find(({ says }) => says === '400')?.y ?? NaN)) / 400;

  it('should draw every state over one period, its crest at a quarter', () => {
    expect(plot.lines.map(({ state }) => state)).toEqual(['spike', 'off', 'on']);
    const off = numbers(plot.lines[1]?.points ?? '');
    expect(off[18]?.[1]).toBeCloseTo(zero - perVolt * 430, 0);
    expect(off[54]?.[1]).toBeCloseTo(zero - perVolt * 90, 0);
  });

  it('should fill what switching sweeps and leave the spike out of it', () => {
    const ys = numbers(plot.band).map(([, py]) => py ?? NaN);
    expect(Math.min(...ys)).toBeCloseTo(zero - perVolt * 430, 0);
    expect(Math.max(...ys)).toBeCloseTo(zero + perVolt * 340, 0);
  });

  it('should draw one switching period by its shares, from left to right, with the spike', () => {
    const { left, right } = plot.switching;
    const points = numbers(plot.cycle);
    expect(points[0]?.[0]).toBe(left);
    expect(points[1]?.[0]).toBeCloseTo(left + 0.2 * (right - left), 1);
    expect(points.at(-1)?.[0]).toBeCloseTo(right, 1);
    const xs = points.map(([px]) => px ?? NaN);
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
    expect(points[2]?.[1]).toBeCloseTo(zero - perVolt * 490, 0);
  });

  it('should hold everything inside its frame and keep names apart', () => {
    for (const { y } of [...plot.levels, ...plot.ticks]) {
      expect(y).toBeGreaterThanOrEqual(plot.mains.top);
      expect(y).toBeLessThanOrEqual(plot.mains.bottom);
    }
    const at = plot.lines.map((line) => line.at[1]);
    at.slice(1).forEach((y, i) => expect(y - (at[i] ?? 0)).toBeGreaterThanOrEqual(13));
  });

  it('should name a direct supply', () => {
    expect(stressPlot(figure(0)).mains.says).toBe('direct supply');
  });
});

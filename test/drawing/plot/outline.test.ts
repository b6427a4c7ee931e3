import { describe, expect, it } from 'vitest';
import { outlineOf } from '#drawing/plot/outline.ts';
import { hertz, voltsPeak } from '#units/quantity.ts';

const waveform = {
  swing: voltsPeak(170),
  mainsFrequency: hertz(50),
  switchingFrequency: hertz(65_000),
  states: [
    { state: 'on' as const, share: 0.2, level: voltsPeak(-170) },
    { state: 'off' as const, share: 0.8, level: voltsPeak(260) },
  ],
};

describe('outlineOf', () => {
  it('should run over one period of the mains and reach its crest', () => {
    const outline = outlineOf(waveform, 5);
    expect(outline.map(({ angle }) => angle)).toEqual([0, 90, 180, 270, 360]);
    expect(outline[1]?.volts).toEqual([0, 430]);
    expect(outline[3]?.volts).toEqual([-340, 90]);
  });
});

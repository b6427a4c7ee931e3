import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import type { PairWaveform } from '#stress/pair/pair-stress.ts';
import { peakOf, rmsOf } from '#stress/pair/waveform.ts';
import { hertz, voltsPeak } from '#units/quantity.ts';

const waveform = (
  swing: number,
  ...states: readonly (readonly [share: number, level: number])[]
): PairWaveform => ({
  swing: voltsPeak(swing),
  mainsFrequency: hertz(50),
  switchingFrequency: hertz(65_000),
  states: states.map(([share, level], i) => ({
    state: i === 0 ? 'on' : 'off',
    share,
    level: voltsPeak(level),
  })),
});

/** Adds up the square of the switched sine itself, instant by instant, over one mains period. */
function bruteRms({ swing, mainsFrequency, switchingFrequency, states }: PairWaveform): number {
  const cycles = Math.round(switchingFrequency / mainsFrequency);
  const inCycle = 200;
  let square = 0;
  for (let i = 0; i < cycles * inCycle; i += 1) {
    const phase = (i % inCycle) / inCycle;
    let until = 0;
    const now = states.find(({ share }) => phase < (until += share)) ?? states.at(-1);
    const volts = (now?.level ?? 0) + swing * Math.sin((2 * Math.PI * (i + 0.5)) / (cycles * inCycle));
    square += volts * volts;
  }
  return Math.sqrt(square / (cycles * inCycle));
}

describe('rmsOf', () => {
  it('should give a rectangle between Vb and -VOR as the root of their product (flyback.rms.windings)', () => {
    const duty = 100 / 473.352380466;
    expect(rmsOf(waveform(0, [duty, 373.352380466], [1 - duty, -100]))).toBeCloseTo(193.223285467, 8);
  });

  it('should give a bulk rail as Vb times the root of 3/8 (bulk.rms.mains.only: 207.846 V at 240 V)', () => {
    const half = (240 * Math.SQRT2) / 2;
    expect(rmsOf(waveform(half, [1, half]))).toBeCloseTo(207.846096908, 8);
    expect(peakOf(waveform(half, [1, half]))).toBeCloseTo(339.41125497, 8);
  });

  it('should agree with adding up the switched wave itself', () => {
    const duties = fc.integer({ min: 1, max: 199 }).map((n) => n / 200);
    const volts = fc.double({ min: -600, max: 600, noNaN: true });
    const law = fc.property(duties, volts, volts, volts, (duty, on, off, swing) => {
      const wave = waveform(swing, [duty, on], [1 - duty, off]);
      expect(rmsOf(wave)).toBeCloseTo(bruteRms(wave), 4);
    });
    fc.assert(law, { seed: 4, numRuns: 30 });
  });
});

describe('peakOf', () => {
  it('should count a spike that takes no time', () => {
    expect(peakOf(waveform(100, [1, 50], [0, -400]))).toBe(500);
  });

  it('should never lie under the rms', () => {
    const volts = fc.double({ min: -600, max: 600, noNaN: true });
    const law = fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      volts,
      volts,
      volts,
      (d, on, off, swing) => {
        const wave = waveform(swing, [d, on], [1 - d, off]);
        expect(rmsOf(wave)).toBeLessThanOrEqual(peakOf(wave) + 1e-9);
      },
    );
    fc.assert(law, { seed: 5 });
  });
});

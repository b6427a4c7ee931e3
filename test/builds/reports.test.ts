// Required distances that published test reports print for one transformer (T*), against ours for the same voltages.
// T1 and T2 are reports to IEC 60950-1: their creepage rows are the same as the default book's and are checked, their
// clearances (4.4 and 4.2 mm, by peak working voltage on top of the mains) belong to that standard and are not.

import { describe, expect, it } from 'vitest';
import type { Because } from '#standards/because.ts';
import type { Changes } from '#test/designs.ts';
import { barrierOf, judgeBuild } from './judge-build.ts';

const BUILD = 'margin-bias-between';

function required(rms: number, peak: number, frequency: string, more: Changes = {}) {
  const working = { between: ['pri', 'out'], rms, peak, frequency, basis: 'measured' };
  const asked = barrierOf(judgeBuild(BUILD, { workingVoltages: [working], ...more })).required;
  if (!asked) throw new Error('nothing is asked');
  return asked;
}

const nextRows = (why: Because): readonly unknown[] => [
  ...('nextRow' in why.values ? [why.values['nextRow']] : []),
  ...why.from.flatMap(nextRows),
];

describe('required distances of published test reports', () => {
  it('should ask 5.8 mm of creepage at 281 V rms (T1, report to IEC 60950-1 of an adapter, p. 47)', () => {
    expect(required(281, 530, '65 kHz').creepage).toMatchObject({ basic: 2.9, reinforced: 5.8 });
  });

  it('should ask 5.0 mm of creepage at 250 V rms (T2, report to IEC 60950-1 of an adapter, pp. 16 and 42)', () => {
    expect(required(250, 428, '65 kHz').creepage).toMatchObject({ basic: 2.5, reinforced: 5 });
  });

  it('should ask 3.0 mm of clearance at 500 V peak (T3, report to IEC 62368-1 of a charger, p. 44)', () => {
    expect(required(240, 500, '64.1 kHz').clearance).toMatchObject({ basic: 1.5, reinforced: 3 });
  });

  it('should interpolate 240 V rms to 4.8 mm and name the 5.0 mm of the next row, which T3 took', () => {
    const { creepage } = required(240, 500, '64.1 kHz');
    expect(creepage.reinforced).toBe(4.8);
    expect(nextRows(creepage.because)).toContain(5);
  });

  it('should ask 4.5 mm of clearance at 5000 m, 2.3 mm for basic (reports to IEC 62368-1, factor 1.48)', () => {
    const { clearance } = required(240, 420, '65 kHz', { 'surroundings.altitude': '5000 m' });
    expect(clearance).toMatchObject({ basic: 2.3, reinforced: 4.5 });
  });

  it('should test one ply of tape at 4000 V (T3, p. 45)', () => {
    expect(required(240, 500, '64.1 kHz').test).toMatchObject({ reinforcedPeak: 4000, dc: 4000 });
  });

  it('should hold the distances that the reports measured to what they required', () => {
    const measured = [
      { report: 'T1', rms: 281, peak: 530, clearance: 7.6, creepage: 7.6 },
      { report: 'T3, windings', rms: 240, peak: 500, clearance: 7.7, creepage: 7.7 },
      { report: 'T3, core to output', rms: 240, peak: 500, clearance: 6.9, creepage: 6.9 },
    ];
    for (const { report, rms, peak, clearance, creepage } of measured) {
      const outside = (least: number) => [
        {
          between: ['pri', 'out'],
          what: report,
          clearance: Math.min(clearance, least),
          creepage: Math.min(creepage, least),
        },
      ];
      const working = { between: ['pri', 'out'], rms, peak, frequency: '65 kHz', basis: 'measured' };
      const judged = (least: number) =>
        judgeBuild(BUILD, { workingVoltages: [working], outside: outside(least) }).verdict;
      expect(judged(Infinity), report).toBe('meets');
      expect(judged(2.9), report).toBe('falls-short');
    }
  });
});

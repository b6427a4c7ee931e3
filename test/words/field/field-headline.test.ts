import { describe, expect, it } from 'vitest';

import type { FieldGap, FieldReport } from '#judge/field/field-report.ts';
import type { Design } from '#model/design.ts';
import { fieldHeadline } from '#words/field/field-headline.ts';

const gap = (margin: number, error: number | null, test: number | null = null): FieldGap =>
  ({ margin, error, startsAt: 500 * margin, test }) as FieldGap;
const said = (...gaps: readonly FieldGap[]): string =>
  fieldHeadline({} as Design, { none: null, gaps } as unknown as FieldReport);

describe('what the field comes to', () => {
  it('should say that nothing discharges only where the error of the mesh leaves no doubt', () => {
    expect(said(gap(1.2, 0.05))).toMatch(/^Nothing discharges at work\./);
    expect(said(gap(1.04, 0.05))).toMatch(/^Discharge may start at work, within what the meshes differ by\./);
    // the second gap is less sure than the first
    expect(said(gap(1.1, 0.02), gap(1.15, 0.2))).toMatch(/^Discharge may start/);
    expect(said(gap(0.9, 0.05))).toMatch(/^Discharge starts at work, in one gap\./);
  });

  it('should count the gaps that the test sets off', () => {
    const gaps = [gap(2, 0.01, 2000), gap(3, 0.01, 2000), gap(6, 0.01, 2000)];
    expect(said(...gaps)).toBe(
      'Nothing discharges at work; at the test it starts in 2 gaps. Gap 1 stands 2.0 times its working voltage.',
    );
  });
});

import { describe, expect, it } from 'vitest';
import type { Design } from '#model/design.ts';
import { windingSteps } from '#words/design/winding-steps.ts';
import { greenhouseDesign, greenhouseVerdict } from '#test/papers/greenhouse.ts';

const steps = (design: Design) => windingSteps(design, greenhouseVerdict.fit);
const design = greenhouseDesign();

describe('windingSteps', () => {
  it('should go from the former outward to the core, one step a layer', () => {
    expect(steps(design).map(({ title }) => title)).toEqual([
      'Former',
      'Primary, 100 turns',
      'Tape',
      'Output, 20 turns',
      'Tape',
      'Auxiliary, 11 turns',
      'Outer wrap',
      'Core',
    ]);
  });

  it('should give every step something to measure', () => {
    for (const { measures } of steps(design)) expect(measures.length).toBeGreaterThan(0);
  });

  it('should cut tape to the chamber less what it stops short', () => {
    const texts = steps(design).map(({ does }) => does.join(' '));
    expect(texts[2]).toContain('12.00 wide. Both edges touch the flanges');
    expect(texts[4]).toContain('11.60 wide. Left edge 0.00, right edge 0.40 short');
  });

  it('should lay each margin before the turns', () => {
    const [, primary] = steps(design);
    expect(primary?.does[0]).toBe(
      'Margin tape, 3.00 wide and as high as the winding, tight against the left flange.',
    );
    expect(primary?.does.findIndex((line) => line.startsWith('100 turns'))).toBeGreaterThan(1);
  });

  it('should say what nobody knows', () => {
    const [, primary] = steps(design);
    expect(primary?.does.filter((line) => line.includes('unknown how it leaves')).length).toBe(2);
  });
});

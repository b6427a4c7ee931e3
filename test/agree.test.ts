// One voice: what the judge found, what `stress` says, the text, the report, the drawing and the canvas say the same of
// every pair, part and spot. Over all demos, all cases and random builds with parts across the barrier.

import { readdirSync, readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { study } from '#judge/study.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { Design } from '#model/design.ts';
import { cases } from '#test/cases/read-cases.ts';
import { copyOf } from '#test/laws/change-design.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import { disagreements } from '#test/told.ts';

const DEMOS = new URL('../static/demos/', import.meta.url);
const demos = readdirSync(DEMOS).filter((name) => name.endsWith('.json'));
const demo = (name: string): object =>
  JSON.parse(readFileSync(new URL(name, DEMOS), 'utf8')) as Record<string, unknown>;

const SEED = 20261130;
/** Some in the suite, for time; more where LAW_RUNS asks for them. */
const RUNS = Number(process.env['LAW_RUNS'] ?? 12);
/** Every third known answer in the suite, for time; all by `AGREE_PART=1/1`. */
const [part = 1, parts = 3] = (process.env['AGREE_PART'] ?? '1/3').split('/').map(Number);
const known = cases
  .filter(({ design }) => designOf(design) !== null)
  .filter((_, i) => i % parts === part - 1);

function designOf(file: unknown): Design | null {
  const read = readDesign(file, knownIds);
  return read.kind === 'bad' ? null : read.design;
}

function told(file: unknown): readonly string[] {
  const design = designOf(file);
  if (design === null) throw new Error('a file that cannot be read');
  return disagreements(design, study(design));
}

describe('one voice', () => {
  it.each(demos)('should tell the demo %s in one way', (name) => {
    expect(told(demo(name))).toEqual([]);
  });

  it.each(known)('should tell $id in one way', ({ design }) => {
    expect(told(design)).toEqual([]);
  });

  it('should tell of random builds in one way', () => {
    const length = fc.constantFrom(2.4, 3, 4.7, 5.1, 5.8, 6.4, 8);
    const part = fc.record({
      kind: fc.constantFrom('capacitor', 'optocoupler', 'resistor'),
      safetyClass: fc.constantFrom('Y1', 'Y2', 'X2', 'unknown'),
      approval: fc.constantFrom('none', 'basic', 'reinforced', 'unknown'),
      inSeries: fc.constantFrom(1, 2),
      clearance: length,
      creepage: length,
    });
    const gap = fc.record({ clearance: length, creepage: length, what: fc.constant('pin rows') });
    const voltage = fc.constantFrom(null, { rms: '250 V', peak: '500 V', frequency: '65 kHz' });
    let compared = 0;
    const property = fc.property(
      arbitraryDesign,
      fc.array(part, { maxLength: 2 }),
      fc.array(gap, { maxLength: 1 }),
      voltage,
      (random, parts, gaps, working) => {
        const between = ['pri', 'out'];
        const file = copyOf(random, (copy) => {
          copy.bridges = parts.map(({ kind, safetyClass, approval, ...rest }, i) => ({
            id: `B${i}`,
            between,
            kind,
            ...rest,
            ...(kind === 'capacitor' ? { safetyClass, capacitance: '1 nF' } : { approval }),
          }));
          copy.outside = gaps.map((one) => ({ between, ...one }));
          if (working !== null) copy.workingVoltages = [{ between, ...working }];
        });
        if (designOf(file) === null) return;
        compared++;
        expect(told(file)).toEqual([]);
      },
    );
    fc.assert(property, { seed: SEED, numRuns: RUNS });
    expect(compared).toBeGreaterThan(RUNS / 2);
  });

  it('should hold a part to the voltage that its pair is judged at', () => {
    // 24 and 29 V behind a computed primary: the raised rms asks for more than the 5.1 mm round the optocoupler
    const file = copyOf(demo('garden-robot-dock.json'), (copy) => {
      copy.bridges = copy.bridges
        .filter(({ kind }: { kind: string }) => kind === 'optocoupler')
        .map((one: object) => ({ ...one, creepage: '5.1 mm' }));
    });
    const design = designOf(file)!;
    const { verdict, stress } = study(design);
    expect(verdict.pairs.find(({ limiting }) => limiting?.bridge === 'OK1')?.achieved).toBe('basic');
    expect(stress.bridges.map(({ worst }) => worst.grade)).toEqual(['basic']);
    expect(disagreements(design, study(design))).toEqual([]);
  });
});

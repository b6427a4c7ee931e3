// Laws of the judgement, over random builds: what must never lower a grade or shorten a path, what must change nothing.
// Held to what they are stated for: paths that do not run over the core, equal rows, builds that are not overfull.

import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightOf } from '#rules/grade.ts';
import type { PairVerdict, Verdict } from '#rules/verdict.ts';
import { arbitraryDesign } from '#test/oracle/arbitrary-build.ts';
import {
  copyOf,
  mirrored,
  renamed,
  renamedCircuit,
  roomy,
  split,
  verdictOf,
  type File,
} from './change-design.ts';

const SEED = 20261125;
/** Few in the suite, for time; more where LAW_RUNS asks for them. */
const RUNS = Number(process.env['LAW_RUNS'] ?? 10);
/** Comparisons that say something a law must have made. */
const LEAST_COMPARED = RUNS / 5;
const TOLERANCE = 0.000_01;

const VOLTAGE = { between: ['pri', 'out'], rms: '250 V', peak: '500 V', frequency: '65 kHz' };

type Complain = (before: Verdict, after: Verdict) => readonly string[];

describe('never worse', () => {
  it('should hold for wider filled margins', () => {
    check(eachLayer('winding', widen), neverWorse);
  });

  it('should hold for a lower voltage', () => {
    const lower = (copy: File) => (copy.workingVoltages = [{ ...VOLTAGE, rms: '200 V', peak: '340 V' }]);
    check((file) => [copyOf(file, lower)], neverWorse);
  });

  it('should hold for a cleaner degree of pollution', () => {
    check(
      (file) => [copyOf(file, (copy) => (copy.surroundings.pollutionDegree = 2))],
      neverWorse,
      (file) => copyOf(file, (copy) => (copy.surroundings.pollutionDegree = 3)),
    );
  });

  it('should hold for a lower altitude', () => {
    check(
      (file) => [copyOf(file, (copy) => (copy.surroundings.altitude = '2000 m'))],
      neverWorse,
      (file) => copyOf(file, (copy) => (copy.surroundings.altitude = '5000 m')),
    );
  });

  it('should hold for one more ply in a former as much higher: no path is shorter', () => {
    check(eachLayer('tape', addPly), neverShorter);
  });

  it('should hold for covered wire in place of enamelled wire as thick', () => {
    const cover = (copy: File, at: number) => {
      const { wire } = copy.windings[at];
      const { overallDiameter } = wire;
      const conductor = Number((overallDiameter - 0.1).toFixed(3));
      copy.windings[at].wire = {
        kind: 'layer-insulated',
        conductor,
        overallDiameter,
        insulationLayers: 3,
        approval: 'wire-annex',
      };
    };
    const each = (file: File) =>
      file.windings.flatMap(({ wire }: File, at: number) =>
        wire.kind === 'enamelled' ? [copyOf(file, (copy) => cover(copy, at))] : [],
      );
    check(each, neverLower);
  });
});

describe('nothing changes', () => {
  it('should hold for a build and its mirror image', () => {
    check(
      (file) => [mirrored(file)],
      same,
      (file) =>
        copyOf(file, (copy) => {
          // windings that are not spread begin at their start lead; without one, always at the left
          for (const layer of copy.layers) if (layer.kind === 'winding') layer.spread = true;
        }),
    );
  });

  it('should hold for a tape layer wound as two', () => {
    const each = (file: File) =>
      file.layers.flatMap((layer: File, at: number) =>
        layer.kind === 'tape' && layer.plies > 1 ? [split(file, at)] : [],
      );
    // plies that cannot be parted, closed joints and blocks beside the plies belong to one layer
    check(each, same, (file) =>
      copyOf(file, (copy) => {
        for (const layer of copy.layers)
          if (layer.kind === 'tape')
            Object.assign(layer, { bonded: false, cemented: false, margins: undefined });
      }),
    );
  });

  it('should hold for other names and another order of circuits and windings', () => {
    check(
      (file) => [renamed(file)],
      (before, after) => same(asRenamed(before), after),
    );
  });
});

describe('what is not known', () => {
  it.each([
    ['how many plies', eachLayer('tape', (copy, at) => (copy.layers[at].plies = 'unknown'))],
    ['what a ply stands', eachLayer('tape', (copy, at) => (copy.layers[at].plyWithstand = 'unknown'))],
    ['a margin', eachLayer('winding', (copy, at) => (copy.layers[at].margins.left.width = 'unknown'))],
    ['the gap to the core', (file: File) => [copyOf(file, (copy) => (copy.core.outerGap = 'unknown'))]],
    ['the flange', (file: File) => [copyOf(file, (copy) => (copy.former.flange = 'unknown'))]],
    ['the wall', (file: File) => [copyOf(file, (copy) => (copy.former.wall = 'unknown'))]],
    ['the bond of the core', (file: File) => [copyOf(file, (copy) => (copy.core.bond = 'unknown'))]],
  ] as const)('should never beat the known value: %s', (_, change) => {
    check(change, (before, after) => lowered(after, before, () => true));
  });

  it.each([
    ['a margin', (copy: File, half: number) => widthsOf(copy, half)],
    [
      'the gap to the core',
      (copy: File, half: number) => (copy.core.outerGap = { value: 0.5, plusMinus: half }),
    ],
    ['the height', (copy: File, half: number) => (copy.former.height = { value: 4, plusMinus: half })],
  ] as const)('should never improve by a wider interval: %s', (_, change) => {
    check(
      (file) => [copyOf(file, (copy) => void change(copy, 0.4))],
      (before, after) => lowered(after, before, () => true),
      (file) => copyOf(file, (copy) => void change(copy, 0.1)),
    );
  });
});

/** Judges random builds before and after each change; complains with the seed and the smallest build found. */
function check(
  changes: (file: File) => readonly File[],
  complain: Complain,
  prepare: (file: File) => File = (file) => file,
): void {
  let compared = 0;
  let tried = 0;
  const property = fc.property(arbitraryDesign, (random) => {
    const file = prepare(
      copyOf(random, (copy) => {
        copy.workingVoltages = [VOLTAGE];
        roomy(copy);
      }),
    );
    const before = verdictOf(file);
    if (!before || isOverfull(before)) return;
    const all = changes(file);
    const changed = all[tried % all.length];
    const after = changed === undefined ? null : verdictOf(changed);
    if (!after || isOverfull(after) || rowsOf(after) !== rowsOf(before)) return;
    tried++;
    if (saysSomething(before)) compared++;
    expect(complain(before, after)).toEqual([]);
  });
  fc.assert(property, { seed: SEED, numRuns: RUNS });
  expect(compared, `seed ${SEED}`).toBeGreaterThanOrEqual(LEAST_COMPARED);
}

/** A pair stands on more than functional insulation, or a path has a length to lose. */
const saysSomething = ({ pairs }: Verdict): boolean =>
  pairs.some(
    ({ required, achieved, paths }) =>
      required !== null && (heightOf(achieved) > 1 || paths.some(({ length }) => (length ?? 0) > 1)),
  );

const isOverfull = ({ fit }: Verdict): boolean => fit.height.used > fit.height.available;

/** Rows of the windings; a layer of tape more or less does not count. */
const rowsOf = ({ fit }: Verdict): string =>
  fit.chambers
    .map(({ layers }) =>
      layers
        .filter(({ turnsPerRow }) => turnsPerRow > 0)
        .map(({ rows }) => rows)
        .join(),
    )
    .sort()
    .join(';');

const overCore = (over: readonly string[] | undefined): boolean => over?.includes('core') ?? false;

const neverWorse: Complain = (before, after) => [
  ...neverLower(before, after),
  ...shortened(before, after, false),
];

const neverShorter: Complain = (before, after) => shortened(before, after, true);

const neverLower: Complain = (before, after) =>
  lowered(before, after, ({ limiting }) => !overCore(limiting?.over));

function lowered(before: Verdict, after: Verdict, counts: (pair: PairVerdict) => boolean): readonly string[] {
  return after.pairs.flatMap((pair, i) => {
    const was = before.pairs[i]!;
    const lower = heightOf(pair.achieved) < heightOf(was.achieved);
    return counts(pair) && lower ? [`${pair.between.join('-')} ${was.achieved} to ${pair.achieved}`] : [];
  });
}

function shortened(before: Verdict, after: Verdict, core: boolean): readonly string[] {
  return after.pairs.flatMap((pair, i) =>
    pair.paths.flatMap((path, j) => {
      if (path.length === null || (overCore(path.over) && !core)) return [];
      const was = before.pairs[i]!.paths[j]!.length ?? Infinity;
      const name = `${pair.between.join('-')} ${path.metric} ${path.plies} plies`;
      return path.length < was - TOLERANCE ? [`${name}: ${was} to ${path.length} in ${path.section}`] : [];
    }),
  );
}

const same: Complain = (before, after) => {
  const [was, now] = [factsOf(before), factsOf(after)];
  return now.flatMap((fact, i) => (fact === was[i] ? [] : [`${was[i]} became ${fact}`]));
};

function factsOf({ pairs, verdict }: Verdict): readonly string[] {
  const facts = pairs.map((pair) => {
    const name = pair.between.toSorted().join('-');
    const lengths = pair.paths.map(
      ({ metric, plies, length }) => `${metric} ${plies}: ${length?.toFixed(4)}`,
    );
    return `${name} ${pair.achieved} ${pair.verdict} ${lengths.join(' ')}`;
  });
  return [verdict, ...facts.sort()];
}

const asRenamed = (verdict: Verdict): Verdict => ({
  ...verdict,
  pairs: verdict.pairs.map((pair) => {
    const [a, b] = pair.between;
    return { ...pair, between: [renamedCircuit(a), renamedCircuit(b)] as const };
  }),
});

/** One file for every layer of a kind, that layer changed; a run takes one of them. */
function eachLayer(
  kind: string,
  change: (copy: File, at: number) => unknown,
): (file: File) => readonly File[] {
  return (file) =>
    file.layers.flatMap((layer: File, at: number) =>
      layer.kind === kind ? [copyOf(file, (copy) => void change(copy, at))] : [],
    );
}

function widen(copy: File, at: number): void {
  for (const margin of Object.values<File>(copy.layers[at].margins))
    if (margin.filled) margin.width = Number((margin.width + 0.3).toFixed(3));
}

function addPly(copy: File, at: number): void {
  copy.layers[at].plies++;
  copy.former.height = Number((copy.former.height + copy.layers[at].plyThickness).toFixed(3));
}

function widthsOf(copy: File, half: number): void {
  for (const { kind, margins } of copy.layers)
    if (kind === 'winding') margins.left.width = { value: 0.5, plusMinus: half };
}

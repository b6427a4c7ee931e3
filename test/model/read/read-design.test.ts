import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '#model/design.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fullFile, KNOWN, plainFile } from '#test/model/sample-files.ts';

const LEFT_OUT = { kind: 'unknown', leftOut: true };
const SAID = { kind: 'unknown', leftOut: false };

const OLD_CONVERTER = {
  switchingFrequency: '65 kHz',
  reflectedVoltage: '90 V',
  clampOvershoot: '60 V',
  outputs: [{ circuit: 'out', voltage: '12 V' }],
};

function read(file: DesignFile): Design {
  const answer = readDesign(file, KNOWN);
  if (answer.kind === 'bad') throw new Error(answer.faults.map((fault) => fault.says).join('\n'));
  return answer.design;
}

describe('readDesign', () => {
  it('should fill in what the plainest file leaves out', () => {
    const design = read(plainFile());
    expect(design).toMatchObject({
      made: null,
      notes: '',
      supply: { tolerance: 0.1, frequency: { value: 50 }, overvoltageCategory: 2 },
      surroundings: {
        pollutionDegree: 2,
        altitude: { value: 2000 },
        hottestInsulation: LEFT_OUT,
        impregnation: 'none',
      },
      converter: null,
      workingVoltages: [],
      former: { material: LEFT_OUT, split: false, dividers: [] },
      core: { bond: LEFT_OUT, outerGap: LEFT_OUT, wrap: null },
      parts: [],
      outside: [],
      bridges: [],
      evidence: [],
    });
    expect(design.windings[0]).toMatchObject({ anchored: false, leads: LEFT_OUT, links: [] });
    expect(design.windings[0]?.wire).toMatchObject({
      insulationLayers: LEFT_OUT,
      approval: LEFT_OUT,
      overallDiameter: null,
    });
    expect(design.layers[0]).toMatchObject({ chamber: 0, strands: 1, spread: true, extent: null });
    expect(design.layers[0]?.margins.left).toMatchObject({
      filled: false,
      moulded: false,
      height: null,
      withstand: LEFT_OUT,
    });
    expect(design.layers[1]).toMatchObject({
      plyWithstand: LEFT_OUT,
      bonded: false,
      cemented: false,
      turnUp: null,
    });
    expect(design.layers[1]?.margins.right.width).toMatchObject({ kind: 'known', value: 0 });
  });

  it('should list the defaults that can shape the verdict, and only those that were taken', () => {
    expect(read(plainFile()).defaulted).toEqual([
      'supply.tolerance',
      'supply.frequency',
      'supply.overvoltageCategory',
      'surroundings.pollutionDegree',
      'surroundings.altitude',
      'surroundings.impregnation',
    ]);
    expect(read(fullFile()).defaulted).toEqual([]);
  });

  it('should read every field of the format', () => {
    const design = read(fullFile());
    expect(design.supply.tolerance).toBe(0.1);
    expect(design.surroundings.altitude).toEqual({ kind: 'known', value: 2000, plusMinus: 100 });
    expect(design.former.wall).toMatchObject({ kind: 'plies', plies: 4, film: { value: 25_000 } });
    expect(design.former.flange).toEqual(SAID);
    expect(design.windings[0]?.leads).toMatchObject({
      start: {
        at: 'left',
        exit: 'right',
        sleeve: { wall: { value: 410_000 }, withstand: SAID },
        bareFrom: SAID,
        crossTape: 2,
      },
      finish: SAID,
    });
    expect(design.windings[1]?.leads).toBe('not-judged');
    expect(design.layers[0]?.margins.left).toMatchObject({
      withstand: { kind: 'rms', value: 3000 },
      moulded: true,
    });
    expect(design.layers[3]).toMatchObject({
      kind: 'screen',
      lead: { at: LEFT_OUT, exit: 'left', sleeve: null },
    });
    expect(design.bridges[0]).toMatchObject({ capacitance: { value: 1e-9 }, approval: LEFT_OUT });
  });

  it('should read what the format gained, each field under its own name', () => {
    const design = read(fullFile());
    expect(design.supply).toMatchObject({ lowest: { value: 100 }, transient: { value: 2500 } });
    expect(design.surroundings.temperature).toEqual({ method: 'thermocouple', condition: 'normal' });
    expect(design.converter).toMatchObject({
      mode: 'continuous',
      rail: { kind: 'boosted', voltage: { value: 390 } },
      variants: [{ reflectedVoltage: { value: 150 }, clampOvershoot: { value: 40 }, turns: { P: 40 } }],
    });
    expect(design.circuits.map(({ means }) => means)).toEqual([null, 'patient']);
    expect(design.former.tube).toMatchObject({ shape: 'rectangular', width: { value: 8_000_000 } });
    expect(design.layers[5]).toMatchObject({ beside: true });
    expect(design.outside[0]?.working).toMatchObject({ rms: { value: 339 }, basis: 'measured' });
    expect(design.bridges[0]?.working).toMatchObject({ rms: { value: 300 }, peak: null, basis: 'stated' });
    expect(design.evidence[1]?.measured).toMatchObject({ photo: 'e1', found: { value: 3, plusMinus: 0.05 } });
    expect(design.evidence[0]?.picture).toMatchObject({ turned: 12.5, scale: { picked: 1.5 } });
    expect(design.unopened).toBe(true);
  });

  it('should leave open what a file of before does not say', () => {
    const design = read({ ...plainFile(), converter: OLD_CONVERTER });
    expect(design.supply).toMatchObject({ lowest: LEFT_OUT, transient: null });
    expect(design.surroundings.temperature).toEqual({ method: LEFT_OUT, condition: 'normal' });
    expect(design.converter).toMatchObject({ mode: LEFT_OUT, rail: LEFT_OUT });
    expect(design).toMatchObject({ former: { tube: null }, unopened: false });
    expect(design.layers[0]).toMatchObject({ turns: 60, beside: false });
  });

  it.each([
    ['28 AWG', 321_094],
    ['36 awg', 127_000],
    ['0000 AWG', 11_684_000],
    ['4/0 AWG', 11_684_000],
    ['0 AWG', 8_251_463],
    [{ value: '28 AWG', plusMinus: '5 um' }, 321_094],
  ])('should read a conductor of %j as %d nm, by 0.127 mm x 92 ^ ((36 - n) / 39)', (conductor, value) => {
    const [winding] = plainFile().windings;
    const wire = { ...winding!.wire, conductor };
    const { windings } = read({
      ...plainFile(),
      windings: [{ ...winding!, wire }, plainFile().windings[1]!],
    });
    expect(windings[0]?.wire.conductor).toMatchObject({ kind: 'known', value });
  });

  it('should know no gauge finer than there is, and none where no wire is meant', () => {
    const refused = (file: DesignFile) => readDesign(file, KNOWN).kind;
    const [winding, other] = plainFile().windings;
    const wire = { ...winding!.wire, conductor: '57 AWG' };
    expect(refused({ ...plainFile(), windings: [{ ...winding!, wire }, other!] })).toBe('bad');
    expect(refused({ ...plainFile(), former: { ...plainFile().former, height: '10 AWG' } })).toBe('bad');
  });

  it('should take a ply of unknown thickness by the table where its material is named', () => {
    const tape = { kind: 'tape', plies: 2, plyThickness: 'unknown' } as const;
    const named = { ...tape, material: 'polyester-tape-25' };
    expect(read({ ...plainFile(), layers: [tape, named] }).layers).toMatchObject([
      { plyThickness: SAID },
      { plyThickness: null },
    ]);
  });

  it('should read a withstand given as direct volts', () => {
    const file = plainFile();
    const tape = {
      kind: 'tape',
      material: 'polyester-tape-25',
      plies: 'unknown',
      plyWithstand: { value: '4 kV', shape: 'dc' },
    } as const;
    expect(read({ ...file, layers: [tape] }).layers[0]).toMatchObject({
      plies: SAID,
      plyWithstand: { kind: 'dc', value: 4000, plusMinus: 0 },
    });
  });

  it('should leave the links of a split winding open where they are not told', () => {
    const file = plainFile();
    const [first] = file.layers;
    const split = {
      ...file,
      layers: [...file.layers, { kind: 'tape', material: 'polyester-tape-25', plies: 1 } as const, first!],
    };
    const withLinks = (links: NonNullable<DesignFile['windings'][number]['links']>) =>
      read({
        ...split,
        windings: split.windings.map((winding) => ({ ...winding, ...(winding.id === 'P' ? { links } : {}) })),
      });
    expect(read(split).windings.map(({ links }) => links)).toEqual([LEFT_OUT, []]);
    expect(withLinks('unknown').windings[0]?.links).toEqual(SAID);
    expect(withLinks([]).windings[0]?.links).toEqual([{ side: LEFT_OUT, way: LEFT_OUT, sleeve: LEFT_OUT }]);
    expect(withLinks([{ side: 'left', way: 'riser', sleeve: null }]).windings[0]?.links).toHaveLength(1);
  });

  it('should know no lead of a floating screen, and leave that of a bonded one open', () => {
    const screen = { kind: 'screen', thickness: '0.05 mm' } as const;
    const file = { ...plainFile(), layers: [screen, { ...screen, circuit: 'pri' }] };
    expect(read(file).layers).toMatchObject([{ lead: null }, { lead: LEFT_OUT }]);
  });

  it('should lay an inset beside the block at the same side', () => {
    const margin = { width: '3 mm', filled: true };
    const tape = {
      kind: 'tape',
      plyThickness: '0.06 mm',
      plies: 1,
      inset: { left: '2.9 mm', right: '2.9 mm' },
    } as const;
    expect(
      read({ ...plainFile(), layers: [{ ...tape, margins: { left: margin, right: margin } }] }).layers,
    ).toHaveLength(1);
    const wide = {
      ...tape,
      inset: { left: '3 mm', right: '3 mm' },
      margins: { left: margin, right: margin },
    };
    const answer = readDesign({ ...plainFile(), layers: [wide] }, KNOWN);
    expect(answer.kind === 'bad' && answer.faults[0]?.field).toMatch(/^layers\[0\]\.(margins|inset)/);
  });

  it('should leave the file as it was', () => {
    const file = fullFile();
    read(file);
    expect(file).toEqual(fullFile());
  });

  it('should answer any change of one field with a design or with faults that name a field', () => {
    const odd = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom('unknown', '3 mm', '-1 V', NaN, Infinity, undefined, '__proto__'),
    );
    const places = leavesOf(fullFile());
    fc.assert(
      fc.property(fc.constantFrom(...places), odd, (place, value) => {
        const answer = readDesign(replaced(fullFile(), place, value), KNOWN);
        if (answer.kind === 'bad') {
          expect(answer.faults.length).toBeGreaterThan(0);
          expect(answer.faults.length).toBeLessThanOrEqual(20);
          for (const fault of answer.faults)
            expect(fault.found.length + fault.field.length).toBeLessThanOrEqual(240);
        } else expect(JSON.stringify(answer.design)).not.toContain('"value":null');
      }),
      { seed: 7, numRuns: 1500 },
    );
  });
});

type Place = readonly (string | number)[];

const leavesOf = (value: unknown, above: Place = []): readonly Place[] =>
  typeof value === 'object' && value !== null
    ? [
        above,
        ...Object.keys(value).flatMap((key) =>
          leavesOf((value as Record<string, unknown>)[key], [...above, key]),
        ),
      ]
    : [above];

function replaced(node: unknown, [key, ...rest]: Place, value: unknown): unknown {
  if (key === undefined) return value;
  const copy = Array.isArray(node) ? [...node] : { ...(node as object) };
  return Object.assign(copy, {
    [key]: replaced((node as Record<string | number, unknown>)[key], rest, value),
  });
}

import { describe, expect, it } from 'vitest';

import { workingVoltages } from '#stress/voltages/working-voltage.ts';

import { benchDesign } from '#test/stress/bench-design.ts';

const circuits = (...roles: readonly [string, string][]) => roles.map(([id, role]) => ({ id, role }));
const said = (rms: string | null, peak: string | null, more: object = {}) => ({
  between: ['pri', 'out'],
  ...(rms === null ? {} : { rms }),
  ...(peak === null ? {} : { peak }),
  frequency: '65 kHz',
  ...more,
});

describe('workingVoltages of what the file says', () => {
  it('should take what is measured, whichever way round it names the pair, and the floor for what is not given', () => {
    const [pair] = workingVoltages(
      benchDesign({ workingVoltages: [said('281 V', null, { between: ['out', 'pri'], basis: 'measured' })] }),
    );
    expect(pair).toMatchObject({ between: ['pri', 'out'], rms: 281, frequency: 65_000, basis: 'floor' });
    expect(pair?.peak).toBeCloseTo(281 * Math.SQRT2, 6);
    expect(pair?.from).toEqual({ rms: 'measured', peak: 'floor', frequency: 'measured' });
  });

  it('should raise a stated figure under the mains to it and say so', () => {
    const [pair] = workingVoltages(benchDesign({ workingVoltages: [said('100 V', '200 V')] }));
    expect(pair?.rms).toBe(240);
    expect(pair?.peak).toBeCloseTo(339.411, 3);
    expect(pair?.basis).toBe('stated');
    expect(pair?.notes.map(({ kind }) => kind)).toEqual(['raised-to-mains', 'raised-to-mains']);
  });

  it('should take the floor where nothing is said, of an ac and of a dc supply', () => {
    const [ac] = workingVoltages(benchDesign());
    expect(ac).toMatchObject({ rms: 240, frequency: 50, basis: 'floor' });
    const [dc] = workingVoltages(benchDesign({ supply: { kind: 'dc', voltage: '400 V' } }));
    expect(dc).toMatchObject({ rms: 400, peak: 400, frequency: 0, basis: 'floor' });
  });

  it('should hold a missing peak at no less than a sine of the given rms', () => {
    const [pair] = workingVoltages(benchDesign({ workingVoltages: [said('300 V', null)] }));
    expect(pair?.peak).toBeCloseTo(424.264, 3);
    expect(pair).toMatchObject({ basis: 'floor', from: { rms: 'stated', peak: 'floor' } });
  });

  it('should hold no peak under its own rms', () => {
    const [pair] = workingVoltages(benchDesign({ workingVoltages: [said('400 V', '350 V')] }));
    expect(pair?.peak).toBe(400);
    expect(pair?.notes).toEqual([{ kind: 'peak-raised-to-rms', from: 350, to: 400 }]);
  });

  it('should say that a frequency is missing', () => {
    const [pair] = workingVoltages(
      benchDesign({ workingVoltages: [{ between: ['pri', 'out'], rms: '250 V', peak: '500 V' }] }),
    );
    expect(pair?.notes).toEqual([{ kind: 'frequency-not-given', entry: 0, counted: 50 }]);
  });

  it('should ask of isolated to touchable what stands between mains and touchable', () => {
    const [, , second] = workingVoltages(
      benchDesign({
        circuits: circuits(['pri', 'mains'], ['mid', 'isolated'], ['out', 'touchable']),
        workingVoltages: [said('281 V', '530 V'), said('20 V', '30 V', { between: ['mid', 'out'] })],
      }),
    );
    expect(second).toMatchObject({ between: ['mid', 'out'], rms: 281, peak: 530 });
    expect(second?.notes.map(({ kind }) => kind)).toEqual(['double-barrier', 'double-barrier']);
  });

  it('should leave a pair on one side of the barrier as it is stated', () => {
    const results = workingVoltages(
      benchDesign({
        circuits: circuits(['pri', 'mains'], ['aux', 'mains'], ['out', 'touchable']),
        workingVoltages: [said('60 V', '90 V', { between: ['pri', 'aux'] })],
      }),
    );
    expect(results.map(({ between }) => between.join('-'))).toEqual(['pri-aux', 'pri-out', 'aux-out']);
    expect(results[0]).toMatchObject({ rms: 60, peak: 90, notes: [] });
  });
});

describe('workingVoltages of a file that also has a converter', () => {
  const CONVERTER = {
    mode: 'continuous',
    switchingFrequency: '65 kHz',
    reflectedVoltage: '100 V',
    clampOvershoot: '60 V',
    rail: { kind: 'mains' },
    outputs: [{ circuit: 'out', voltage: '12 V' }],
  };
  const supply = { kind: 'ac', voltage: '240 V', lowest: '100 V' };
  const pair = (rms: string, basis: string, best: readonly string[] = []) => {
    const given = [said(rms, '560 V', { basis })];
    const design = benchDesign({ supply, converter: CONVERTER, workingVoltages: given });
    return workingVoltages(design, (field) => best.includes(field))[0]!;
  };

  it('should not believe a stated figure lower than the computed one, unless it is set at its best', () => {
    const found = pair('250 V', 'stated');
    expect(found.rms).toBe(found.computed?.rms.value);
    expect(found.rms).toBeGreaterThan(277);
    expect(found).toMatchObject({
      from: { rms: 'computed', peak: 'stated' },
      within: { rms: 0.05, peak: 0 },
    });
    expect(found.open).toEqual([
      { field: 'workingVoltages[0].rms', counted: { as: 'computed', quantity: 'rms', value: found.rms } },
    ]);
    expect(found.notes).toContainEqual({
      kind: 'stated-below-computed',
      quantity: 'rms',
      given: 250,
      computed: found.rms,
    });
    expect(pair('250 V', 'stated', ['workingVoltages[0].rms'])).toMatchObject({ rms: 250, open: [] });
  });

  it('should believe a stated figure above the computed one, and what is measured whatever is computed', () => {
    expect(pair('330 V', 'stated')).toMatchObject({ rms: 330, notes: [], within: { rms: 0 } });
    expect(pair('241 V', 'measured')).toMatchObject({ rms: 241, open: [] });
  });

  it('should remark that a measured figure lies more than a tenth off the computed one, and not less', () => {
    const kinds = (rms: string) =>
      pair(rms, 'measured').notes.flatMap((note) =>
        'quantity' in note && note.quantity === 'rms' ? [note.kind] : [],
      );
    expect(kinds('241 V')).toContain('measured-unlike-computed');
    expect(kinds('281 V')).not.toContain('measured-unlike-computed');
    expect(kinds('350 V')).toContain('measured-unlike-computed');
  });
});

describe('workingVoltages of published reports', () => {
  it.each([
    // measured in test reports of adapters: IEC 60950-1 (two), IEC 62368-1; peak, rms, Hz (65 kHz where it prints none)
    ['T1', 530, 281, 65_000],
    ['T2', 428, 250, 65_000],
    ['T3', 500, 240, 64_100],
  ])('should take what %s measured as it stands, nothing raised at 240 V', (_, peak, rms, frequency) => {
    const measured = said(`${rms} V`, `${peak} V`, { basis: 'measured', frequency });
    const [pair] = workingVoltages(benchDesign({ workingVoltages: [measured] }));
    expect(pair).toMatchObject({ rms, peak, frequency, basis: 'measured', notes: [] });
    expect(pair?.within).toEqual({ rms: 0, peak: 0 });
  });
});

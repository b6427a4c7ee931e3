// What lowers no grade and is said all the same, and what the verdict leaves out.

import { describe, expect, it } from 'vitest';
import type { Changes } from '#test/designs.ts';
import { MARGINS, PLIES, toldWith, verdictWith } from '#test/judge/margin-build.ts';

const remarks = (changes: Changes) => toldWith(changes).remarks;
const kinds = (changes: Changes) => remarks(changes).map(({ kind }) => kind);
const has = (kind: string, changes: Changes) => kinds(changes).includes(kind);

const empty = { left: { width: '3 mm' }, right: { width: '3 mm' } };
const fixed = (of: Changes): Changes => ({
  'windings[0].anchored': true,
  evidence: [{ id: 'E1', kind: 'photo', says: 'end turns taped down', fields: ['windings[0].anchored'] }],
  ...of,
});
const covered = {
  kind: 'layer-insulated',
  conductor: '0.3 mm',
  overallDiameter: '0.5 mm',
  insulationLayers: 3,
};
const crossing = (more: Changes = {}): Changes => ({
  'windings[1].wire': covered,
  'windings[1].leads': {
    start: { at: 'left', exit: 'right', way: 'slot', sleeve: null, ...more },
    finish: { at: 'right', exit: 'right', way: 'slot', sleeve: null },
  },
});
const rms = (value: string): Changes => ({ 'workingVoltages[0].rms': value });

describe('remarks', () => {
  it('should be none on a build that leaves nothing to say but what lies outermost', () => {
    expect(kinds({})).toEqual([]);
  });

  it('should tell end turns that are not held, and which end, although the build meets', () => {
    const right = { 'layers[0].margins.right.filled': false };
    const found = remarks(right).filter(({ kind }) => kind === 'end-turns');
    expect(found.map(({ says }) => says)).toEqual([expect.stringContaining('the right end')]);
    expect(remarks({ 'layers[0].margins': empty })[0]!.says).toContain('both ends');
    expect(has('end-turns', fixed({ 'layers[0].margins': empty }))).toBe(false);
    // without evidence an anchor earns nothing
    expect(has('end-turns', { 'layers[0].margins': empty, 'windings[0].anchored': true })).toBe(true);
    expect(has('end-turns', { 'layers[0].margins': empty, 'windings[0].wire': covered })).toBe(false);
  });

  it('should ask back where the mains is lower than any', () => {
    expect(has('low-supply', { 'supply.voltage': '24 V' })).toBe(true);
    expect(has('low-supply', { 'supply.voltage': '100 V' })).toBe(false);
    expect(has('low-supply', { supply: { kind: 'dc', voltage: '24 V' } })).toBe(false);
  });

  it('should judge heat by the lowest class where none is known, and tell what has no name', () => {
    const nameless = { ...PLIES, material: undefined };
    const left = (changes: Changes) => toldWith(changes).notJudged;
    expect(left({ 'former.material': 'unknown', 'layers[1]': nameless })).not.toContain('heat');
    const former = left({ 'layers[1]': nameless });
    expect(former).not.toContain('heat');
    expect(former).toContain('class of materials that are not named');
    expect(left({}).join()).not.toContain('materials');
  });

  it('should tell a row that is full to the last turn', () => {
    const full = { 'layers[0].margins.left.width': '4.4 mm' };
    expect(has('fit-doubtful', full)).toBe(true);
    expect(has('fit-doubtful', { 'layers[0].margins.left.width': '4.39 mm' })).toBe(false);
  });

  it('should tell covered wire that crosses another at its exit', () => {
    expect(has('covered-wire-crossing', crossing())).toBe(true);
    expect(has('covered-wire-crossing', crossing({ exit: 'left' }))).toBe(false);
    expect(has('covered-wire-crossing', crossing({ crossTape: 1 }))).toBe(false);
    const plain = { kind: 'enamelled', conductor: '0.5 mm', grade: 1 };
    expect(has('covered-wire-crossing', { ...crossing(), 'windings[1].wire': plain })).toBe(false);
  });

  it('should tell a distance that holds by interpolating the table only', () => {
    // 281 V asks 5.8 mm, the next row 6.4 mm; the build has 6.18 mm
    expect(remarks(rms('281 V')).find(({ kind }) => kind === 'interpolated')!.says).toContain('6.4 mm');
    // 250 V is a row; at 310 V the build falls short
    expect(has('interpolated', rms('250 V'))).toBe(false);
    expect(has('interpolated', rms('310 V'))).toBe(false);
    const wider = { 'layers[0].margins.left.width': '3.3 mm', 'layers[0].margins.right.width': '3.3 mm' };
    expect(has('interpolated', { ...rms('281 V'), ...wider })).toBe(false);
  });

  it('should ask of a distance what the next row asks in its own group', () => {
    // along group I 281 V asks 3.0 mm, the next row 3.2 mm
    const wide = { left: { width: '4 mm', filled: true }, right: { width: '4 mm', filled: true } };
    const pins = (creepage: string): Changes => ({
      ...rms('281 V'),
      'layers[0].margins.left.width': '3.5 mm',
      'layers[0].margins.right.width': '3.5 mm',
      'layers[2].margins': wide,
      'layers[2].turns': 6,
      outside: [{ between: ['pri', 'out'], what: 'pins', creepage, clearance: '8 mm', materialGroup: 'I' }],
    });
    expect(has('interpolated', pins('3.3 mm'))).toBe(false);
    expect(remarks(pins('3.1 mm')).find(({ kind }) => kind === 'interpolated')!.says).toContain('3.2 mm');
  });

  it('should tell a distance that holds by the climb along the tape edges only', () => {
    // 2.45 + 0.18 + 2.45 = 5.08 mm, of which 0.18 are climbed
    const margins = (width: string) => ({ left: { width, filled: true }, right: { width, filled: true } });
    const both = (width: string) => ({
      'layers[0].margins': margins(width),
      'layers[2].margins': margins(width),
    });
    expect(remarks(both('2.45 mm'))).toContainEqual(
      expect.objectContaining({ kind: 'meets-by-climb', says: expect.stringContaining('0.18 mm') }),
    );
    expect(has('meets-by-climb', both('2.5 mm'))).toBe(false);
    expect(has('meets-by-climb', both('2.4 mm'))).toBe(false);
  });

  it('should not tell the way up a divider without any tape beside it as one along tape edges', () => {
    const chambers = {
      former: {
        ...{ height: '5 mm', wall: '0.8 mm', flange: '0.8 mm', material: 'phenolic' },
        ...{ chambers: [{ width: '8 mm' }, { width: '8 mm' }], dividers: ['0.8 mm'] },
      },
      layers: [
        { kind: 'winding', winding: 'P', turns: 20 },
        { kind: 'winding', winding: 'S', turns: 8, chamber: 1 },
      ],
    };
    const { pairs, remarks } = verdictWith(chambers);
    expect(pairs[0]?.verdict).toBe('meets');
    expect(remarks.map(({ kind }) => kind)).not.toContain('meets-by-climb');
  });

  it('should tell an earthed screen between mains and output', () => {
    const screen = (circuit: string | undefined): Changes => ({
      circuits: [
        { id: 'pri', role: 'mains' },
        { id: 'out', role: 'touchable' },
        { id: 'pe', role: 'earth' },
      ],
      layers: [
        { kind: 'winding', winding: 'P', turns: 20, margins: MARGINS },
        PLIES,
        {
          kind: 'screen',
          thickness: '0.05 mm',
          margins: MARGINS,
          ...(circuit && { circuit, lead: 'not-judged' }),
        },
        PLIES,
        { kind: 'winding', winding: 'S', turns: 8, margins: MARGINS },
      ],
    });
    expect(has('earthed-screen', screen('pe'))).toBe(true);
    expect(has('earthed-screen', screen('pri'))).toBe(false);
    expect(has('earthed-screen', screen(undefined))).toBe(false);
  });

  it('should tell a mains winding that lies outermost', () => {
    const [inner, outer] = ['S', 'P'].map((winding) => ({
      kind: 'winding',
      winding,
      turns: 8,
      margins: MARGINS,
    }));
    expect(remarks({ layers: [inner, PLIES, outer] }).map(({ kind }) => kind)).toEqual(['mains-outermost']);
    expect(has('mains-outermost', { layers: [inner, PLIES, outer, PLIES] })).toBe(true);
    expect(has('mains-outermost', { layers: [outer, PLIES, inner] })).toBe(false);
  });

  it('should lower no grade', () => {
    for (const changes of [crossing(), rms('281 V'), { 'layers[0].margins.left.width': '4.4 mm' }]) {
      expect(verdictWith(changes).verdict).toBe('meets');
      expect(kinds(changes)).not.toEqual([]);
    }
  });
});

describe('what is not judged', () => {
  const notJudged = (changes: Changes) => toldWith(changes).notJudged;
  const lead = { at: 'left', exit: 'left', way: 'slot', sleeve: null };

  it('should be the pins, the leads left out, the parts, and the class of the enamel or heat', () => {
    expect(notJudged({})).toEqual([
      'pins and wiring outside',
      'leads of P',
      'leads of S',
      'parts near the coil',
      'class of the enamel',
    ]);
    expect(notJudged({ 'surroundings.hottestInsulation': 'unknown' }).at(-1)).toBe('heat');
  });

  it('should be a stripped end of which nothing is said', () => {
    const leads = (bareFrom: unknown) => ({
      'windings[0].leads': { start: { ...lead, bareFrom }, finish: { ...lead, bareFrom: '4 mm' } },
    });
    expect(notJudged(leads(undefined))).toContain('stripped end of P start');
    expect(notJudged(leads('4 mm'))).not.toContain('stripped end of P start');
  });

  it('should be no parts where the file tells them', () => {
    expect(notJudged({ parts: [{ id: 'band', bond: 'floating' }] })).not.toContain('parts near the coil');
  });
});

describe('assumptions', () => {
  const fields = (kind: string, changes: Changes) =>
    verdictWith(changes)
      .assumptions.filter((one) => one.kind === kind)
      .map(({ field }) => field);

  it('should list the defaults that shape the verdict, and no field that the file states', () => {
    expect(fields('default', {})).toEqual([
      'supply.tolerance',
      'supply.frequency',
      'supply.overvoltageCategory',
      'surroundings.pollutionDegree',
      'surroundings.altitude',
      'surroundings.impregnation',
    ]);
    expect(fields('default', { 'surroundings.pollutionDegree': 2 })).not.toContain(
      'surroundings.pollutionDegree',
    );
  });

  it('should list the house rules for the strength of film and moulding, and a rating that is left out', () => {
    const own = { 'layers[1].plyWithstand': undefined };
    expect(fields('house-rule', own)).toEqual(['former.material', 'layers[1].plyWithstand']);
    const bridges = [{ id: 'C1', kind: 'capacitor', between: ['pri', 'out'], safetyClass: 'Y1' }];
    expect(fields('default', { bridges })).toContain('bridges[0].rated');
    expect(fields('unknown', { bridges })).toEqual(['bridges[0].capacitance']);
    const temperature = { method: 'unknown', condition: 'normal' };
    expect(fields('unknown', { 'surroundings.temperature': temperature })).toEqual([
      'surroundings.temperature.method',
    ]);
  });
});

// Faulty files: for each the field, what was found, what was expected.

import { describe, expect, it } from 'vitest';
import type { BadInput } from '#model/faults/bad-input.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import { readDesign } from '#model/read/read-design.ts';
import { fullFile, KNOWN, plainFile } from './sample-files.ts';

const faultsOf = (file: unknown): readonly BadInput[] => {
  const answer = readDesign(file, KNOWN);
  return answer.kind === 'bad' ? answer.faults : [];
};

/** The plain (or full) file with one field changed, `undefined` taking it out. */
const spoiled = (path: string, value: unknown, file = plainFile()) => faultsOf(editDesign(file, path, value));

const UNKNOWN_SENTENCE = 'measure it, give an interval { value, plusMinus }, or choose';

describe('a bad design file', () => {
  it.each([
    ['former.wall', '0.8 kg', 'former.wall', '"0.8 kg"', 'a length from 0 to 1 m'],
    ['former.chambers[0].width', '-12 mm', 'former.chambers[0].width', '"-12 mm"', 'a length above 0'],
    ['former.chambers[0].width', 0, 'former.chambers[0].width', '0', 'a length above 0'],
    ['former.chambers', [], 'former.chambers', 'a list of 0', 'a list of 1 to 16 chambers'],
    ['former.height', Infinity, 'former.height', 'a number too large to hold', 'not finite'],
    ['former.height', NaN, 'former.height', 'NaN', 'not finite'],
    [
      'layers[0].turns',
      Infinity,
      'layers[0].turns',
      'a number too large to hold',
      'a whole number from 1 to 20000',
    ],
    ['layers[0].turns', 0, 'layers[0].turns', '0', 'a whole number from 1 to 20000'],
    ['layers[0].turns', 1.5, 'layers[0].turns', '1.5', 'a whole number from 1 to 20000'],
    ['layers[0].turns', '60', 'layers[0].turns', '"60"', 'a whole number'],
    ['layers[1].plies', 501, 'layers[1].plies', '501', 'a whole number from 1 to 500'],
    ['layers[0].strands', 65, 'layers[0].strands', '65', 'from 1 to 64'],
    ['layers[0].kind', 'paper', 'layers[0].kind', '"paper"', '"winding", "tape" or "screen"'],
    ['layers[0].winding', 'X', 'layers[0].winding', '"X"', 'the id of a winding: P, S'],
    ['layers[0].chamber', 1, 'layers[0].chamber', '1', 'a chamber from 0 to 0'],
    ['layers[1].material', 'parchment', 'layers[1].material', '"parchment"', 'the id of a tape'],
    ['layers[1].material', undefined, 'layers[1].plyThickness', 'nothing', 'a material or a ply thickness'],
    [
      'layers[1]',
      { kind: 'tape', plies: 1, plyThickness: '0.06 mm', film: '0.5 mm' },
      'layers[1].film',
      '"0.5 mm"',
      "no more than the whole ply's thickness, 0.06 mm",
    ],
    ['layers[0].margins.left.material', 'mud', 'layers[0].margins.left.material', '"mud"', 'tape or former'],
    [
      'layers[0].margins.left.width',
      '9 mm',
      'layers[0].margins',
      '"12 mm in all"',
      "the chamber's width of 12 mm",
    ],
    ['layers[1].inset', { left: '6 mm', right: '6 mm' }, 'layers[1].inset', '"12 mm in all"', 'less than'],
    ['layers[0].extent', { from: '3 mm', to: '3 mm' }, 'layers[0].extent.to', '"3 mm"', 'more than'],
    ['layers[0].extent', { from: '3 mm', to: '12.1 mm' }, 'layers[0].extent.to', '"12.1 mm"', 'no more than'],
    ['former.material', 'clay', 'former.material', '"clay"', 'phenolic, pbt'],
    ['former.dividers', ['1 mm'], 'former.dividers', 'a list of 1', 'one fewer than chambers: 0'],
    ['rules', 'house-book', 'rules', '"house-book"', 'the id of a rule book: iec-62368-1'],
    ['core', { bond: 'chassis' }, 'core.bond', '"chassis"', 'the id of a circuit, or "floating"'],
    ['windings[0].circuit', 'aux', 'windings[0].circuit', '"aux"', 'the id of a circuit: pri, out'],
    [
      'windings[0].wire',
      { kind: 'bare' },
      'windings[0].wire.conductor',
      'nothing',
      'a conductor diameter or',
    ],
    [
      'windings[0].wire.overallDiameter',
      '0.1 mm',
      'windings[0].wire.overallDiameter',
      '"0.1 mm"',
      'no less than',
    ],
    ['windings[0].wire.grade', 4, 'windings[0].wire.grade', '4', 'from 1 to 3'],
    [
      'windings[0].leads',
      { start: { at: 'middle' } },
      'windings[0].leads.start.at',
      '"middle"',
      '"left", "right"',
    ],
    [
      'windings[0].leads',
      { start: { sleeve: { material: 'rag' } } },
      'windings[0].leads.start.sleeve.material',
      '"rag"',
      'ptfe',
    ],
    [
      'windings[0].leads',
      { start: { way: 'core', sleeve: {} } },
      'windings[0].leads.start.way',
      '"core"',
      '"slot", "riser"',
    ],
    ['windings[0].links', [{ side: 'left' }], 'windings[0].links', 'a list of 1', 'of which there are 0'],
    ['windings[1].id', 'P', 'windings[1].id', '"P"', 'an id that no other entry has'],
    ['circuits[0].id', 'core', 'circuits[0].id', '"core"', 'a meaning of its own'],
    ['circuits[0].id', 'toString', 'circuits[0].id', '"toString"', 'a meaning of its own'],
    ['circuits[0].id', '', 'circuits[0].id', '""', '1 to 64 visible characters'],
    ['parts', [{ id: 'pri' }], 'parts[0].id', '"pri"', 'an id that no other entry has'],
    ['parts', [{ id: 'clip', touches: ['clip'] }], 'parts[0].touches[0]', '"clip"', 'other part'],
    [
      'outside',
      [{ between: ['pri', 'box'] }],
      'outside[0].between[1]',
      '"box"',
      'circuit, screen, part or the core',
    ],
    ['outside', [{ between: ['pri', 'pri'] }], 'outside[0].between[1]', '"pri"', 'another id than the first'],
    ['outside', [{ between: ['pri'] }], 'outside[0].between', 'a list of 1', 'two different ids'],
    [
      'workingVoltages',
      [{ between: ['pri', 'x'], rms: 9 }],
      'workingVoltages[0].between[1]',
      '"x"',
      'the id of a circuit',
    ],
    [
      'workingVoltages',
      [{ between: ['pri', 'out'] }],
      'workingVoltages[0].rms',
      'nothing',
      'rms or peak or both',
    ],
    [
      'bridges',
      [{ id: 'C', kind: 'capacitor', between: ['pri', 'core'] }],
      'bridges[0].between[1]',
      '"core"',
      'the id of a circuit',
    ],
    ['supply.tolerance', 10, 'supply.tolerance', '10', '0.1 being 10 %'],
    ['supply.kind', undefined, 'supply.kind', 'nothing', 'one of "ac", "dc"'],
    ['colour', 'red', 'colour', '"red"', 'one of the fields format, title'],
    ['layers[0].turn', 3, 'layers[0].turn', '3', 'one of the fields kind, chamber'],
    ['former.wall', { plies: 0 }, 'former.wall.plies', '0', 'a whole number from 1 to 500'],
    [
      'former.wall',
      { value: '1 mm', plusMinus: '2 mm' },
      'former.wall.plusMinus',
      '"2 mm"',
      'not above the value',
    ],
    [
      'layers[1].plyWithstand',
      { value: '4 kV', shape: 'ac' },
      'layers[1].plyWithstand.shape',
      '"ac"',
      '"rms", "dc"',
    ],
    ['format', 'layerwright-design/2', 'format', '"layerwright-design/2"', 'a newer version'],
  ])('should be told: %s = %j', (path, value, field, found, expected) => {
    const [fault] = spoiled(path, value);
    expect(fault).toMatchObject({ field, found, expected: expect.stringContaining(expected) });
    expect(fault?.says).toContain(field);
    expect(fault?.says).toContain(fault?.expected);
  });

  it.each([
    ['converter.outputs[0].circuit', 'none'],
    ['converter.variants[0].outputs[0].circuit', 'none'],
    ['converter.duty', 1.2],
    ['converter.reflectedVoltage', '-90 V'],
    ['converter.switchingFrequency', '0 Hz'],
    ['layers[3].circuit', 'none'],
    ['layers[3].overlap.material', 'none'],
    ['core.wrap.material', 'none'],
    ['bridges[1].id', 'C1'],
    ['bridges[1].inSeries', 0],
    ['evidence[0].kind', 'hearsay'],
    ['surroundings.hottestInsulation', '401 degC'],
    ['surroundings.altitude', '10001 m'],
    ['surroundings.temperature.method', 'by hand'],
    ['converter.rail.kind', 'battery'],
    ['converter.variants[0].turns.X', 4],
    ['converter.variants[0].turns.P', 0],
    ['circuits[1].means', 'nurse'],
    ['former.tube.shape', 'oval'],
    ['outside[0].working.basis', 'guessed'],
    ['outside[0].working.between', ['pri', 'out']],
    ['evidence[1].measured.photo', 'e2'],
    ['evidence[1].measured.kind', 'weight'],
    ['evidence[1].measured.points[0]', [1, 2, 3]],
    ['evidence[1].measured.value', '3 V'],
    ['evidence[0].picture.width', 0],
    ['unopened', 'yes'],
  ])('should be told of the full file: %s = %j', (path, value) => {
    expect(spoiled(path, value, fullFile()).map(({ field }) => field)).toContain(path);
  });

  it.each([
    [
      'two voltages of one pair',
      'workingVoltages',
      [
        { between: ['pri', 'out'], rms: 250 },
        { between: ['out', 'pri'], rms: 260 },
      ],
      'workingVoltages[1].between',
      '"out and pri"',
    ],
    ['a lowest voltage above the highest', 'supply.lowest', '250 V', 'supply.lowest', '"250 V"'],
    ['edges turned up past the rim', 'layers[1].turnUp', '5.1 mm', 'layers[1].turnUp', '"5.1 mm"'],
    [
      'a ply that stands more than matter does',
      'layers[1].plyWithstand',
      '31 kV',
      'layers[1].plyWithstand',
      '"31 kV"',
    ],
    [
      'a sleeve that does',
      'windings[0].leads.start.sleeve',
      { wall: '0.01 mm', withstand: '6 kV' },
      'windings[0].leads.start.sleeve.withstand',
      '"6 kV"',
    ],
    [
      'a block wound of tape whose turn does',
      'layers[0].margins.left',
      { width: '3 mm', filled: true, material: 'margin-tape', withstand: '31 kV' },
      'layers[0].margins.left.withstand',
      '"31 kV"',
    ],
    [
      'a cover that does',
      'windings[1].wire',
      { kind: 'layer-insulated', conductor: '0.5 mm', overallDiameter: '0.51 mm', withstand: '6 kV' },
      'windings[1].wire.withstand',
      '"6 kV"',
    ],
    [
      'a cover without thickness',
      'windings[1].wire',
      { kind: 'layer-insulated', conductor: '0.5 mm', overallDiameter: '0.5 mm' },
      'windings[1].wire.overallDiameter',
      '"0.5 mm"',
    ],
    [
      'a film thicker than the ply that the table has',
      'layers[1]',
      { kind: 'tape', material: 'polyester-tape-25', plies: 1, film: '0.07 mm' },
      'layers[1].film',
      '"0.07 mm"',
    ],
    [
      'an approved optocoupler with nothing inside',
      'bridges[2].throughInsulation',
      0,
      'bridges[2].throughInsulation',
      '"0 mm"',
    ],
    ['evidence without words', 'evidence[0].says', '  ', 'evidence[0].says', '"  "'],
    ['evidence without any', 'evidence[0].says', undefined, 'evidence[0].says', 'nothing'],
    [
      'a place without a voltage',
      'outside[0].working',
      { frequency: '65 kHz' },
      'outside[0].working.rms',
      'nothing',
    ],
    [
      'windings side by side that overlap',
      'layers[5].extent.from',
      '4 mm',
      'layers[5].beside',
      '"from 4 mm to 12 mm"',
    ],
    [
      'one beside another whose place is unknown',
      'layers[4].margins.left.width',
      'unknown',
      'layers[5].beside',
      'true',
    ],
    [
      'a winding beside a screen',
      'layers[4]',
      { kind: 'screen', thickness: '0.05 mm' },
      'layers[5].beside',
      'true',
    ],
  ])('should be refused for %s', (_, path, value, field, found) => {
    expect(spoiled(path, value, fullFile())).toContainEqual(expect.objectContaining({ field, found }));
  });

  it('should lie clear of its neighbour by touching it', () => {
    expect(spoiled('layers[5].extent.from', '5 mm', fullFile())).toEqual([]);
  });

  it.each([
    'former.height',
    'former.chambers[0].width',
    'former.dividers[0]',
    'surroundings.altitude',
    'surroundings.pollutionDegree',
    'supply.overvoltageCategory',
    'supply.voltage',
    'windings[0].wire.overallDiameter',
    'windings[0].leads.start.apart',
    'layers[1].film',
    'supply.transient',
    'former.tube.width',
    'layers[1].turnUp',
    'layers[1].inset.left',
    'layers[3].thickness',
    'outside[0].creepage',
    'bridges[0].rated',
  ])('should hear that %s cannot be left unknown', (path) => {
    const [fault] = spoiled(path, 'unknown', fullFile());
    expect(fault).toMatchObject({
      field: path,
      found: '"unknown"',
      expected: expect.stringContaining(UNKNOWN_SENTENCE),
    });
  });

  it.each([
    'former.wall',
    'former.flange',
    'former.material',
    'core.bond',
    'core.outerGap',
    'surroundings.hottestInsulation',
    'windings[0].wire.kind',
    'windings[0].wire.grade',
    'windings[0].wire.conductor',
    'windings[1].wire.withstand',
    'layers[0].turns',
    'layers[1].plyThickness',
    'former.wall.plyThickness',
    'supply.lowest',
    'surroundings.temperature.method',
    'converter.mode',
    'converter.rail',
    'windings[0].leads',
    'windings[0].leads.start',
    'windings[0].leads.start.at',
    'windings[0].leads.start.exit',
    'windings[0].leads.start.way',
    'windings[0].leads.start.sleeve',
    'windings[0].leads.start.sleeve.wall',
    'windings[0].leads.start.sleeve.into',
    'windings[0].leads.start.sleeve.withstand',
    'windings[0].leads.start.bareFrom',
    'windings[0].links',
    'windings[0].links[0].side',
    'windings[1].wire.approval',
    'windings[1].wire.insulationLayers',
    'layers[0].margins.left.width',
    'layers[0].margins.left.withstand',
    'layers[1].plies',
    'layers[1].plyWithstand',
    'layers[3].lead',
    'outside[0].materialGroup',
    'bridges[0].safetyClass',
    'bridges[2].approval',
  ])('should not be one for saying that %s is unknown', (path) => {
    expect(spoiled(path, 'unknown', fullFile())).toEqual([]);
  });

  it.each(['format', 'title', 'origin', 'rules', 'supply', 'circuits', 'former', 'windings', 'layers'])(
    'should be told that %s is missing',
    (field) => {
      const file = Object.fromEntries(Object.entries(plainFile()).filter(([name]) => name !== field));
      expect(faultsOf(file)).toMatchObject([{ field, found: 'nothing' }]);
    },
  );

  it('should hear of a margin whose interval could close the chamber', () => {
    const width = { value: '8.9 mm', plusMinus: '0.1 mm' };
    expect(spoiled('layers[0].margins.left.width', '8.9 mm')).toEqual([]);
    expect(spoiled('layers[0].margins.left.width', width)).toMatchObject([{ field: 'layers[0].margins' }]);
    const narrow = editDesign(plainFile(), 'layers[0].margins.left.width', '8.9 mm');
    const chamber = { value: '12 mm', plusMinus: '0.1 mm' };
    expect(spoiled('former.chambers[0].width', chamber, narrow)).toMatchObject([
      { field: 'layers[0].margins' },
    ]);
  });

  it('should be told all its faults, up to twenty', () => {
    const two = editDesign(editDesign(plainFile(), 'former.height', '3 V'), 'layers[2].turns', 0);
    expect(faultsOf(two).map(({ field }) => field)).toEqual(['former.height', 'layers[2].turns']);
    const many = Array.from({ length: 30 }, () => ({ kind: 'winding', winding: 'X', turns: 1 }));
    expect(spoiled('layers', many)).toHaveLength(20);
  });

  it('should be refused for a list without end before its entries are read', () => {
    const layers = Array.from({ length: 10_000 }, () => ({ kind: 'nonsense' }));
    expect(spoiled('layers', layers)).toMatchObject([
      { field: 'layers', found: 'a list of 10000', expected: 'a list of at most 400 entries' },
    ]);
    expect(
      spoiled(
        'circuits',
        Array.from({ length: 33 }, (_, i) => ({ id: `c${i}`, role: 'isolated' })),
      ),
    ).toMatchObject([{ field: 'circuits', found: 'a list of 33' }]);
  });

  it('should be refused for endless texts, shown short', () => {
    const [fault] = spoiled('title', 'x'.repeat(10_000_000));
    expect(fault).toMatchObject({ field: 'title', expected: 'a text of at most 200 characters' });
    expect(fault?.found.length).toBeLessThanOrEqual(120);
    const [key] = faultsOf({ ...plainFile(), ['k'.repeat(100_000)]: 1 });
    expect(key?.field.length).toBeLessThanOrEqual(120);
  });

  it.each(['__proto__', 'constructor', 'prototype'])(
    'should be refused for a key %s, wherever it stands',
    (key) => {
      const hostile: unknown = JSON.parse(`{ "${key}": { "plies": 9 } }`);
      expect(faultsOf({ ...plainFile(), former: hostile })).toMatchObject([
        { field: `former.${key}`, expected: 'no field of this name' },
      ]);
      expect(faultsOf(hostile)).toMatchObject([{ field: key }]);
      expect(({} as Record<string, unknown>)['plies']).toBeUndefined();
    },
  );

  it('should be refused for deep nesting, also for one without end', () => {
    const loop: Record<string, unknown> = {};
    loop['a'] = loop;
    const nested = (levels: number): unknown => JSON.parse(`${'['.repeat(levels)}${']'.repeat(levels)}`);
    expect(spoiled('notes', nested(32))).toMatchObject([
      { field: 'notes', expected: expect.stringContaining('a text') },
    ]);
    expect(spoiled('notes', nested(33))).toMatchObject([{ expected: 'at most 32 levels of nesting' }]);
    const deep: unknown = JSON.parse(`${'['.repeat(5000)}${']'.repeat(5000)}`);
    for (const notes of [loop, deep])
      expect(faultsOf({ ...plainFile(), notes })).toMatchObject([
        { expected: 'at most 32 levels of nesting' },
      ]);
  });

  it.each([null, 3, 'text', [], undefined, true])('should be refused for being %j', (json) => {
    expect(faultsOf(json)).toMatchObject([{ field: '', expected: 'one JSON object, a design file' }]);
  });
});

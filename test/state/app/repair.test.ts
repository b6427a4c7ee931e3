import { describe, expect, it } from 'vitest';
import { jsonAt, keysOfFault, withJsonAt } from '#model/edit/edit-json.ts';
import { fieldPath } from '#model/field-path.ts';
import { firstBuild } from '#state/begin/demos.ts';
import { Repair } from '#state/app/repair.svelte.ts';
import { isSheetSafe, openable, openableJson } from '#state/storage/import-design.ts';
import { stubSession } from '#test/state/session-storage.ts';

const [pri, out, ...circuits] = firstBuild.circuits;
const doubled = { ...firstBuild, circuits: [pri, { ...out, id: pri!.id }, ...circuits] };
const nameless = { ...firstBuild, circuits: [pri, { ...out, id: undefined }, ...circuits] };

describe('openable', () => {
  it('should take only what the command line reads, put the rest right first, and refuse what is no design', () => {
    expect(openable(JSON.stringify(firstBuild)).kind).toBe('build');
    for (const json of [
      doubled,
      nameless,
      { ...firstBuild, circuits: 7 },
      { format: 'layerwright-design/9' },
    ])
      expect(openable(JSON.stringify(json))).toMatchObject({ kind: 'faulty' });
    for (const text of [
      '{',
      '[]',
      'null',
      '{}',
      '{"format":"other/1"}',
      '{"format":"layerwright-design/1","constructor":{}}',
    ])
      expect(openable(text)).toMatchObject({ kind: 'refused', says: expect.stringMatching(/expected/) });
  });

  it('should know what the sheet can show though it has faults', () => {
    expect(isSheetSafe({ ...firstBuild, former: { ...firstBuild.former, height: '3 kg' } })).toBe(true);
    for (const json of [
      doubled,
      nameless,
      null,
      3,
      {},
      { ...firstBuild, layers: [null] },
      { ...firstBuild, windings: undefined },
    ])
      expect(isSheetSafe(json)).toBe(false);
  });
});

describe('Repair', () => {
  stubSession();

  it('should name each fault with what stands there, and be a build once none is left', () => {
    const repair = new Repair(doubled, null);
    const [fault] = repair.faults;
    expect([fault?.field, repair.typed(fault!.field), repair.doc]).toEqual(['circuits[1].id', pri!.id, null]);
    repair.put('circuits[1].id', out!.id);
    expect([repair.faults, repair.doc]).toEqual([[], firstBuild]);
  });

  it('should keep a text a text, read other figures as JSON, and take fields and entries out', () => {
    const repair = new Repair({ ...firstBuild, title: 7, 'odd key': [1, 2], made: '2019' }, null);
    repair.put('title', '"8"');
    repair.put('made', '2020');
    repair.takeOut('["odd key"]');
    expect(repair.doc).toMatchObject({ title: '8', made: '2020' });
    const layers = [...firstBuild.layers, { kind: 'nothing' }];
    const other = new Repair({ ...firstBuild, layers }, null);
    other.takeOut(`layers[${layers.length - 1}]`);
    expect(other.doc?.layers).toHaveLength(firstBuild.layers.length);
  });

  it('should take a whole text, refuse one that is no design, and be there after a reload', () => {
    const repair = new Repair({ ...firstBuild, circuits: {} }, { id: 'b1', version: 3 });
    expect(repair.putText('{')).toMatch(/expected/);
    expect(repair.doc).toBeNull();
    const left = Repair.left()!;
    expect([left.kept, left.faults]).toEqual([{ id: 'b1', version: 3 }, repair.faults]);
    expect(left.putText(JSON.stringify(firstBuild))).toBeNull();
    expect(left.doc).toEqual(firstBuild);
    Repair.forget();
    expect(Repair.left()).toBeNull();
  });

  it('should stand any JSON', () => {
    for (const json of [
      { format: 'layerwright-design/1', layers: { 0: null } },
      { format: 'layerwright-design/x' },
    ]) {
      const repair = new Repair(json, null);
      for (const { field } of openableJson(json).kind === 'faulty' ? repair.faults : []) {
        repair.typed(field);
        repair.put(field, '{"a":[1]}');
        repair.takeOut(field);
      }
      expect(repair.title).toBe('without a title');
    }
  });
});

describe('paths of faults', () => {
  it('should read back whatever path a fault names', () => {
    for (const keys of [
      ['a'],
      ['a', 3, 'b'],
      ['odd key', 'b'],
      ['a', 'quo"te', 0],
      ['a', 'back\\slash]["'],
    ] as const)
      expect(keysOfFault(fieldPath(keys))).toEqual(keys);
    for (const path of ['', 'a..b', 'a[', '["a', 'a b']) expect(keysOfFault(path)).toBeNull();
  });

  it('should change nothing where a path cannot be followed, and share what did not change', () => {
    const json = { a: [1, { b: 2 }], c: { d: 3 } };
    const after = withJsonAt(json, ['a', 1, 'b'], 5) as typeof json;
    expect([jsonAt(after, ['a', 1, 'b']), after.c === json.c, json.a[1]]).toEqual([5, true, { b: 2 }]);
    for (const keys of [
      ['a', 9],
      ['c', 'd', 'e'],
      ['a', 'x'],
    ] as const)
      expect(withJsonAt(json, keys, undefined)).toEqual(json);
  });
});

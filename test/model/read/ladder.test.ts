import { describe, expect, it } from 'vitest';
import { raised, type Step } from '#model/read/ladder.ts';

const steps: readonly Step[] = [
  { from: 'layerwright-design/2', to: 'layerwright-design/3', up: (doc) => ({ ...doc, c: doc['b'] }) },
  { from: 'layerwright-design/1', to: 'layerwright-design/2', up: ({ a, ...doc }) => ({ ...doc, b: a }) },
];

describe('raised', () => {
  it('should climb every step from an old format to the newest', () => {
    const old = { format: 'layerwright-design/1', a: 7 };
    expect(raised(old, steps, 'layerwright-design/3')).toEqual({
      kind: 'raised',
      doc: { format: 'layerwright-design/3', b: 7, c: 7 },
    });
    expect(old).toEqual({ format: 'layerwright-design/1', a: 7 });
  });

  it('should give back the very file that is in the newest format', () => {
    const doc = { format: 'layerwright-design/1' };
    expect(raised(doc)).toEqual({ kind: 'raised', doc });
  });

  it('should say that a file is newer than the program', () => {
    expect(raised({ format: 'layerwright-design/2' })).toMatchObject({
      fault: { field: 'format', found: '"layerwright-design/2"', expected: expect.stringContaining('newer') },
    });
  });

  it.each([{}, { format: 'other/9' }, { format: 1 }, { format: null }, [], 'text', null])(
    'should refuse %j',
    (json) => {
      const answer = raised(json);
      expect(answer.kind).toBe('bad');
      expect(answer.kind === 'bad' && answer.fault.says).not.toContain('newer');
    },
  );
});

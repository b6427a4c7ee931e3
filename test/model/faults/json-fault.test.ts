import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '#model/faults/json-fault.ts';

describe('jsonFault', () => {
  it.each([
    ['{"a":1,}', 7],
    ['{"a" 1}', 5],
    ['[1,2', 4],
    ['{"a":NaN}', 5],
    ['[1 2]', 3],
    ['[1,]', 3],
    ['[1}', 2],
    ['{]', 1],
    ['nul', 0],
    ['{}]', 2],
    ['"\u0001"', 0],
    ["{'a':1}", 1],
    ['[01]', 2],
    ['', 0],
  ])('should find the first sign of %j that cannot stand there', (text, at) => {
    expect(jsonFault(text)).toBe(at);
  });

  it('should find no fault before the end of a text that is JSON', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        expect(jsonFault(text)).toBe(text.length);
      }),
      { seed: 7 },
    );
  });

  it('should point at a character from which no JSON goes on as it does', () => {
    const spoiled = fc.tuple(fc.json(), fc.nat(), fc.constantFrom('}', ',', '?', '"', ':', ']'));
    fc.assert(
      fc.property(spoiled, ([json, place, sign]) => {
        const at = place % (json.length + 1);
        const text = json.slice(0, at) + sign + json.slice(at);
        const isJson = ((): boolean => {
          try {
            return JSON.parse(text) !== undefined;
          } catch {
            return false;
          }
        })();
        expect(jsonFault(text) === text.length || !isJson).toBe(true);
      }),
      { seed: 7, numRuns: 1000 },
    );
  });
});

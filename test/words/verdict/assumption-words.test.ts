import { describe, expect, it } from 'vitest';
import { assumedField, countedWords } from '#words/verdict/assumption-words.ts';
import { greenhouseDesign } from '#test/papers/greenhouse.ts';

const design = greenhouseDesign();
const [from = '', to = ''] = design.circuits.map(({ id }) => id);
const between: readonly [string, string] = [from, to];
const voltage = {
  field: 'workingVoltages',
  between,
  counted: { as: 'floor', quantity: 'rms', value: 240 } as const,
  figure: null,
  kind: 'unknown' as const,
};

describe('assumption words', () => {
  it('should name the pair of a working voltage once, by the names of its circuits', () => {
    const [first, second] = design.circuits.map(({ name }) => name);
    expect(assumedField(design, voltage)).toBe(`working voltage, ${first} to ${second}`);
    expect(countedWords(voltage)).toBe('counted at the least that the mains puts there, 240 V rms');
  });

  it('should say which end of an interval counts', () => {
    const margin = {
      field: 'layers[0].margins.left.width',
      between: null,
      counted: { as: 'worse-end' } as const,
      figure: null,
      kind: 'interval' as const,
    };
    expect(assumedField(design, margin)).toBe('left margin, layer 1');
    expect(countedWords(margin)).toBe('counted at the worse end of its interval');
  });
});

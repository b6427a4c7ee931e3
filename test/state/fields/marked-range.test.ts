import { describe, expect, it } from 'vitest';
import { markedFields, markedRange } from '#state/fields/marked-range.ts';

describe('a marked range', () => {
  it.each([
    ['100-240 V', '100 V', '240 V'],
    [' 100 – 240 V~', '100 V', '240 V'],
    ['100V to 240V AC', '100 V', '240 V'],
    ['100...240', '100 V', '240 V'],
    ['0.1-0.24 kV', '0.1 kV', '0.24 kV'],
  ])('should be two voltages: %s', (text, lowest, highest) => {
    expect(markedRange(text)).toEqual({ lowest, highest });
    expect(markedFields(text)).toEqual({ voltage: highest, lowest });
  });

  it.each(['240 V', '', '240-100 V', '100 + 140 V', 'unknown', '-240 V', '100-240 mm', '2*120 V'])(
    'should leave alone what is none: %s',
    (text) => {
      expect(markedRange(text)).toBeNull();
      expect(markedFields(text)).toEqual({ voltage: text });
    },
  );
});

import { describe, expect, it } from 'vitest';
import { looksLikeSum, summed } from '#state/fields/field-sum.ts';

describe('looksLikeSum', () => {
  it.each(['2*0.06+0.025 mm', '3.2 mm - 0.4', '(1.5+2)/2', '1/8 in', '3 - .5'])(
    'should see one in %s',
    (text) => {
      expect(looksLikeSum(text)).toBe(true);
    },
  );

  it.each(['3 mm', '-3', '1e-3', '3 ± 0.1', '3 +- 0.1', '3 +/- 0.1', '2x1.5', '.118"', '?', '', '4 kV dc'])(
    'should see none in "%s"',
    (text) => {
      expect(looksLikeSum(text)).toBe(false);
    },
  );
});

describe('summed', () => {
  it('should give the figure as the file writes it, or why there is none', async () => {
    expect(await summed('2*0.06+0.025 mm', 'length')).toMatchObject({ value: '0.145 mm', why: '' });
    expect(await summed('2·3', 'length')).toMatchObject({ value: '6 mm' });
    expect(await summed('2 mm * 3 mm', 'length')).toMatchObject({
      value: null,
      why: 'two of a length multiplied',
    });
  });
});

import { describe, expect, it } from 'vitest';
import { fieldPath, keysOf } from '#model/field-path.ts';

describe('fieldPath', () => {
  it('should write keys as a path and read them back', () => {
    const keys = ['layers', 3, 'margins', 'left', 'width'];
    expect(fieldPath(keys)).toBe('layers[3].margins.left.width');
    expect(keysOf('layers[3].margins.left.width')).toEqual(keys);
    expect(keysOf('')).toEqual([]);
  });

  it('should quote a name that is no plain word, so that it cannot pass for two fields', () => {
    expect(fieldPath(['a', 'b.c'])).toBe('a["b.c"]');
  });

  it.each(['.a', 'a.', 'a..b', 'a[', 'a[x]', 'a[-1]', '[0]', 'a b', 'a[0]b'])(
    'should read no keys from %j',
    (path) => {
      expect(keysOf(path)).toBeNull();
    },
  );
});

import { describe, expect, it } from 'vitest';
import { readDesignText } from '#model/read/read-design-text.ts';
import { KNOWN, plainFile } from '#test/model/sample-files.ts';

const faultsOf = (text: string) => {
  const answer = readDesignText(text, KNOWN);
  return answer.kind === 'bad' ? answer.faults : [];
};

describe('readDesignText', () => {
  it('should read a file, also behind a byte order mark', () => {
    const text = JSON.stringify(plainFile());
    expect(readDesignText(text, KNOWN).kind).toBe('design');
    expect(readDesignText(`\uFEFF${text}`, KNOWN).kind).toBe('design');
  });

  it.each(['', '  \n', '\uFEFF'])('should refuse an empty file %j', (text) => {
    expect(faultsOf(text)).toMatchObject([{ field: '', found: 'empty' }]);
  });

  it('should say where a text stops being JSON', () => {
    expect(faultsOf('{\n  "title": nonsense\n}')).toMatchObject([
      { field: '', found: 'no JSON from line 2, column 12 on: "nonsense\\n}"', expected: 'JSON' },
    ]);
    expect(faultsOf('{ "title": NaN }')[0]?.found).toContain('line 1, column 12');
    expect(faultsOf('{ "title": [1,')[0]?.found).toContain('too early');
  });

  it('should refuse a number too large to hold', () => {
    const text = JSON.stringify(plainFile()).replace('"turns":60', '"turns":1e999');
    expect(faultsOf(text)).toMatchObject([{ field: 'layers[0].turns', found: 'a number too large to hold' }]);
  });

  it('should refuse a file over 2 MB, counted in bytes', () => {
    expect(faultsOf('x'.repeat(10_000_000))).toMatchObject([
      { found: '10000000 bytes', expected: 'at most 2 MB' },
    ]);
    expect(faultsOf('µ'.repeat(1_000_001))).toMatchObject([{ found: '2000002 bytes' }]);
    expect(faultsOf('x'.repeat(2_000_000))[0]?.found).toContain('no JSON');
  });

  it('should refuse nesting of any depth', () => {
    expect(faultsOf(`${'['.repeat(900_000)}${']'.repeat(900_000)}`)).toMatchObject([
      { expected: 'at most 32 levels of nesting' },
    ]);
    expect(faultsOf('{"a":'.repeat(300_000))[0]?.found).toContain('too early');
  });

  it('should refuse a key that reaches into a prototype', () => {
    expect(faultsOf('{ "__proto__": { "rules": "x" } }')).toMatchObject([{ field: '__proto__' }]);
  });
});

import { describe, expect, it } from 'vitest';
import { readArguments } from '#cli/line/arguments.ts';

const KNOWN = { json: 'switch', rules: 'value', explain: 'pair' } as const;
const read = (...words: readonly string[]) => readArguments(words, KNOWN);

describe('readArguments', () => {
  it('should take files and options in any order', () => {
    const found = read('a.json', '--rules', 'x', '--json', '-');
    expect(found).toEqual({
      kind: 'arguments',
      files: ['a.json', '-'],
      options: new Map([
        ['rules', 'x'],
        ['json', ''],
      ]),
    });
  });

  it('should take a pair only where one stands', () => {
    const alone = read('--explain', 'a.json');
    const named = read('--explain', 'pri,out', 'a.json');
    expect([
      alone.kind === 'arguments' && alone.options.get('explain'),
      named.kind === 'arguments' && named.options.get('explain'),
    ]).toEqual(['', 'pri,out']);
  });

  it('should take a value after an equals sign, later ones included', () => {
    const found = read('--rules=a=b');
    expect(found.kind === 'arguments' && found.options.get('rules')).toBe('a=b');
  });

  it('should read nothing as an option after two dashes', () => {
    expect(read('--', '--json', '-x')).toMatchObject({ kind: 'arguments', files: ['--json', '-x'] });
  });

  it.each([['--toString'], ['-j'], ['--rules'], ['--rules='], ['--json', '--json'], ['--json=1']])(
    'should refuse %j',
    (...words) => {
      expect(read(...words).kind).toBe('wrong');
    },
  );
});

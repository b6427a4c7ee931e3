// The tables as the page lists them: all of a book by number with the rules at the end, found by words, a typed value worked
// out as the book reads it, other readings kept, and a user's own cell laid over.

import { describe, expect, it } from 'vitest';
import { ruleBookIds } from '#books/shelf.ts';
import { matches, shelfOf, sourcesOf, typedIn } from '#state/fields/table-shelf.ts';
import { sourceName } from '#words/text/source-name.ts';

const shelf = shelfOf('iec-62368-1', []);
const creepage = shelf.find(({ file }) => file === 'creepage')!;

describe('the shelf of tables', () => {
  it.each(ruleBookIds)('should hold every table of %s with a source for each cell', (id) => {
    const tables = shelfOf(id, []);
    expect(tables.length).toBeGreaterThan(7);
    expect(tables.at(-1)?.file).toBe('rules');
    for (const { rows } of tables)
      for (const { cells } of rows)
        for (const cell of cells) {
          expect(cell.seen.saw).not.toBe('');
          for (const source of sourcesOf(cell)) expect(sourceName(source)).not.toBe('');
        }
  });

  it('should list tables by number, 9 before 10 and 17 before 18', () => {
    const numbers = shelf.flatMap(({ number }) => (number === null ? [] : [number]));
    expect(numbers.indexOf('9')).toBeLessThan(numbers.indexOf('10'));
    expect(numbers.indexOf('17')).toBeLessThan(numbers.indexOf('18'));
  });

  it('should find a table by words of its title and clause, and none by others', () => {
    expect(shelf.filter((table) => matches(table, '17 creepage')).map(({ number }) => number)).toEqual([
      '17',
    ]);
    expect(shelf.filter((table) => matches(table, 'no such word'))).toEqual([]);
  });

  it('should work a typed value out, and refuse one beyond the table', () => {
    const at = (value: number) => typedIn('iec-62368-1', [], creepage, value, 'IIIb', [2]);
    const found = at(272);
    expect(found).toMatchObject({ kind: 'found', text: '2.8 mm' });
    expect(found.kind === 'found' && found.lines.some(({ text }) => text.includes('22/70'))).toBe(true);
    expect(at(10_001)).toMatchObject({ kind: 'none' });
  });

  it('should lay the own cell of a user over, beside what we had', () => {
    const own = [
      {
        standard: 'IEC 62368-1',
        table: 'creepage',
        cell: '250 V rms, PD 2, IIIb',
        value: 3,
        clause: 'x',
        on: '2026-11-30',
      },
    ];
    const cell = shelfOf('iec-62368-1', own)
      .find(({ file }) => file === 'creepage')
      ?.rows.flatMap(({ cells }) => cells)
      .find(({ name }) => name === own[0]!.cell);
    expect(cell).toMatchObject({ value: 3, ours: 2.5, confirmed: 'user', own: { clause: 'x' } });
    expect(typedIn('iec-62368-1', own, creepage, 250, 'IIIb', [2])).toMatchObject({ text: '3 mm' });
  });

  it('should keep readings that disagree', () => {
    const table = shelf.find(({ file }) => file === 'clearance-by-withstand');
    const others = table?.rows.flatMap(({ cells }) => cells).filter((cell) => cell.others.length > 0) ?? [];
    expect(others.length).toBeGreaterThan(0);
  });
});

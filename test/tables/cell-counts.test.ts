// What: how many cells with a figure each book's tables hold, counted when they were held against the collected figures
// cell by cell. Why: a row that is lost leaves no dent that another check would feel.

import { describe, expect, it } from 'vitest';
import { tables } from './all-tables.ts';

const cellsOf = (folder: string): number =>
  tables
    .filter(({ path }) => path.startsWith(`standards/${folder}/`))
    .flatMap(({ file }) => file.rows.flatMap((row) => file.columns.map((column) => row[column])))
    .filter((value) => value !== null && value !== undefined).length;

const COUNTS = {
  'iec-60335-1': 265,
  'iec-60601-1': 106,
  'iec-60664-1': 585,
  'iec-60950-1': 751,
  'iec-60990': 10,
  'iec-61558-2-16': 42,
  'iec-62368-1': 1053,
  national: 21,
};

describe('the cells of a book', () => {
  it.each(Object.entries(COUNTS))('should be as many as were carried over: %s', (folder, count) => {
    expect(cellsOf(folder)).toBe(count);
  });

  it('should be counted for every folder of tables', () => {
    const folders = tables.flatMap(({ path }) => /^standards\/([^/]+)\//.exec(path)?.[1] ?? []);
    expect([...new Set(folders)].sort()).toEqual(Object.keys(COUNTS).sort());
  });
});

// What: every cell, factor and rule figure names a source of its file, and every source a key of sources.json.
// Why: a figure without a place where it was seen must not reach a verdict.

import { describe, expect, it } from 'vitest';

import { everyFile, readJson, rules, tables } from './all-tables.ts';
import type { Row, TableFile } from '#standards/tables/table.ts';

interface Source {
  readonly kind: string;
  readonly title: string | null;
  readonly publisher: string | null;
  readonly year: number | string | null;
  readonly number: string | null;
  readonly standard: string | null;
  readonly page: string | null;
  readonly address: string | null;
}

/** Kinds that have no title of their own: what is recalled, our own rules, and figures that a program carries. */
const UNNAMED = ['recalled, no document seen', 'house rule of this project', 'secondary transcription'];

const known = readJson('sources.json') as Readonly<Record<string, Source>>;

const keyOf = (file: TableFile, row: Row, column: string): string | undefined =>
  (typeof row.from === 'string' ? row.from : row.from?.[column]) ?? file.columnFrom?.[column];

const usedKeys = (file: TableFile): readonly (string | undefined)[] => [
  ...file.rows.flatMap((row) => file.columns.map((column) => keyOf(file, row, column))),
  ...(file.factors ?? []).map(({ from }) => from),
];

const files = [...tables, ...rules];

describe('sources', () => {
  it.each(tables)('should stand behind every cell and factor: $path', ({ file }) => {
    const declared = file.sources.map(({ key }) => key);
    expect(usedKeys(file).filter((key) => key === undefined || !declared.includes(key))).toEqual([]);
  });

  it.each(rules)('should stand behind every figure of a rule: $path', ({ file }) => {
    const declared = file.sources.map(({ key }) => key);
    const used = file.rules.flatMap(({ values }) => Object.values(values).map(({ from }) => from));
    expect(used.filter((key) => !declared.includes(key))).toEqual([]);
    expect(declared.filter((key) => !used.includes(key))).toEqual([]);
  });

  it.each(tables)('should all be used, each declared once: $path', ({ file }) => {
    const declared = file.sources.map(({ key }) => key);
    expect(new Set(declared).size).toBe(declared.length);
    expect(declared.filter((key) => !usedKeys(file).includes(key))).toEqual([]);
  });

  it.each(files)('should be keys of sources.json: $path', ({ file }) => {
    const named = file.sources.flatMap((source) => source.in);
    expect(named.filter((key) => known[key] === undefined)).toEqual([]);
  });

  it.each(files)('should match what they are: memory alone is memory, two are two: $path', ({ file }) => {
    for (const source of file.sources) {
      const seen = source.in.filter((key) => key !== 'memory' && key !== 'house');
      const allSecondary = seen.every((key) => known[key]?.kind === 'secondary transcription');
      if (seen.length === 0) expect(['memory', 'house-rule']).toContain(source.confirmed);
      if (source.confirmed === 'two-sources') expect(seen.length).toBeGreaterThan(1);
      if (allSecondary) expect(['published', 'two-sources']).not.toContain(source.confirmed);
    }
  });

  it.each(Object.entries(known))(
    'should be found by a reader: %s',
    (_, { kind, title, publisher, address }) => {
      if (UNNAMED.includes(kind)) return expect([publisher, address]).toEqual([null, null]);
      expect(title).not.toBeNull();
      expect(publisher ?? address).not.toBeNull();
    },
  );

  it('should all be named by some table, and addresses stand in sources.json alone', () => {
    const named = new Set(files.flatMap(({ file }) => file.sources.flatMap((source) => source.in)));
    const others = tables.flatMap(({ file }) =>
      (file.disagree ?? []).flatMap(({ others: list }) => list.flatMap(({ from }) => from)),
    );
    const used = new Set([...named, ...others]);
    expect(Object.keys(known).filter((key) => !used.has(key))).toEqual([]);
    expect(others.filter((key) => known[key] === undefined)).toEqual([]);
    expect(JSON.stringify(everyFile)).not.toMatch(/https?:|www\./);
  });
});

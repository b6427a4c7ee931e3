// What: every table file has the shape of tables/schema.json. Why: the reader in src/standards takes it for granted.

import { describe, expect, it } from 'vitest';
import * as z from 'zod';

import { everyFile, readJson } from './all-tables.ts';

const shape = z.fromJSONSchema(readJson('schema.json') as Parameters<typeof z.fromJSONSchema>[0]);

describe('table files', () => {
  it.each(everyFile)('should fit the schema: $path', ({ file }) => {
    const result = shape.safeParse(file);
    expect(result.success ? '' : z.prettifyError(result.error)).toBe('');
  });

  it.each(everyFile)('should name the schema by its relative path: $path', ({ path, file }) => {
    const up = '../'.repeat(path.split('/').length - 1);
    expect((file as { $schema: string }).$schema).toBe(`${up}schema.json`);
  });

  it('should be refused with an unknown key, an empty source or a confirmation of our own making', () => {
    const good = everyFile.find(({ path }) => path.endsWith('altitude.json'))?.file as Record<
      string,
      unknown
    >;
    const [source] = good['sources'] as readonly Record<string, unknown>[];
    expect(shape.safeParse(good).success).toBe(true);
    expect(shape.safeParse({ ...good, extra: 1 }).success).toBe(false);
    expect(shape.safeParse({ ...good, sources: [] }).success).toBe(false);
    expect(shape.safeParse({ ...good, sources: [{ ...source, in: [] }] }).success).toBe(false);
    expect(shape.safeParse({ ...good, sources: [{ ...source, confirmed: 'sure' }] }).success).toBe(false);
  });
});

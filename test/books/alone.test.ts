// Rule books do not leak into each other: each, loaded alone, answers as it does among the others, also after those were
// asked; and its code imports nothing of another book: what it takes over of the default one is handed to it.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Book } from '#books/questions/book.ts';
import { ruleBook, ruleBookIds } from '#books/shelf.ts';
import { AS_FILED } from '#standards/tables/reader.ts';
import { ask, figures, type Plain } from './ask.ts';

const ROOT = join(import.meta.dirname, '../../src/books');

const QUESTIONS: readonly Partial<Plain>[] = [
  {},
  { rms: 272, peak: 560, frequency: 65_000 },
  { rms: 120, peak: 170, mains: 120, means: 'operator' },
  { rms: 250, peak: 354, altitude: 5000, pollutionDegree: 3 },
];

const answers = (book: Book): string =>
  JSON.stringify(
    QUESTIONS.map((asked) => {
      const { clearance, creepage, test, noSolids } = ask(book, asked);
      return [figures(clearance), figures(creepage('IIIb')), figures(test, 1), noSolids?.says];
    }),
  );

const nameOf = (id: string): string => id.replaceAll('-', '');

afterEach(() => vi.resetModules());

describe.each(ruleBookIds)('the book %s', (id) => {
  it('should answer alone as it does among the others', async () => {
    for (const other of ruleBookIds) answers(ruleBook(other)!);
    const among = answers(ruleBook(id)!);
    vi.resetModules();
    const alone = (await import(`../../src/books/${id}/${id}.ts`)) as Record<
      string,
      (read: unknown, byDefault: unknown) => Book
    >;
    const { tablesOf } = await import('#books/iec-62368-1/tables.ts');
    const make = alone[nameOf(id)];
    expect(make).toBeTypeOf('function');
    expect(answers(make!(AS_FILED, tablesOf(AS_FILED)))).toBe(among);
  });

  it('should import no other book', () => {
    const files = readdirSync(join(ROOT, id)).map((file) => readFileSync(join(ROOT, id, file), 'utf8'));
    const imported = files.flatMap((text) =>
      [...text.matchAll(/from '#books\/(iec-[^/]+)\//g)].map(([, of]) => of),
    );
    expect(imported.filter((of) => of !== id)).toEqual([]);
  });
});

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAGES } from '#state/app/page-list.ts';

const each = <K extends keyof (typeof PAGES)[number]>(key: K) => PAGES.map((page) => page[key]);

describe('the list of pages', () => {
  it('should name every page once, under one title and one key', () => {
    const keys = each('key').filter((key) => key !== null);
    for (const values of [each('name'), each('title'), each('view'), keys])
      expect(new Set(values).size).toBe(values.length);
    expect(keys.every((key) => /^[A-Z]$/.test(key))).toBe(true);
  });

  it('should have the component of every page, and every page of a component', () => {
    const folder = new URL('../../../src/ui/pages/', import.meta.url);
    const found = readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .flatMap(({ name }) =>
        readdirSync(new URL(`${name}/`, folder))
          .filter((file) => file.endsWith('View.svelte'))
          .map((file) => `${name}/${file.replace('.svelte', '')}`),
      );
    expect(found.sort()).toEqual([...each('view')].sort());
  });

  it('should hold the row in its order', () => {
    const row = PAGES.filter((page) => page.row !== null);
    expect(row.map(({ title }) => title).join(', ')).toBe(
      'Sheet, Mend, Spread, Compare, Books, Field, Photographs, Taking apart, Stress, Report, Tables, Learn, Words',
    );
  });
});

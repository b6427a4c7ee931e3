// The documents in which figures were seen, by their keys: title, publisher, year, number, page and public address.

import sourcesFile from '#tables/sources.json' with { type: 'json' };

export interface Source {
  readonly kind: string;
  readonly title: string | null;
  readonly publisher: string | null;
  readonly year: number | string | null;
  readonly number: string | null;
  readonly standard: string | null;
  readonly page: string | null;
  readonly address: string | null;
}

const SOURCES: Readonly<Record<string, Source>> = sourcesFile;

/** Null: no document of that key, for what is recalled or is our own. */
export function sourceNamed(key: string): Source | null {
  if (key === 'memory' || key === 'house') return null;
  return Object.hasOwn(SOURCES, key) ? (SOURCES[key] ?? null) : null;
}

// A document in which a figure was seen, so that a reader can find it. A second-hand copy stays without a name.

import type { Source } from '#standards/sources.ts';

export function sourceName({ kind, title, publisher, year, number, page, standard }: Source): string {
  if (title === null) return `second-hand copy${standard === null ? '' : ` of ${standard}`}`;
  const parts = [
    title,
    publisher,
    number,
    year === null ? null : String(year),
    page === null ? null : pageWords(page),
  ];
  return `${parts.filter((part) => part !== null && part !== '').join(', ')} (${kind})`;
}

const pageWords = (page: string): string => (/^\d/.test(page) ? `p. ${page}` : page);

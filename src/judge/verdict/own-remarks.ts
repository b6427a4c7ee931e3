// Which of the figures that a verdict rests on the user confirmed from a copy of the standard of their own: each once.

import { type Because, type Cite, citesOf } from '#standards/because.ts';
import type { Remark } from './verdict.ts';

export function ownRemarks(grounds: readonly Because[]): readonly Remark[] {
  const own = grounds.flatMap(citesOf).filter((cite) => cite.own !== undefined);
  const says = [...new Set(own.map(saysOf))];
  return says.map((each) => ({ kind: 'confirmed-by-user', says: each }));
}

function saysOf({ standard, table, cell, own }: Cite): string {
  const place = table === null ? cell : `table ${table}, ${cell}`;
  return `Confirmed by the user: ${standard}, ${place}; read in ${own?.clause ?? ''} on ${own?.on ?? ''}.`;
}

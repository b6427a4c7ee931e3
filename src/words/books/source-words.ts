// Where an asked figure comes from, in one sentence: `Table 17 between 250 and 320 V, rounded up, doubled`.

import type { FigureSource } from '#judge/study/figure-source.ts';
import { plain } from '#words/text/number-words.ts';

/** Empty where nothing is known of it. */
export function sourceWords(source: FigureSource | null): string {
  if (source === null) return '';
  const { table, clause, standard, rows, at, done, governs } = source;
  const place = table === null ? `clause ${clause}` : `table ${table}`;
  const by = GOVERNS[governs];
  const parts = [
    `${standard}, ${place}${rowWords(rows, at)}`,
    ...done.map((each) => DONE[each]),
    ...(by === '' ? [] : [by]),
  ];
  return parts.join(', ');
}

function rowWords([low, high]: readonly number[], at: number): string {
  if (low === undefined) return '';
  if (high !== undefined) return ` between ${plain(low)} and ${plain(high)} V`;
  return low === at ? ` at ${plain(low)} V` : ` in the row up to ${plain(low)} V`;
}

const DONE: Readonly<Record<FigureSource['done'][number], string>> = {
  raised: 'entered with a raised voltage',
  pollution: 'times the factor of the pollution degree',
  rounded: 'rounded up',
  doubled: 'doubled',
  added: 'with what the peak above that of the mains adds',
  altitude: 'times the factor of the altitude',
};

const GOVERNS: Readonly<Record<FigureSource['governs'], string>> = {
  rms: '',
  withstand: '',
  rule: '',
  'high-frequency': 'as the frequency asks more',
  clearance: 'never below the clearance, which governs',
};

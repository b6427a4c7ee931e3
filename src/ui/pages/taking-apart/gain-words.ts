// What a step gained, in a few words: what it brought to be found out, what was found, which pairs it settled.

import type { Gain } from '#state/apart/narrowing.svelte.ts';

export function gainWords({ found, brought, settled }: Gain): string {
  const told = [
    ...(brought > 0 ? [`${brought} to be found out`] : []),
    ...(found > 0 ? [`${found} found`] : []),
    ...(settled !== 0 ? [`${pairs(Math.abs(settled))} ${settled > 0 ? 'settled' : 'open again'}`] : []),
  ];
  return told.join(', ');
}

const pairs = (count: number): string => (count === 1 ? 'one pair' : `${count} pairs`);

// How well a figure is known, in the words that stand beside it everywhere.

import type { Confirmed } from '#standards/because.ts';

const WORDS: Readonly<Record<Confirmed, string>> = {
  'two-sources': 'two sources',
  published: 'published',
  secondary: 'secondary copy',
  derived: 'arithmetic',
  memory: 'memory',
  'house-rule': 'house rule',
  stated: 'stated',
};

export const confirmedWords = (confirmed: Confirmed): string => WORDS[confirmed];

// How well a figure is known, in the words that stand beside it everywhere.

import type { Confirmed } from '#standards/because.ts';

const WORDS: Readonly<Record<Confirmed, string>> = {
  'two-sources': 'two sources',
  published: 'published',
  secondary: 'second-hand copy',
  derived: 'arithmetic',
  memory: 'memory',
  'house-rule': 'house rule',
  stated: 'stated',
  user: 'confirmed by the user',
};

export const confirmedWords = (confirmed: Confirmed): string => WORDS[confirmed];

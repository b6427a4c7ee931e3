// The sheets to explore: one figure over another, each worked out from the tables or by the solver itself.

import type { DesignFile } from '#model/schema/schema.ts';
import { askedSheet } from './sheets/asked-sheet.ts';
import { breakdownSheet } from './sheets/breakdown-sheet.ts';
import type { ExploreSheet } from './sheets/explore-sheet.ts';
import { lifeSheet } from './sheets/life-sheet.ts';
import { marginSheet } from './sheets/margin-sheet.ts';
import { plySheet } from './sheets/ply-sheet.ts';

export const exploreSheets = (build: DesignFile): readonly ExploreSheet[] => [
  askedSheet(build),
  breakdownSheet,
  lifeSheet,
  marginSheet(build),
  plySheet(build),
];

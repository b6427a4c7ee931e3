// The ids that a design file may name: rule books, materials and markets that the tables hold.

import type { KnownIds } from '#model/check/check-ids.ts';
import { marketIds } from '#books/shared/national.ts';
import { ruleBookIds } from '#books/shelf.ts';
import { formers, sleeves, tapes } from '#standards/materials/materials.ts';

const ids = (list: readonly { readonly id: string }[]): readonly string[] => list.map(({ id }) => id);

export const knownIds: KnownIds = {
  rules: ruleBookIds,
  tapes: ids(tapes),
  plies: new Map(tapes.map(({ id, total }) => [id, total.value])),
  formers: ids(formers),
  sleeves: ids(sleeves),
  markets: marketIds,
};

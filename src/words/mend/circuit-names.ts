// A pair of circuits by the names that the file gives them.

import type { DesignFile } from '#model/schema/schema.ts';

export const circuitNames = (pair: readonly [string, string], { circuits }: DesignFile): string =>
  pair.map((id) => circuits.find((one) => one.id === id)?.name || id).join(' to ');

// How many turns of its winding lie before each turn that is drawn: a winding goes to and fro, row by row, from the side
// where its start lies; strands that are wound together are one turn. Where the start lies is left by custom, if the
// file does not say.

import type { Design } from '#model/design.ts';
import type { Turn } from '#solver/placing/turns.ts';

export interface TurnPlace {
  readonly winding: string;
  /** Turns before its middle. */
  readonly at: number;
  readonly isBare: boolean;
  readonly kind: 'enamel' | 'cover';
}

/** In the order of `turns`, which is row by row. */
export function turnPlaces(design: Design, turns: readonly Turn[]): readonly TurnPlace[] {
  const found: TurnPlace[] = [];
  const wound = new Map<string, { count: number; toRight: boolean }>();
  for (let from = 0; from < turns.length;) {
    let to = from + 1;
    while (to < turns.length && isSameRow(turns[from]!, turns[to]!)) to++;
    const { layer } = turns[from]!;
    const drawn = design.layers[layer];
    if (drawn?.kind !== 'winding') throw new Error(`layer ${layer} is no winding`);
    const { winding, strands } = drawn;
    const before = wound.get(winding) ?? { count: 0, toRight: startsLeft(design, winding) };
    const { wire } = design.windings.find(({ id }) => id === winding)!;
    for (let i = from; i < to; i++) {
      const along = before.toRight ? i - from : to - 1 - i;
      found.push({
        winding,
        at: before.count + Math.floor(along / strands) + 0.5,
        isBare: wire.kind === 'bare',
        kind: wire.kind === 'layer-insulated' || wire.kind === 'litz' ? 'cover' : 'enamel',
      });
    }
    wound.set(winding, {
      count: before.count + Math.ceil((to - from) / strands),
      toRight: !before.toRight,
    });
    from = to;
  }
  return found;
}

const isSameRow = (a: Turn, b: Turn): boolean => a.layer === b.layer && a.y === b.y;

function startsLeft(design: Design, id: string): boolean {
  const leads = design.windings.find((winding) => winding.id === id)?.leads;
  if (leads === undefined || leads === 'not-judged' || 'kind' in leads) return true;
  return 'kind' in leads.start || leads.start.at !== 'right';
}

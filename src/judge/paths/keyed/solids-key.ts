// What of the solids of a build shapes the paths of one section: only of those that it holds. So that what another way to
// count the build changes elsewhere does not make its paths be looked for again.

import type { SolidOptions } from '#solver/network/pieces.ts';
import type { Counting } from '#solver/paths/ply-count.ts';
import type { StuffId } from '#solver/section/build.ts';
import type { KeyedSection } from './section-list.ts';

/** How a search counts the solids of one section: their classes numbered anew, in the order that they had. */
export interface CountedHere {
  readonly number: number;
  readonly counting: Counting;
}

/** Tells what it is asked of once, hence a class. */
export class SolidsKeys {
  readonly #numberOf: (told: string) => number;
  readonly #stuffs = new WeakMap<KeyedSection, readonly StuffId[]>();
  readonly #passing = new WeakMap<SolidOptions, Map<string, string>>();
  readonly #counted = new WeakMap<Counting, Map<string, CountedHere>>();

  /** `numberOf`: another number for every other text. */
  constructor(numberOf: (told: string) => number) {
    this.#numberOf = numberOf;
  }

  /** The geometry of a section with how its solids are passed: equal ones have equal networks. */
  passing(section: KeyedSection, closedJoint: StuffId, options: SolidOptions): string {
    const geometry = `${section.geometry} ${closedJoint}`;
    return told(this.#passing, options, geometry, () => {
      const { leastThickness, closedFrom, trackingRank, runs } = options;
      const solids = this.#stuffsOf(section, closedJoint).map((id) => {
        const steps = runs?.[id]?.map(({ below, as }) => `${below} as ${as}`);
        return `${id} ${trackingRank[id]} ${steps?.join()}`;
      });
      return `${geometry} ${this.#numberOf(`solids ${leastThickness} ${closedFrom} ${solids.join()}`)}`;
    });
  }

  /** `passing`: as told of this section. */
  counted(
    section: KeyedSection,
    closedJoint: StuffId,
    { runs }: SolidOptions,
    counting: Counting,
    passing: string,
  ): CountedHere {
    // that counts all solids alike
    if (counting.classes === 'one') return { number: this.#numberOf(toldCounting(counting)), counting };
    return told(this.#counted, counting, passing, () => {
      const held = this.#stuffsOf(section, closedJoint);
      const asRuns = held.flatMap((id) => (runs?.[id] ?? []).map(({ as }) => as));
      const here = countedOf(counting, [...new Set([...held, ...asRuns])]);
      return { number: this.#numberOf(toldCounting(here)), counting: here };
    });
  }

  #stuffsOf(section: KeyedSection, closedJoint: StuffId): readonly StuffId[] {
    const known = this.#stuffs.get(section);
    if (known) return known;
    const held = new Set([closedJoint]);
    for (const region of section.regions) if (region.kind !== 'conductor') held.add(region.stuff);
    const stuffs = [...held].sort((a, b) => a - b);
    this.#stuffs.set(section, stuffs);
    return stuffs;
  }
}

/** With the classes of these stuffs alone, closed up. */
function countedOf(counting: Counting, stuffs: readonly StuffId[]): Counting {
  const { classes, enough, byRank } = counting;
  if (classes === 'one') return counting;
  const used = [...new Set(stuffs.map((id) => classes[id] ?? null))].filter((cls) => cls !== null);
  used.sort((a, b) => a - b);
  const here: (number | null)[] = [];
  for (const id of stuffs) {
    const cls = classes[id] ?? null;
    here[id] = cls === null ? null : used.indexOf(cls);
  }
  return { classes: here, enough: used.map((cls) => enough[cls]), byRank };
}

/** Classes that no stuff has are told as nothing. */
const toldCounting = ({ classes, enough, byRank }: Counting): string =>
  `counting ${classes === 'one' ? classes : classes.join()} ${enough.join()} ${byRank}`;

function told<Of extends object, T>(
  known: WeakMap<Of, Map<string, T>>,
  of: Of,
  key: string,
  make: () => T,
): T {
  const all = known.get(of) ?? new Map<string, T>();
  known.set(of, all);
  const value = all.get(key) ?? make();
  all.set(key, value);
  return value;
}

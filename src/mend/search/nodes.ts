// Sets of acts that are to be gone on from: the nearest to done first, each once, and of those that differ in their amounts
// only no more than tell something new.

import { keyOf, shapeOf, type Act } from '#mend/acts/act.ts';

export interface Node {
  readonly acts: readonly Act[];
  /** How far it is from what is asked. */
  readonly rank: number;
}

/** More acts than this are no mending but another build. */
const MOST_ACTS = 6;
/** Sets that differ in their amounts only: more than so many of one shape tell nothing new. */
const MOST_OF_SHAPE = 3;
/** Each act more has to bring a build nearer by so much. */
const ACT_WEIGHT = 4;

/** Grows and shrinks while it is searched, hence a class. */
export class Nodes {
  readonly #open: Node[] = [];
  readonly #seen = new Set<string>();
  readonly #shapes = new Map<string, number>();

  /** Asked once of each set: whether it is worth judging. */
  isNew(acts: readonly Act[]): boolean {
    const [key, shape] = [keyOf(acts), shapeOf(acts)];
    const ofShape = this.#shapes.get(shape) ?? 0;
    if (this.#seen.has(key) || ofShape >= MOST_OF_SHAPE) return false;
    this.#seen.add(key);
    this.#shapes.set(shape, ofShape + 1);
    return true;
  }

  add(node: Node): void {
    if (node.acts.length < MOST_ACTS) this.#open.push(node);
  }

  /** Fewest acts first among those that are equally near, none with more acts than asked; null where none is left. */
  takeBest(most: number): Node | null {
    const score = ({ rank, acts }: Node): number =>
      acts.length > most ? Infinity : rank + acts.length * ACT_WEIGHT;
    const place = this.#open.reduce((best, node, i, all) => (score(node) < score(all[best]!) ? i : best), 0);
    const best = this.#open[place];
    if (best === undefined || best.acts.length > most) return null;
    this.#open.splice(place, 1);
    return best;
  }
}

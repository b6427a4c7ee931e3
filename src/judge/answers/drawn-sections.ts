// The sections that a verdict is drawn on: those of the build as it is counted at worst, and beside them, by a name of its
// own, every other one on which a path is told that lies elsewhere there.

import type { FoundPath, Holding, PairOutcome } from '#judge/paths/case-result.ts';
import type { Build } from '#solver/section/build.ts';
import type { Rect, Section } from '#solver/section/section.ts';

/** Grows while paths are placed, hence a class. */
export class DrawnSections {
  readonly #sections: Section[];
  readonly #builds: Build[];
  readonly #shapes: string[];

  constructor(sections: readonly Section[], build: Build) {
    this.#sections = [...sections];
    this.#builds = sections.map(() => build);
    this.#shapes = sections.map(shapeOf);
  }

  get sections(): readonly Section[] {
    return this.#sections;
  }

  /** What each of the sections is of. */
  get builds(): readonly Build[] {
    return this.#builds;
  }

  /** The outcome with its paths on the sections that are drawn. */
  placed(outcome: PairOutcome): PairOutcome {
    const { holding, shortest, failing } = outcome;
    const all = (paths: readonly (FoundPath | null)[]) => paths.map((path) => path && this.#path(path));
    return {
      ...outcome,
      holding: holding && this.#holding(holding),
      shortest: { creepage: all(shortest.creepage), clearance: all(shortest.clearance) },
      failing: failing.map((each) => this.#holding(each)),
    };
  }

  #holding(holding: Holding): Holding {
    return holding.kind === 'bridge' ? holding : this.#path(holding);
  }

  #path(path: FoundPath): FoundPath {
    const { section, counted, build } = path;
    if (section === null || this.#sections.includes(section)) return path;
    const shape = shapeOf(section);
    const known = this.#sections.find(
      ({ name }, i) => this.#shapes[i] === shape && name.startsWith(section.name),
    );
    if (known) return { ...path, section: known };
    const wish = counted === '' ? section.name : `${section.name}, ${counted}`;
    const drawn = { ...section, name: this.#unusedName(wish) };
    this.#sections.push(drawn);
    this.#builds.push(build);
    this.#shapes.push(shape);
    return { ...path, section: drawn };
  }

  #unusedName(wish: string): string {
    let name = wish;
    for (let i = 2; this.#sections.some((section) => section.name === name); i++) name = `${wish} ${i}`;
    return name;
  }
}

const shapeOf = ({ regions, frame }: Section): string =>
  [...regions, { ...frame, kind: 'frame' }].map((r) => `${r.kind} ${corners(r)}`).join();

const corners = ({ x0, y0, x1, y1 }: Rect): string => `${x0} ${y0} ${x1} ${y1}`;

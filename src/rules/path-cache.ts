// Pieces of sections already searched: what a change did not touch need not be solved again.
// Keyed by all that shapes a path. Two generations are kept: what the newest judging did not ask for twice is dropped.

import { findPieces, type SectionPaths } from '#solver/find-pieces.ts';
import type { StuffId } from '#solver/build.ts';
import type { PathOptions } from '#solver/pieces.ts';
import type { Section } from '#solver/section.ts';

/** A buffer that outlives one judging, hence a class. */
export class PathCache {
  #young = new Map<string, SectionPaths>();
  #old = new Map<string, SectionPaths>();

  /** Call before each judging of a document: forgets what the last two judgings did not use. */
  nextGeneration(): void {
    this.#old = new Map([...this.#old, ...this.#young].slice(-MOST_KEPT));
    this.#young = new Map();
  }

  pieces(section: Section, sectionKey: string, options: PathOptions, closedJoint: StuffId): SectionPaths {
    const key = `${sectionKey}#${optionsKey(options)}#${closedJoint}`;
    const known = this.#young.get(key) ?? this.#old.get(key);
    const paths = known ?? findPieces(section, options, closedJoint);
    this.#young.set(key, paths);
    return paths;
  }
}

/** Sections kept from earlier judgings. */
const MOST_KEPT = 2000;

const optionsKey = ({ metric, x, leastThickness, trackingRank, window }: PathOptions): string => {
  const where = `${leastThickness},${window?.join(' to ') ?? ''}`;
  return metric === 'clearance' ? `clearance,${where}` : `creepage,${x},${trackingRank.join('')},${where}`;
};

/** All that shapes a path of a section, as one string. */
export function sectionKeyOf(section: Section): string {
  const parts: (string | number)[] = [section.kind, section.potted ? 'potted' : ''];
  for (const r of section.regions) {
    parts.push(r.x0, r.y0, r.x1, r.y1);
    if (r.kind === 'conductor') parts.push(r.conductor);
    else parts.push(r.kind, r.body, r.stuff, r.crossX, r.crossY, r.closed ? 'c' : '', r.turnUp);
  }
  for (const r of section.sagging) parts.push(r.x0, r.y0, r.x1, r.y1);
  return parts.join(',');
}

// How one judging counts what is not known for sure: every unknown at its worst or its best, every interval at its
// nominal value or at one end. Fields are told by their path in the file.

import { editAt } from './edit-at.ts';
import type { Design } from '#model/design.ts';

export interface Choice {
  readonly at: 'worst' | 'best';
  /** Unknowns that are set at their best although the rest is at its worst. */
  readonly best: ReadonlySet<string>;
  /** Intervals taken off their nominal value, by parts of their half-width from -1 to 1; the others are nominal. */
  readonly ends: ReadonlyMap<string, number>;
  /**
   * Circuits that are third parts of what is judged: the room that they take is counted at its other end. A third
   * conductor that may be smaller opens a way that it would shut, so neither end of it is the worse one for sure.
   */
  readonly turned: ReadonlySet<string>;
  /** Fields that stay as they are although their circuit is turned. */
  readonly held: ReadonlySet<string>;
}

const NONE: ReadonlySet<string> = new Set();

export const WORST: Choice = { at: 'worst', best: NONE, ends: new Map(), turned: NONE, held: NONE };
export const BEST: Choice = { ...WORST, at: 'best' };

export const isBest = (choice: Choice, field: string): boolean =>
  choice.at === 'best' || choice.best.has(field);

/** Of a field that says how much room a circuit takes. */
export const isRoomy = (choice: Choice, field: string, circuit: string): boolean =>
  isBest(choice, field) !== (choice.turned.has(circuit) && !choice.held.has(field));

export const withBest = (...fields: readonly string[]): Choice => ({ ...WORST, best: new Set(fields) });

export type Ends = Choice['ends'];

export const withEnds = (ends: Choice['ends']): Choice => ({ ...WORST, ends });

interface Stated {
  readonly value: number;
  readonly plusMinus: number;
}

/** Paths of all quantities of a design that are given as an interval. */
export function intervalsOf(design: Design): readonly string[] {
  const found: string[] = [];
  const walk = (value: unknown, path: string) => {
    if (value === null || typeof value !== 'object') return;
    if (Array.isArray(value)) {
      value.forEach((item, i) => walk(item, `${path}[${i}]`));
      return;
    }
    if ('plusMinus' in value) {
      if ((value as Stated).plusMinus > 0) found.push(path);
      return;
    }
    for (const [key, item] of Object.entries(value)) walk(item, path === '' ? key : `${path}.${key}`);
  };
  walk(design, '');
  return found;
}

/** The design with the chosen intervals where they are taken; none of these is left an interval. */
export function settled(design: Design, ends: Choice['ends']): Design {
  let out = design;
  for (const [path, end] of ends) {
    out = editAt(out, path, (stated) => {
      const { value, plusMinus } = stated as Stated;
      return { ...(stated as Stated), value: value + along(end, plusMinus), plusMinus: 0 };
    });
  }
  return out;
}

/** Lengths are whole nanometres; an end is the end, to the last digit. */
const along = (part: number, plusMinus: number): number =>
  Math.abs(part) === 1 ? part * plusMinus : Math.round(part * plusMinus);

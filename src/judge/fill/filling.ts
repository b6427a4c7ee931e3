// What is gathered while a build is filled: the stuffs of its solids, the unknowns met and how each was counted.

import { isBest, type Choice } from './choice.ts';
import { Stuffs } from '#judge/grade/stuff.ts';

export interface Counted {
  readonly field: string;
  /** What it was counted as at worst, in words. */
  readonly counted: string;
  /** An unknown of the file, or a figure of ours that the file could state. */
  readonly kind: 'unknown' | 'house-rule';
}

/** Grows while the fields are walked, hence a class. */
export class Filling {
  readonly stuffs = new Stuffs();
  readonly counted = new Map<string, Counted>();
  readonly choice: Choice;

  constructor(choice: Choice) {
    this.choice = choice;
  }

  /** Notes an unknown and says how it is to be counted now. */
  unknown(field: string, counted: string, kind: Counted['kind'] = 'unknown'): 'worst' | 'best' {
    this.counted.set(field, { field, counted, kind });
    return isBest(this.choice, field) ? 'best' : 'worst';
  }
}

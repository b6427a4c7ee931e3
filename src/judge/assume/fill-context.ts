// What is gathered while a build is filled: the stuffs of its solids, the unknowns met and how each was counted.

import type { CountedAs } from '#judge/verdict/assumed.ts';
import { isBest, isRoomy, type Choice } from './assumption.ts';
import { type StuffNumbers, Stuffs } from './stuff.ts';

export interface Counted {
  readonly field: string;
  /** What it was counted as at worst. */
  readonly counted: CountedAs;
  /**
   * An unknown of the file, a figure of ours that the file could state, what it means where it is silent, or an unknown
   * that hardly any file states and that is told only where it decides.
   */
  readonly kind: 'unknown' | 'house-rule' | 'default' | 'seldom-stated';
}

/** Grows while the fields are walked, hence a class. */
export class Filling {
  readonly stuffs: Stuffs;
  readonly counted = new Map<string, Counted>();
  /** Circuits by the unknown fields that say how much room they take. */
  readonly rooms = new Map<string, string>();
  readonly choice: Choice;

  constructor(choice: Choice, numbers: StuffNumbers) {
    this.choice = choice;
    this.stuffs = new Stuffs(numbers);
  }

  /** Notes an unknown and says how it is to be counted now. */
  unknown(field: string, counted: CountedAs, kind: Counted['kind'] = 'unknown'): 'worst' | 'best' {
    this.counted.set(field, { field, counted, kind });
    return isBest(this.choice, field) ? 'best' : 'worst';
  }

  /** Notes what the file means where it is silent: nothing that could be better or worse. */
  taken(field: string, counted: CountedAs): true {
    this.counted.set(field, { field, counted, kind: 'default' });
    return true;
  }

  /** As `unknown`, of a field that says how much room a circuit takes: `best` is where it takes the least. */
  room(field: string, circuit: string, counted: CountedAs): 'worst' | 'best' {
    this.unknown(field, counted);
    this.rooms.set(field, circuit);
    return isRoomy(this.choice, field, circuit) ? 'best' : 'worst';
  }
}

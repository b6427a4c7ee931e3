// What the market that a build is sold in changes by a rule book.

import type { Judged } from '#standards/because.ts';
import type { OvervoltageCategory } from '#units/terms.ts';
import type { Metres, VoltsRms } from '#units/quantity.ts';

export interface National {
  readonly market: string;
  /** As a reader says it. */
  readonly name: string;
  /** Line to neutral. */
  readonly mains: VoltsRms;
  /** What tables of the mains are entered with; a supply that is higher stays. */
  readonly entered: Judged<VoltsRms>;
  /** Where the file names none. */
  readonly category: Judged<OvervoltageCategory>;
  /** Where the file names none; null: nothing was seen for this book. */
  readonly altitude: Judged<Metres> | null;
}

// One design judged, as the library hands it out: the verdict as plain data, with all that is drawn and told from behind it.

import { knownIds } from '#judge/conductors/known-ids.ts';
import { study, type Study } from '#judge/study.ts';
import type { Design as WholeDesign } from '#model/design.ts';
import { told, type ToldVerdict } from '#words/told.ts';
import type { Design } from './read.ts';

/** A judgement. It was judged once; whatever is made of it tells the same. */
export class Judged {
  readonly design: Design;
  /** As `judge --json` prints it (format `layerwright-verdict/1`): lengths mm, voltages V, frequencies Hz, currents mA. */
  readonly verdict: ToldVerdict;
  readonly #study: Study;

  private constructor(design: WholeDesign, found: Study) {
    this.design = design;
    this.verdict = told(found.verdict);
    this.#study = found;
  }

  /** @internal */
  static of(design: WholeDesign): Judged {
    return new Judged(design, study(design));
  }

  /** @internal */
  static inside(judged: Judged): { readonly design: WholeDesign; readonly judgement: Study } {
    return { design: judged.design as WholeDesign, judgement: judged.#study };
  }
}

/**
 * Judges a design that `readDesign` gave. Unknowns count as worst; milliseconds for a dozen layers.
 *
 * @param rules id of the rule book that stands in for the file's own, one of `ruleBooks`
 * @throws RangeError where there is no such rule book
 */
export function judge(design: Design, rules: string = design.rules): Judged {
  if (!knownIds.rules.includes(rules))
    throw new RangeError(`there is no rule book ${rules}; there is ${knownIds.rules.join(', ')}`);
  return Judged.of({ ...(design as WholeDesign), rules });
}

// What one pair asks, at large and at the places that have a voltage of their own.

import type { Book } from '#books/questions/book.ts';
import type { Required, Transients } from '#books/questions/required.ts';
import type { Choice } from '#judge/assume/assumption.ts';
import { type CountedStress, countedStress, stressAtPlace } from '#judge/assume/counted-stress.ts';
import { meansOf } from '#judge/grade/means.ts';
import { type AskedAtPlaces, type PairQuestion, askedOf, withPlaces } from '#judge/grade/path-requirement.ts';
import { requiredFor } from '#judge/grade/required.ts';
import type { Design } from '#model/design.ts';
import type { Because } from '#standards/because.ts';
import type { OpenVoltage, PairStressResult } from '#stress/pair/pair-stress.ts';

export interface AskedPair {
  readonly question: PairQuestion;
  readonly neededBecause: Because;
  readonly stress: CountedStress;
  readonly entering: Transients;
  readonly required: Required;
}

/** What one pair asks; a demoted circuit counts as mains, but towards the mains itself basic is still asked of it. */
export function askPair(
  book: Book,
  design: Design,
  asMains: Design,
  demoted: ReadonlySet<string>,
  choice: Choice,
  own: PairStressResult,
  raised: PairStressResult,
): AskedPair {
  const [a, b] = own.between;
  const roleOf = (from: Design, id: string) => from.circuits.find((circuit) => circuit.id === id)!;
  const towardsMains = [a, b].some((id) => roleOf(design, id).role === 'mains');
  const source = (demoted.has(a) || demoted.has(b)) && !towardsMains ? asMains : design;
  const stress = countedStress(book, source === design ? own : raised, choice);
  const [circuitA, circuitB] = [roleOf(source, a), roleOf(source, b)];
  const grade = book.neededGrade(circuitA.role, circuitB.role);
  const needed = grade.value === 'functional' ? null : grade.value;
  const entering = book.transients(design.supply, circuitA, circuitB);
  const means = meansOf(design, choice, own.between);
  const required = requiredFor(book, design, stress, entering, needed, means);
  const { places, open } = askedAtPlaces(book, source, choice, stress, entering, needed);
  const asked = withPlaces(askedOf(required, choice.at === 'worst'), places);
  const question = { between: own.between, needed, required, asked, places };
  const found = { ...stress, open: [...stress.open, ...open] };
  return { question, neededBecause: grade.because, stress: found, entering, required };
}

/** What is asked of one pair where the file gives a voltage of its own: at distances outside, and at bridging parts. */
function askedAtPlaces(
  book: Book,
  design: Design,
  choice: Choice,
  stress: CountedStress,
  entering: Transients,
  needed: PairQuestion['needed'],
): { readonly places: AskedAtPlaces; readonly open: CountedStress['open'] } {
  const open: OpenVoltage[] = [];
  const at = (list: 'outside' | 'bridges') =>
    design[list].map(({ between, working }, i) => {
      const concerns = list === 'outside' || between.every((id) => stress.between.includes(id));
      if (working === null || needed === null || !concerns) return null;
      const here = stressAtPlace(design, stress, working, `${list}[${i}].working`, choice);
      open.push(...here.open);
      const means = meansOf(design, choice, stress.between);
      const required = requiredFor(book, design, here, entering, needed, means);
      return { rms: here.rms, required, asked: askedOf(required, choice.at === 'worst') };
    });
  return { places: { outside: at('outside'), bridges: at('bridges') }, open };
}

// A spread in words: how many of the wound pieces meet, how sure that is, which figures decide, how the distances lie.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Deciding } from '#spread/deciding.ts';
import type { Distances } from '#spread/distances.ts';
import type { Placement } from '#spread/placement.ts';
import type { Rare } from '#spread/rare.ts';
import type { Spread } from '#spread/spread.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { lengthDown, lengthNear, lengthPlain, lengthUp } from '#words/text/number-words.ts';
import { answerWords } from '#words/text/answer-words.ts';

const MOST_FIELDS = 6;

export function spreadLines(spread: Spread, doc: DesignFile, placement: Placement): readonly string[] {
  const { worstCase, deciding, distances, rare } = spread;
  return [
    shareWords(spread),
    ...(rare === null ? [] : [rareWords(rare)]),
    `With every figure at the worse end of its range: ${answerWords(worstCase.verdict)}${worstWords(spread)}.`,
    ...(deciding.length === 0
      ? ['No figure decides.']
      : ['What decides, part of the spread of the distance that limits:']),
    ...deciding.slice(0, MOST_FIELDS).map((one) => `  ${decidingWords(one, doc)}`),
    ...distances.map(distanceWords),
    placementWords(placement),
  ];
}

export function shareWords({ share, draws, interval: [low, high], seed }: Spread): string {
  return `${percent(share)} of ${draws} drawn pieces meet (between ${percent(low)} and ${percent(high)}, 19 times in 20; seed ${seed}).`;
}

export const rareWords = ({ share, atMost, by, draws }: Rare): string =>
  by === 'worst-case'
    ? 'None of all pieces falls short: the worst of them meets.'
    : `Falling short is rare: about ${perMillion(share)} pieces in a million by ${draws} draws near the worse ends; by counting at most ${perMillion(atMost)}, 19 times in 20.`;

const perMillion = (part: number): string => String(Math.round(part * 1e6));

/** The shortest part of what is asked that the worst piece has: `, 4.66 of 5.6 mm`. */
export function worstWords({ worstCase: { judged } }: Spread): string {
  const tight = (judged?.pairs ?? [])
    .flatMap(({ length, required }) => (length === null || required === null ? [] : [{ length, required }]))
    .sort((a, b) => a.length / a.required - b.length / b.required)[0];
  return tight === undefined
    ? ''
    : `, ${lengthDown(tight.length)} of ${lengthUp(tight.required)} ${lengthUnit()}`;
}

export const decidingWords = ({ field, weight, moreIs, from, to }: Deciding, doc: DesignFile): string =>
  `${fieldWords(doc, field)}: ${percent(weight)}, ${rangeWords(field, from, to)}, more is ${moreIs}`;

export const rangeWords = (field: string, from: number, to: number): string =>
  field.endsWith('.plies') ? `${from} or ${to}` : `${lengthNear(from)} to ${lengthNear(to)} ${lengthUnit()}`;

function distanceWords({ between, metric, required, draws, least, most, quantiles }: Distances): string {
  const asked = required === null ? 'no figure' : `${lengthUp(required)} ${lengthUnit()}`;
  const parts = Object.entries(quantiles).map(
    ([part, length]) => `${percent(Number(part))} below ${lengthNear(length)}`,
  );
  return `${between.join(' to ')}, ${metric} against ${asked} in ${draws} measured pieces: ${[`${lengthNear(least)} to ${lengthNear(most)} ${lengthUnit()}`, ...parts].join('; ')}.`;
}

export const placementWords = ({ margin, tape, sleeve, forgottenPly }: Placement): string =>
  `Placement model, common practice: margins ± ${lengthPlain(margin)} ${lengthUnit()}, tape up to ${lengthPlain(tape)} ${lengthUnit()} narrow, sleeves up to ${lengthPlain(sleeve)} ${lengthUnit()} short, ${forgottenPly === 0 ? 'no ply forgotten' : `a ply forgotten once in ${forgottenPly}`}.`;

/** Never all where one piece does not. */
export const percent = (part: number): string =>
  `${part < 1 ? Math.min(part * 100, 99.9).toFixed(1) : (part * 100).toFixed(1)} %`;

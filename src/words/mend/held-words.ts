// How a mend holds when it is wound by hand: the share of pieces that meet, and what lifts it. A mend to the edge is said to
// be one.

import type { DesignFile } from '#model/schema/schema.ts';
import type { Held } from '#mend/hold/slack.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { lengthUnit } from '#words/text/length-unit.ts';
import { lengthUp } from '#words/text/number-words.ts';
import { percent } from './spread-words.ts';

/** `wound by hand 0.0 % of pieces meet; with every sleeve 0.8 mm longer, 99.0 %`. */
export function heldWords({ share, drawn, isCut, slack, isSlackCut }: Held, doc: DesignFile): string {
  const pieces = isCut ? `of the ${drawn} pieces that time was left for` : 'of pieces';
  const now =
    drawn === 0
      ? 'wound by hand: no time was left to draw pieces'
      : `wound by hand ${percent(share)} ${pieces} meet`;
  if (slack === null)
    return isSlackCut ? `${now}; the search for the slack that lifts it was cut short` : now;
  return slack.of === 'mend'
    ? `${now}; with ${fieldWords(doc, slack.field)} at ${lengthUp(slack.to)} ${lengthUnit()}, and the other lengths as much wider, ${percent(slack.share)}`
    : `${now}, for what wanders elsewhere; with ${grownWords(slack)}, ${percent(slack.share)}`;
}

const grownWords = ({ of, by, sleevesBy }: NonNullable<Held['slack']>): string =>
  of === 'sleeves'
    ? `every sleeve ${lengthUp(by)} ${lengthUnit()} longer`
    : `every margin ${lengthUp(by)} ${lengthUnit()} wider and every sleeve ${lengthUp(sleevesBy)} ${lengthUnit()} longer`;

// Why there is no mend, and what would have to be known or done outside the winding.

import type { NoMend } from '#mend/search/no-mend.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { fieldWords } from '#words/design/field-words.ts';
import { listed } from '#words/paths/path-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { spotWords } from '#words/text/answer-words.ts';
import { circuitNames } from './circuit-names.ts';

export function noMendWords(none: NoMend, doc: DesignFile): string {
  switch (none.why) {
    case 'meets':
      return 'Nothing needs mending: the build meets what is asked.';
    case 'unknown':
      return `Whatever is mended, ${listed(none.pairs.map((pair) => circuitNames(pair, doc)))} stays not shown; what would have to be known: ${listed(none.fields.map((field) => fieldWords(doc, field)))}.`;
    case 'no-act':
      return noActWords(none);
    case 'stopped':
      return 'The search ended before a mend was found.';
  }
}

function noActWords({ spots, beyond }: Extract<NoMend, { why: 'no-act' }>): string {
  const stays = `No change of the trade mends it: ${listed(spots.map(({ kind }) => spotWords(kind)))} ${spots.length === 1 ? 'stays' : 'stay'}.`;
  if (beyond !== null)
    return `${stays} The tables of the rule book end before ${beyond.place} (${beyond.quantity}): no length is shown to do.`;
  return [stays, ...spots.flatMap((spot) => [spotSays(spot), outside(spot)])].filter(Boolean).join(' ');
}

/** A sentence on what would help, where it lies outside the winding: of the others the search has tried it. */
const outside = (spot: Parameters<typeof spotMend>[0]): string =>
  spot.cause.of === 'path' && !spot.kind.startsWith('short-') ? '' : spotMend(spot);

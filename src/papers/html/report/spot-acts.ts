// The weak spots by what would mend them: few acts for many places, each with its target. Targets follow from what is missing
// and are not judged here: the page tries them on, and the search for mends judges them.

import { changesOf } from '#mend/acts/act.ts';
import { actsOfSpots } from '#mend/acts/acts-of-spots.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { actWords } from '#words/mend/mend-words.ts';
import { capitalised, spotWords } from '#words/text/answer-words.ts';
import { pairNames, spotFigure } from '#words/verdict/pair-words.ts';
import { table, tag, wholeBlock, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

/** More ways than this are for the page that searches them. */
const MOST_ACTS = 5;
const MOST_SPOTS = 8;

export function spotActs({ judgement, looks }: ReportParts, designText: string): Markup | null {
  const spots = judgement.verdict.weakSpots;
  const doc = buildOf(designText);
  const acts = doc === null ? [] : actsOfSpots(doc, spots).slice(0, MOST_ACTS);
  const shown = spots
    .slice(0, MOST_SPOTS)
    .map((spot, i) => [
      String(i + 1),
      capitalised(spotWords(spot.kind)),
      [spot.between === null ? '' : pairNames(spot.between, looks), spot.section]
        .filter((part) => part !== '')
        .join('; '),
      spotFigure(spot),
    ]);
  const more = spots.length - shown.length;
  const ways = acts.map(({ act, spots: places }) => [
    doc === null ? '' : actWords(changesOf(doc, [act]), doc),
    places.map((place) => place + 1).join(', '),
  ]);
  if (spots.length === 0) return null;
  return wholeBlock(
    'Weak spots, worst first, and what would mend them',
    table(
      [
        { title: '' },
        { title: 'weak spot' },
        { title: 'where' },
        { title: 'reached of asked', figures: true },
      ],
      shown,
    ),
    more > 0 ? tag('p', { class: 'note' }, `${more} more in the annex.`) : null,
    table([{ title: 'what would mend them; to be judged when done' }, { title: 'places' }], ways),
  );
}

/** Null for a text that holds no build: then its spots are told without acts. */
function buildOf(text: string): DesignFile | null {
  const found = JSON.parse(text) as Partial<DesignFile>;
  return found.layers === undefined || found.windings === undefined ? null : (found as DesignFile);
}

// Weak spots, worst first: the first ones seen close, all of them in words.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { capitalised, spotWords } from '#words/text/answer-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { pairNames, spotFigure } from '#words/verdict/pair-words.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { closeUp } from '#drawing/svg/svg-close-up.ts';
import { block, raw, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

/** More pictures than this make the report heavy without saying more. */
const MOST_PICTURES = 9;

export function spots(parts: ReportParts): Markup | null {
  const all = parts.judgement.verdict.weakSpots;
  if (all.length === 0) return null;
  const [seen, told] = [all.slice(0, MOST_PICTURES), all.slice(MOST_PICTURES)];
  const figures = seen.map((spot, k) =>
    tag('figure', {}, picture(spot, k, parts), tag('figcaption', {}, words(spot, k, parts))),
  );
  const rest = told.map((spot, k) => tag('p', {}, words(spot, k + MOST_PICTURES, parts)));
  return block(
    'Weak spots seen close',
    tag('div', { class: figures.length <= 2 || figures.length === 4 ? 'spots few' : 'spots' }, figures),
    rest,
  );
}

function picture(spot: WeakSpot, place: number, { design, judgement, theme }: ReportParts): Content {
  const scene = sceneOf(design, judgement, spot.section, { spot: place, elsewhere: 0 });
  if (scene === null) return null;
  const label = `Spot ${place + 1}: ${spotWords(spot.kind)}`;
  const prefix = `spot${place + 1}-`;
  return raw(closeUp(scene, spot.at, { theme: theme.name, width: 320, height: 200, prefix, label }));
}

function words(spot: WeakSpot, place: number, { looks }: ReportParts): Content {
  const where = [spot.between === null ? '' : pairNames(spot.between, looks), spot.section, spotFigure(spot)];
  return [
    tag('b', {}, `${place + 1} ${capitalised(spotWords(spot.kind))}`),
    `; ${where.filter((part) => part !== '').join('; ')}. ${spotSays(spot)} ${spotMend(spot)}`.trimEnd(),
  ];
}

// Weak spots, worst first: the first ones seen close, all of them in words.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { capitalised, spotWords } from '#words/text/answer-words.ts';
import { spotMend, spotSays } from '#words/spots/spot-says.ts';
import { pairNames, spotFigure } from '#words/verdict/pair-words.ts';
import type { Scene } from '#drawing/scene/scene.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import { closeUp } from '#drawing/svg/svg-close-up.ts';
import { block, raw, tag, type Content, type Markup } from '#papers/html/page/markup.ts';
import type { ReportParts } from '#papers/html/page/report-parts.ts';

/** More pictures than this make the report heavy without saying more. */
const MOST_PICTURES = 9;
/** By whether two or three stand in a row: as large as the printed page shows them, so that words keep their size. */
const SIZES = { few: { width: 332, height: 208 }, many: { width: 216, height: 135 } } as const;
type Size = (typeof SIZES)[keyof typeof SIZES];

export function spots(parts: ReportParts): Markup | null {
  const all = parts.judgement.verdict.weakSpots;
  if (all.length === 0) return null;
  const views = viewsOf(parts);
  const [seen, told] = [views.slice(0, MOST_PICTURES), views.slice(MOST_PICTURES)];
  const across = seen.length <= 2 || seen.length === 4 ? 'few' : 'many';
  const figures = seen.map((view) =>
    tag(
      'figure',
      {},
      picture(view, SIZES[across], parts),
      view.spots.map((k) => tag('figcaption', {}, words(all[k]!, k, parts))),
    ),
  );
  const rest = told.flatMap((view) => view.spots.map((k) => tag('p', {}, words(all[k]!, k, parts))));
  return block(
    'Weak spots seen close',
    tag('div', { class: across === 'few' ? 'spots few' : 'spots' }, figures),
    rest,
  );
}

/** What one picture shows; null where none can be drawn. */
interface View {
  readonly scene: Scene | null;
  /** Places in the list of weak spots. */
  readonly spots: readonly number[];
}

/** Spots whose pictures would be equal but for the number on the flag share one. */
function viewsOf({ design, judgement, theme }: ReportParts): readonly View[] {
  const views = new Map<string, View>();
  judgement.verdict.weakSpots.forEach((spot, k) => {
    const scene = sceneOf(design, judgement, spot.section, { spot: k, elsewhere: 0 });
    const look = { ...SIZES.many, theme: theme.name, prefix: '', label: '' };
    const key = scene === null ? `${k}` : closeUp({ ...scene, flags: [] }, spot.at, look);
    const equal = views.get(key);
    views.set(key, equal === undefined ? { scene, spots: [k] } : { ...equal, spots: [...equal.spots, k] });
  });
  return [...views.values()];
}

function picture({ scene, spots: of }: View, size: Size, { judgement, theme }: ReportParts): Content {
  const [first, ...others] = of;
  if (scene === null || first === undefined) return null;
  const spot = judgement.verdict.weakSpots[first]!;
  const numbers = [first, ...others].map((k) => k + 1).join(', ');
  const label = `Spot ${numbers}: ${spotWords(spot.kind)}`;
  const look = { ...size, theme: theme.name, prefix: `spot${first + 1}-`, label };
  return raw(closeUp(scene, spot.at, look));
}

function words(spot: WeakSpot, place: number, { looks }: ReportParts): Content {
  const where = [spot.between === null ? '' : pairNames(spot.between, looks), spot.section, spotFigure(spot)];
  return [
    tag('b', {}, `${place + 1} ${capitalised(spotWords(spot.kind))}`),
    `; ${where.filter((part) => part !== '').join('; ')}. ${spotSays(spot)} ${spotMend(spot)}`.trimEnd(),
  ];
}

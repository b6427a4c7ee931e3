// Two builds drawn to one scale beside each other, the path of the same pair in both, moved edges as they stood and stand.

import { besideSvg, frameOf } from '#drawing/beside/beside-svg.ts';
import { sceneOf } from '#drawing/compose/scene-of.ts';
import type { Theme } from '#drawing/scene/palette.ts';
import { alignLayers } from '#model/edit/align-layers.ts';
import { worstFirst } from '#words/verdict/pair-words.ts';
import { raw, tag, type Markup } from '#papers/html/page/markup.ts';
import type { ComparedBuild } from './compared-build.ts';

/** Pixels across, of each of the two on A4 with the gap between them: its words keep their size in print. */
const WIDTH = 328;

/** Null where either has no plain section. */
export function comparedDrawing(
  a: ComparedBuild,
  b: ComparedBuild,
  { theme, prefix }: { readonly theme: Theme; readonly prefix: string },
): Markup | null {
  const pair = worstFirst(a.judgement.verdict)[0]?.between ?? null;
  const [was, is] = [a, b].map(({ design, judgement }) => sceneOf(design, judgement, 'plain', { pair }));
  if (was === null || was === undefined || is === null || is === undefined) return null;
  const places = new Map(alignLayers(a.doc.layers, b.doc.layers).map((layer) => [layer.b, layer.a] as const));
  const frame = frameOf([was, is]);
  const options = { theme: theme.name, width: WIDTH, frame, printed: true };
  const before = { scene: was, layerOf: (layer: number) => places.get(layer) ?? null };
  return tag(
    'figure',
    { class: 'two' },
    side(a.says, besideSvg(was, { ...options, prefix: `${prefix}a-`, says: a.says })),
    side(b.says, besideSvg(is, { ...options, prefix: `${prefix}b-`, says: b.says, before })),
    tag(
      'figcaption',
      {},
      'Both at one scale, the plain section: a lead does not lie on it. Broken line: an edge stood here; heavy line: it stands here.',
    ),
  );
}

const side = (says: string, svg: string): Markup =>
  tag('div', {}, tag('p', { class: 'small' }, says), raw(svg));

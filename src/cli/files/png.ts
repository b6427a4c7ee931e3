// A drawing as pixels, twice as fine as on the screen so that plies stay apart in print. The rasteriser is an optional
// package, for it is built for each kind of machine; where it is missing, or no font is there for the words, that is said.

import { createRequire } from 'node:module';
import type { Resvg } from '@resvg/resvg-js';

type Rasteriser = { readonly Resvg: typeof Resvg };

export type Png =
  { readonly kind: 'png'; readonly bytes: Uint8Array } | { readonly kind: 'none'; readonly why: string };

const SCALE = 2;
/** Any of them shows the words; the drawing's own wishes come first. */
const FAMILY = 'DejaVu Sans';

export function pngOf(svg: string): Png {
  const found = rasteriser();
  if (found === null)
    return { kind: 'none', why: 'the package @resvg/resvg-js is not installed; --out X.svg needs nothing' };
  const render = (drawing: string): ReturnType<Resvg['render']> =>
    new found.Resvg(drawing, {
      fitTo: { mode: 'zoom', value: SCALE },
      font: { loadSystemFonts: true, defaultFontFamily: FAMILY, sansSerifFamily: FAMILY },
    }).render();
  // a drawing without its figures would say less than it seems to
  if (render(LETTER).pixels.every((level) => level === 0))
    return { kind: 'none', why: 'this machine has no font for the words; --out X.svg needs none' };
  return { kind: 'png', bytes: render(svg).asPng() };
}

const LETTER =
  '<svg xmlns="http://www.w3.org/2000/svg" width="20" height="20"><text x="2" y="16" font-size="16" font-family="sans-serif">8</text></svg>';

/** Resolved from where the program lies, never from where it is run. */
function rasteriser(): Rasteriser | null {
  try {
    return createRequire(import.meta.url)('@resvg/resvg-js') as Rasteriser;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'MODULE_NOT_FOUND') return null;
    throw error;
  }
}

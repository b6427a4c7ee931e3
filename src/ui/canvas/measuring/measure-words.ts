// What was measured on the drawing, in one line: `3.21 straight, through 3 plies; 4.83 along surfaces`.

import type { MeasuredWay } from '#state/document/measured-way.ts';
import { dimension, plies } from '#words/text/number-words.ts';

export function measureWords(length: number, way: MeasuredWay | null): string {
  const straight = `${dimension(rounded(length))} straight`;
  if (way === null) return straight;
  const solids = way.solids.map((kind) => NAMES[kind] ?? kind);
  const through = [...(way.plies > 0 ? [plies(way.plies)] : []), ...solids, ...(way.metal ? ['metal'] : [])];
  const crossed = through.length === 0 ? ', through air' : `, through ${through.join(', ')}`;
  const surface =
    way.surface === null ? 'no way along surfaces' : `${dimension(rounded(way.surface))} along surfaces`;
  return `${straight}${crossed}; ${surface}`;
}

const rounded = (mm: number): number => Math.round(mm * 100) / 100;

const NAMES: Readonly<Record<string, string>> = {
  block: 'a margin',
  wireCover: 'a wire’s cover',
  sleeve: 'a sleeve',
  moulding: 'the former',
  wrap: 'tape round the core',
};

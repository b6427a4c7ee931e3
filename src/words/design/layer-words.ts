// What the list says of each layer in a name and one line, and of the core and the former that hold them.
// Rows and turns per row come from the judgement's fit; before there is one the line goes without.

import type { Design } from '#model/design.ts';
import type { Layer, Margins, ScreenLayer, TapeLayer, WindingLayer } from '#model/design/layer.ts';
import type { Wire } from '#model/design/winding.ts';
import type { Side } from '#units/terms.ts';
import { isKnown, type Known, type Reading, type Unknown } from '#model/quantity/reading.ts';
import type { Fit } from '#judge/verdict/verdict.ts';
import { inMm, type Nm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import { dimension, lengthDown } from '#words/text/number-words.ts';
import { materialWords } from './material-words.ts';

export interface LayerWords {
  readonly name: string;
  readonly says: string;
}

type LayerFit = Fit['chambers'][number]['layers'][number];

export function layerWords(design: Design, index: number, fit: Fit | null): LayerWords {
  const layer = design.layers[index];
  if (layer === undefined) throw new RangeError(`no layer ${index}`);
  switch (layer.kind) {
    case 'winding':
      return windingWords(design, layer, fitOf(fit, index));
    case 'tape':
      return { name: isOutermost(design.layers, index) ? 'Outer wrap' : 'Tape', says: tapeWords(layer) };
    case 'screen':
      return screenWords(design, layer);
    default:
      return unreachable(layer);
  }
}

/** `3.00`, `3.10 ± 0.20`, `unknown`. */
export function reading(length: Reading<Nm>): string {
  if (!isKnown(length)) return 'unknown';
  return length.plusMinus === 0 ? exact(length) : `${exact(length)} ± ${dimension(inMm(length.plusMinus))}`;
}

const exact = (length: Known<Nm>): string => dimension(inMm(length.value));

export function coreWords(design: Design, airAbove: number | null): LayerWords {
  const { bond } = design.core;
  const circuit = design.circuits.find(({ id }) => id === bond)?.name;
  const bonded =
    typeof bond !== 'string' ? 'bond unknown' : bond === 'floating' ? 'floating' : `on ${circuit ?? bond}`;
  return {
    name: 'Core',
    says: airAbove === null ? bonded : `${bonded}; ${lengthDown(airAbove)} of air below it`,
  };
}

export function formerWords({ former }: Design): LayerWords {
  const { wall, flange, material } = former;
  const tube =
    wall.kind === 'unknown'
      ? 'wall unknown'
      : wall.kind === 'plies'
        ? `wall of ${pliesOf(wall)}`
        : `wall ${reading(wall.thickness)}`;
  const made = typeof material === 'string' ? materialWords(material) : 'material unknown';
  const chambers = former.chambers.length > 1 ? `, ${former.chambers.length} chambers` : '';
  return { name: 'Former', says: `${made}, ${tube}, flanges ${reading(flange)}${chambers}` };
}

function windingWords(design: Design, layer: WindingLayer, fit: LayerFit | null): LayerWords {
  const winding = design.windings.find(({ id }) => id === layer.winding);
  const circuit = design.circuits.find(({ id }) => id === winding?.circuit);
  const alone = design.windings.filter((other) => other.circuit === winding?.circuit).length <= 1;
  const name = circuit === undefined ? layer.winding : circuit.name || circuit.id;
  const turns = turnWords(layer.turns);
  const parts = [
    winding === undefined ? '' : wireWords(winding.wire),
    layer.strands > 1 ? `${layer.strands} wires side by side` : '',
    fit === null ? '' : rowWords(layer.turns, fit),
  ];
  const place =
    layer.extent === null
      ? marginWords(layer.margins)
      : `from ${reading(layer.extent.from)} to ${reading(layer.extent.to)}`;
  return {
    name: `${alone ? name : `${name} ${layer.winding}`}, ${turns}`,
    says: `${parts.filter(Boolean).join(', ')}${place}`,
  };
}

/** `60 turns`, `one turn`, `turns unknown`. */
export function turnWords(turns: number | Unknown): string {
  if (typeof turns !== 'number') return 'turns unknown';
  return turns === 1 ? 'one turn' : `${turns} turns`;
}

export function wireWords(wire: Wire): string {
  const kind = typeof wire.kind === 'string' ? KINDS[wire.kind] : 'wire of unknown kind';
  const size = wire.conductor?.kind === 'known' ? wire.conductor : wire.overallDiameter;
  if (size === null || !isKnown(size)) return `${kind}, size unknown`;
  return `${kind} ${reading(size)}`;
}

const KINDS = {
  bare: 'bare',
  enamelled: 'enamelled',
  'fully-insulated': 'fully insulated',
  'layer-insulated': 'insulated in layers',
  litz: 'litz',
} as const;

function rowWords(turns: number | Unknown, { rows, turnsPerRow }: LayerFit): string {
  if (typeof turns !== 'number') return '';
  if (rows === 1) return 'one row';
  const last = turns - (rows - 1) * turnsPerRow;
  if (rows === 2) return `two rows: ${turnsPerRow} and ${last}`;
  return `${COUNTS[rows] ?? rows} rows`;
}

const COUNTS: Readonly<Record<number, string>> = {
  3: 'three',
  4: 'four',
  5: 'five',
  6: 'six',
  7: 'seven',
  8: 'eight',
};

function marginWords(margins: Margins): string {
  const { left, right } = margins;
  if (isZero(left.width) && isZero(right.width)) return '; flange to flange';
  const empty = [left, right].filter(({ width, filled }) => !isZero(width) && !filled).length;
  const note = empty === 0 ? '' : empty === 2 ? ', both empty' : ', one empty';
  return `; margins ${reading(left.width)}, ${reading(right.width)}${note}`;
}

const isZero = (length: Reading<Nm>): boolean =>
  isKnown(length) && length.value === 0 && length.plusMinus === 0;

const pliesOf = ({ plies, plyThickness }: Pick<TapeLayer, 'plies' | 'plyThickness'>): string => {
  const count = typeof plies !== 'number' ? 'plies unknown' : plies === 1 ? 'one ply' : `${plies} plies`;
  if (plyThickness === null) return count;
  return isKnown(plyThickness) ? `${count} of ${reading(plyThickness)}` : `${count} of unknown thickness`;
};

function tapeWords(layer: TapeLayer): string {
  const short = shortWords(layer.inset);
  return `${pliesOf(layer)}${short === '' ? ', flange to flange' : `; ${short}`}`;
}

/** How far a band stops before the flanges. */
function shortWords(inset: Readonly<Record<Side, Known<Nm>>>): string {
  const sides = (['left', 'right'] as const).filter((side) => !isZero(inset[side]));
  if (sides.length === 0) return '';
  const [first] = sides;
  if (sides.length === 1 && first !== undefined)
    return `${reading(inset[first])} short of the ${first} flange`;
  return `${reading(inset.left)} and ${reading(inset.right)} short of the flanges`;
}

function screenWords(design: Design, layer: ScreenLayer): LayerWords {
  const circuit = design.circuits.find(({ id }) => id === layer.circuit);
  const short = shortWords(layer.inset);
  return {
    name: layer.circuit === null ? 'Screen, floating' : `Screen on ${circuit?.name || layer.circuit}`,
    says: `${reading(layer.thickness)} thick${short === '' ? ', flange to flange' : `; ${short}`}`,
  };
}

/** The last layer of its chamber. */
function isOutermost(layers: readonly Layer[], index: number): boolean {
  const chamber = layers[index]?.chamber;
  return !layers.slice(index + 1).some((layer) => layer.chamber === chamber);
}

function fitOf(fit: Fit | null, index: number): LayerFit | null {
  return fit?.chambers.flatMap(({ layers }) => layers).find(({ layer }) => layer === index) ?? null;
}

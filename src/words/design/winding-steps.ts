// The build as numbered steps for whoever winds it, in the order of the hand: what to lay, how long, what to measure
// before the next layer hides it.

import type { Design } from '#model/design.ts';
import type { Margin, Margins, ScreenLayer, TapeLayer, WindingLayer } from '#model/design/layer.ts';
import type { Lead, Winding } from '#model/design/winding.ts';
import type { Side } from '#units/terms.ts';
import { isKnown, type Unknown } from '#model/quantity/reading.ts';
import type { Fit } from '#judge/verdict/verdict.ts';
import { inMm, nm, type Nm } from '#units/quantity.ts';
import { unreachable } from '#units/unreachable.ts';
import { capitalised } from '#words/text/answer-words.ts';
import { layerWords, reading, turnWords, wireWords } from './layer-words.ts';
import { dimension } from '#words/text/number-words.ts';
import { materialWords } from './material-words.ts';

export interface WindingStep {
  readonly title: string;
  readonly does: readonly string[];
  /** Each gets a box to tick and a place for the figure. */
  readonly measures: readonly string[];
}

export function windingSteps(design: Design, fit: Fit): readonly WindingStep[] {
  return [formerStep(design), ...design.layers.map((_, k) => layerStep(design, k, fit)), coreStep(design)];
}

function formerStep({ former }: Design): WindingStep {
  const widths = former.chambers.map(({ width }) => reading(width)).join(' and ');
  return {
    title: 'Former',
    does: [
      `Material ${typeof former.material === 'string' ? materialWords(former.material) : 'unknown'}, chamber ${widths} wide, ${reading(former.height)} high.`,
      'No crack, no burr, flanges square.',
    ],
    measures: ['width between the flanges', 'wall of the tube'],
  };
}

function layerStep(design: Design, index: number, fit: Fit): WindingStep {
  const layer = design.layers[index];
  if (layer === undefined) throw new RangeError(`no layer ${index}`);
  const { name } = layerWords(design, index, fit);
  const chamber = design.former.chambers.length > 1 ? [`Chamber ${layer.chamber + 1} from the left.`] : [];
  switch (layer.kind) {
    case 'winding':
      return { title: name, ...windingStep(design, layer, index, fit, chamber) };
    case 'tape':
      return { title: name, ...tapeStep(design, layer, chamber) };
    case 'screen':
      return { title: name, ...screenStep(layer, chamber) };
    default:
      return unreachable(layer);
  }
}

type Body = Omit<WindingStep, 'title'>;

function windingStep(
  design: Design,
  layer: WindingLayer,
  index: number,
  fit: Fit,
  chamber: readonly string[],
): Body {
  const winding = design.windings.find(({ id }) => id === layer.winding);
  if (winding === undefined) throw new RangeError(`no winding ${layer.winding}`);
  const own = design.layers.flatMap((each, k) =>
    each.kind === 'winding' && each.winding === layer.winding ? [k] : [],
  );
  const rows = fit.chambers.flatMap(({ layers }) => layers).find((each) => each.layer === index);
  const full = rows === undefined ? '' : `, ${rows.turnsPerRow} in a full row`;
  const strands = layer.strands > 1 ? `, ${layer.strands} wires side by side` : '';
  const place =
    layer.extent === null
      ? []
      : [`Between ${reading(layer.extent.from)} and ${reading(layer.extent.to)} from the left flange.`];
  return {
    does: [
      ...chamber,
      ...marginLines(layer.margins),
      ...(own[0] === index ? [leadLine(winding, 'start')] : []),
      `${capitalised(turnWords(layer.turns))} of ${wireWords(winding.wire)}${strands}${full}, ${layer.spread ? 'spread over the width' : 'close together'}.`,
      ...place,
      ...(winding.anchored ? ['Hold the first and the last turn down.'] : []),
      ...(own.at(-1) === index ? [leadLine(winding, 'finish')] : []),
    ],
    measures: ['turns', 'bare width left of the first turn', 'bare width right of the last turn'],
  };
}

function leadLine({ id, leads }: Winding, end: 'start' | 'finish'): string {
  const name = `${end === 'start' ? 'Start' : 'Finish'} of ${id}`;
  if (leads === 'not-judged') return `${name}: the file does not say how it leaves.`;
  const lead: Lead | Unknown = 'kind' in leads ? leads : leads[end];
  if ('kind' in lead) return `${name}: unknown how it leaves.`;
  const way = typeof lead.way === 'string' ? WAYS[lead.way] : 'way unknown';
  const cross = lead.crossTape > 0 ? `, ${lead.crossTape} plies of tape between it and its own winding` : '';
  return `${name}: from the ${side(lead.at)} end, out at the ${side(lead.exit)} flange ${way}${cross}; ${sleeveWords(lead)}.`;
}

const WAYS = { slot: 'through the slot', riser: 'up the inside of the flange', top: 'over the rim' } as const;

const side = (value: Side | Unknown): string => (typeof value === 'string' ? value : 'unknown');

function sleeveWords({ sleeve }: Lead): string {
  if (sleeve === null) return 'no sleeve';
  if (!('wall' in sleeve)) return 'sleeve unknown';
  return `sleeve ${sleeve.material === null ? '' : materialWords(sleeve.material)} of wall ${reading(sleeve.wall)}, ${reading(sleeve.into)} inside the flange`.replace(
    '  ',
    ' ',
  );
}

const marginLines = (margins: Margins): readonly string[] =>
  (['left', 'right'] as const).flatMap((at) => {
    const line = marginLine(at, margins[at]);
    return line === null ? [] : [line];
  });

function marginLine(at: Side, { width, filled, height, moulded, material }: Margin): string | null {
  if (isKnown(width) && width.value === 0) return null;
  if (!filled) return `Leave ${reading(width)} free at the ${at} flange.`;
  const what = moulded ? 'moulded ring' : material === null ? 'margin tape' : materialWords(material);
  const high = height === null ? 'as high as the winding' : `${reading(height)} high`;
  return `${capitalised(what)}, ${reading(width)} wide and ${high}, tight against the ${at} flange.`;
}

function tapeStep(design: Design, layer: TapeLayer, chamber: readonly string[]): Body {
  const plies = typeof layer.plies === 'number' ? `${layer.plies} plies` : 'an unknown number of plies';
  const width = tapeWidth(design, layer);
  const edges =
    layer.inset.left.value === 0 && layer.inset.right.value === 0
      ? 'Both edges touch the flanges all the way round.'
      : `Left edge ${reading(layer.inset.left)}, right edge ${reading(layer.inset.right)} short of the flange.`;
  return {
    does: [
      ...chamber,
      ...marginLines(layer.margins),
      `${capitalised(plies)} of ${layer.material === null ? 'tape' : materialWords(layer.material)}${width === null ? '' : `, ${width} wide`}.`,
      edges,
      ...(layer.turnUp === null ? [] : [`Turn the edges ${reading(layer.turnUp)} up the flanges.`]),
    ],
    measures: [
      'plies, counted at the pins',
      'plies, counted opposite',
      'gap at the left flange',
      'gap at the right flange',
    ],
  };
}

/** Chamber less insets and margins, where all of them are known. */
function tapeWidth(design: Design, layer: TapeLayer): string | null {
  const chamber = design.former.chambers[layer.chamber]?.width.value;
  const { left, right } = layer.margins;
  if (chamber === undefined || !isKnown(left.width) || !isKnown(right.width)) return null;
  const taken: readonly Nm[] = [
    layer.inset.left.value,
    layer.inset.right.value,
    left.width.value,
    right.width.value,
  ];
  return dimension(inMm(nm(taken.reduce<number>((rest, each) => rest - each, chamber))));
}

function screenStep(layer: ScreenLayer, chamber: readonly string[]): Body {
  return {
    does: [
      ...chamber,
      ...marginLines(layer.margins),
      `Foil of ${reading(layer.thickness)}, ${reading(layer.inset.left)} short of the left and ${reading(layer.inset.right)} short of the right flange.`,
      layer.overlap === null
        ? 'The ends must not touch each other.'
        : 'The ends overlap with tape between; they must not touch.',
      layer.circuit === null ? 'No lead.' : `Lead to ${layer.circuit}.`,
    ],
    measures: ['open between the ends (no contact)', 'gap at the left flange', 'gap at the right flange'],
  };
}

function coreStep({ core }: Design): WindingStep {
  const bond = typeof core.bond === 'string' ? core.bond : 'unknown';
  return {
    title: 'Core',
    does: [
      `Air to the core ${reading(core.outerGap)} above the flanges.`,
      ...(core.wrap === null
        ? []
        : [
            `Wrap the core with ${typeof core.wrap.plies === 'number' ? core.wrap.plies : 'an unknown number of'} plies of ${core.wrap.material === null ? 'tape' : materialWords(core.wrap.material)}.`,
          ]),
      bond === 'floating' ? 'The core is joined to nothing.' : `Core bond: ${bond}.`,
    ],
    measures: ['height of the stack'],
  };
}

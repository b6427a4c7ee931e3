// What a path stands on that nobody knows, as conditions to be told in the same sentence.

import type { Condition, CountedAs } from '#judge/verdict/assumed.ts';
import type { Counted } from '#judge/assume/fill-context.ts';
import { openHeights } from '#judge/fill/grown-stack.ts';
import type { FoundPath } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import { laidLead } from './laid-lead.ts';
import { LEAD_KINDS, type PathPlace } from './spot-kind.ts';

/** More conditions than these say nothing to a reader. */
const MOST_TOLD = 3;

export interface Unknowns {
  readonly counted: readonly Counted[];
  readonly deciding: ReadonlySet<string>;
}

/** Empty where nothing that the path runs along or through is open. */
export function conditionsOf(
  design: Design,
  path: FoundPath,
  place: PathPlace,
  { counted, deciding }: Unknowns,
): readonly Condition[] {
  const along = fieldsAlong(design, path, place);
  const open = counted.filter(
    ({ field, kind }) => kind !== 'default' && along.some((part) => isPart(field, part)),
  );
  const decisive = open.filter(({ field }) => deciding.has(field));
  // a house rule is a figure; only where it decides is it told as what is not known
  const told = decisive.length > 0 ? decisive : open.filter(({ kind }) => kind === 'unknown');
  // over the core a layer of unknown height counts as so high that the core is near
  const high = place.kind === 'core-bridge' ? openHeights(design).flatMap(({ fields }) => fields) : [];
  const conditions = told.map((each): Condition =>
    high.includes(each.field) ? { if: 'at-the-rim' } : conditionOf(design, each),
  );
  const once = new Map(conditions.map((each) => [JSON.stringify(each), each]));
  return [...once.values()].slice(0, MOST_TOLD);
}

/** A field, one inside it, or one that holds it. */
const isPart = (field: string, part: string): boolean =>
  field === part || field.startsWith(`${part}.`) || part.startsWith(`${field}.`);

function fieldsAlong(
  design: Design,
  { section, chain, tools }: FoundPath,
  place: PathPlace,
): readonly string[] {
  const pieces = chain.pieces.flatMap((piece) => (piece.kind === 'inside' ? [piece.piece] : []));
  const kinds = pieces.flatMap(({ punctured }) =>
    punctured.map(({ stuff }) => tools.stuffs.get(stuff)?.kind),
  );
  const lays = LEAD_KINDS.has(place.kind) ? (section?.lays ?? []) : [];
  const isOnCore = place.kind === 'core-bridge';
  return [
    ...place.layers.flatMap((i) => [`layers[${i}]`, ...wireOf(design, i)]),
    ...lays.flatMap((name) => laidLead(design, name)).map(({ field }) => field),
    ...(isOnCore ? ['core'] : []),
    ...(kinds.includes('wall') || isOnCore ? ['former.wall', 'former.flange'] : []),
    ...chain.pieces.flatMap((piece) =>
      piece.kind === 'outside' && piece.entry !== null ? [`outside[${piece.entry}]`] : [],
    ),
  ];
}

function wireOf({ layers, windings }: Design, index: number): readonly string[] {
  const layer = layers[index];
  if (layer?.kind !== 'winding') return [];
  return [`windings[${windings.findIndex(({ id }) => id === layer.winding)}].wire`];
}

function conditionOf(design: Design, { field, counted }: Counted): Condition {
  const layer = Number(/^layers\[(\d+)\]/.exec(field)?.[1] ?? -1) + 1;
  const winding = design.windings[Number(/^windings\[(\d+)\]/.exec(field)?.[1] ?? -1)]?.id ?? '';
  const side = field.includes('.right.') ? 'right' : 'left';
  const found = CONDITIONS.find(([pattern]) => pattern.test(field));
  return found === undefined
    ? { if: 'counted', field, counted }
    : found[1]({ layer, winding, side, counted });
}

interface Place {
  readonly layer: number;
  readonly winding: string;
  readonly side: 'left' | 'right';
  readonly counted: CountedAs;
}

const CONDITIONS: readonly (readonly [RegExp, (place: Place) => Condition])[] = [
  [/\.margins\.(left|right)\.width$/, ({ layer, side }) => ({ if: 'reaches-flange', layer, side })],
  [/\.plies$/, ({ layer }) => ({ if: 'one-ply', layer })],
  [/\.turns$/, ({ layer }) => ({ if: 'full-row', layer })],
  [/\.plyWithstand$/, ({ layer, counted }) => ({ if: 'ply-stands', layer, counted })],
  [/^former\.wall$/, () => ({ if: 'thin-wall' })],
  [/^former\.flange$/, () => ({ if: 'thin-flange' })],
  [/^core\.bond$/, () => ({ if: 'core-tied' })],
  [/^core\.outerGap$/, () => ({ if: 'core-near' })],
  [/\.wire\.kind$/, ({ winding }) => ({ if: 'enamelled', winding })],
  [/\.wire\.(approval|insulationLayers)$/, ({ winding }) => ({ if: 'cover-earns-nothing', winding })],
  [/\.wire\.withstand$/, ({ winding }) => ({ if: 'cover-as-shown', winding })],
  [/\.sleeve$/, () => ({ if: 'no-sleeve' })],
  [/\.sleeve\.wall$/, () => ({ if: 'thin-sleeve' })],
  [/\.sleeve\.into$/, () => ({ if: 'short-sleeve' })],
  [/\.(sleeve\.)?withstand$/, () => ({ if: 'no-strength' })],
  [/\.way$/, () => ({ if: 'riser' })],
  [/\.(at|exit|side)$/, () => ({ if: 'that-side' })],
  [/\.(leads|links|start|finish|lead)(\[\d+\])?$/, () => ({ if: 'bare-riser' })],
  [/\.(clearance|creepage)$/, () => ({ if: 'no-distance' })],
  [/\.materialGroup$/, () => ({ if: 'worst-tracking' })],
];

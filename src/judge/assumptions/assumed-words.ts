// What a path stands on that nobody knows, as conditions to be told in the same sentence: `if the lead climbs the flange`.

import type { Counted } from '#judge/assume/fill-context.ts';
import type { FoundPath } from '#judge/paths/case-result.ts';
import type { Design } from '#model/design.ts';
import type { PathPlace } from '#judge/spots/spot-kind.ts';

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
): readonly string[] {
  const along = fieldsAlong(design, path, place);
  const open = counted.filter(
    ({ field, kind }) => kind !== 'default' && along.some((part) => isPart(field, part)),
  );
  const decisive = open.filter(({ field }) => deciding.has(field));
  // a house rule is a figure; only where it decides is it told as what is not known
  const told = decisive.length > 0 ? decisive : open.filter(({ kind }) => kind === 'unknown');
  return [...new Set(told.map((each) => conditionOf(design, each)))].slice(0, MOST_TOLD);
}

/** A field, one inside it, or one that holds it. */
const isPart = (field: string, part: string): boolean =>
  field === part || field.startsWith(`${part}.`) || part.startsWith(`${field}.`);

/** `, if this is so and that`; empty where nothing is open. */
export const conditionWords = (conditions: readonly string[]): string =>
  conditions.length === 0
    ? ''
    : `, ${conditions.map((each, i) => (i === 0 ? each : each.replace(/^if /, ''))).join(' and ')}`;

function fieldsAlong(
  design: Design,
  { section, chain, tools }: FoundPath,
  place: PathPlace,
): readonly string[] {
  const pieces = chain.pieces.flatMap((piece) => (piece.kind === 'inside' ? [piece.piece] : []));
  const kinds = pieces.flatMap(({ punctured }) => punctured.map(({ stuff }) => tools.stuffs[stuff]?.kind));
  const isOnLead = LEAD_KINDS.has(place.kind);
  const isOnCore = place.kind === 'core-bridge';
  return [
    ...place.layers.flatMap((i) => [`layers[${i}]`, ...wireOf(design, i)]),
    ...(isOnLead ? (section?.lays ?? []).flatMap((name) => leadField(design, name)) : []),
    ...(isOnCore ? ['core'] : []),
    ...(kinds.includes('wall') || isOnCore ? ['former.wall', 'former.flange'] : []),
    ...chain.pieces.flatMap((piece) =>
      piece.kind === 'outside' && piece.entry !== null ? [`outside[${piece.entry}]`] : [],
    ),
  ];
}

const LEAD_KINDS: ReadonlySet<string> = new Set(['lead-crossing', 'bare-lead', 'lead-in-margin']);

function wireOf({ layers, windings }: Design, index: number): readonly string[] {
  const layer = layers[index];
  if (layer?.kind !== 'winding') return [];
  return [`windings[${windings.findIndex(({ id }) => id === layer.winding)}].wire`];
}

/** The fields of the lead that a section names. */
function leadField({ windings }: Design, name: string): readonly string[] {
  const screen = /^screen (\d+)/.exec(name);
  if (screen) return [`layers[${Number(screen[1]) - 1}].lead`];
  const at = windings.findIndex(({ id }) => name.startsWith(`${id} `));
  if (at < 0) return [];
  const end = name.slice(windings[at]!.id.length + 1).split(' ')[0];
  return [`windings[${at}].${end === 'link' ? 'links' : `leads.${end}`}`];
}

function conditionOf(design: Design, { field, counted }: Counted): string {
  const layer = Number(/^layers\[(\d+)\]/.exec(field)?.[1] ?? -1) + 1;
  const winding = design.windings[Number(/^windings\[(\d+)\]/.exec(field)?.[1] ?? -1)]?.id ?? '';
  const side = field.includes('.right.') ? 'right' : 'left';
  for (const [pattern, words] of CONDITIONS)
    if (pattern.test(field)) return words({ layer, winding, side, counted });
  return `if ${field} is ${counted}`;
}

interface Place {
  readonly layer: number;
  readonly winding: string;
  readonly side: string;
  readonly counted: string;
}

const CONDITIONS: readonly (readonly [RegExp, (place: Place) => string])[] = [
  [/\.margins\.(left|right)\.width$/, ({ layer, side }) => `if layer ${layer} reaches the ${side} flange`],
  [/\.plies$/, ({ layer }) => `if layer ${layer} is one ply`],
  [
    /\.plyWithstand$/,
    ({ layer, counted }) =>
      counted.startsWith('no ')
        ? `if nothing is shown of what a ply of layer ${layer} stands`
        : `if a ply of layer ${layer} stands no more than ${counted}`,
  ],
  [/^former\.wall$/, () => 'if the former’s wall is no more than a ply of unknown strength'],
  [/^former\.flange$/, () => 'if the flange is no more than a ply of unknown strength'],
  [/^core\.bond$/, () => 'if the core is tied so that it is worst'],
  [/^core\.outerGap$/, () => 'if the core lies on the winding'],
  [/\.wire\.kind$/, ({ winding }) => `if the wire of ${winding} is enamelled`],
  [/\.wire\.(approval|insulationLayers)$/, ({ winding }) => `if the cover of ${winding} earns nothing`],
  [/\.sleeve$/, () => 'if the lead has no sleeve'],
  [/\.sleeve\.wall$/, () => 'if the wall of its sleeve is too thin to count'],
  [/\.sleeve\.into$/, () => 'if its sleeve ends at the flange'],
  [/\.(sleeve\.)?withstand$/, () => 'if nothing of its strength is shown'],
  [/\.way$/, () => 'if the lead climbs the flange'],
  [/\.(at|exit|side)$/, () => 'if the lead runs on that side'],
  [/\.(leads|links|start|finish|lead)(\[\d+\])?$/, () => 'if the lead runs bare up the flange there'],
  [/\.(clearance|creepage)$/, () => 'if the distance that is not stated is none'],
];

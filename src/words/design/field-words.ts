// The name of a field in words: `layers[2].margins.left.width` -> `left margin, layer 3`.
// Used wherever the page or a list speaks of a field; the path itself stays the reference.

import { keysOf, type Key } from '#model/field-path.ts';
import { spaced } from '#words/text/spaced.ts';

/** What fields are called by: of a design, or of a file that is none yet. */
export interface Named {
  readonly windings?: readonly { readonly id?: string }[] | undefined;
  readonly circuits?: readonly { readonly name?: string | undefined }[] | undefined;
  readonly bridges?: readonly { readonly id?: string }[] | undefined;
  readonly parts?: readonly { readonly id?: string }[] | undefined;
}

/** A path that is none stands for itself. */
export function fieldWords(design: Named, path: string): string {
  const keys = keysOf(path);
  const [list, index] = keys ?? [];
  if (keys === null || list === undefined) return path;
  if (typeof index !== 'number') return sentence(keys);
  const inner = sentence(keys.slice(2));
  const owner = ownerOf(design, String(list), index);
  return inner === '' ? owner : `${inner}, ${owner}`;
}

function ownerOf(design: Named, list: string, index: number): string {
  switch (list) {
    case 'layers':
      return `layer ${index + 1}`;
    case 'windings':
      return `winding ${design.windings?.[index]?.id ?? index + 1}`;
    case 'circuits':
      return `circuit ${design.circuits?.[index]?.name ?? index + 1}`;
    case 'bridges':
      return `bridging part ${design.bridges?.[index]?.id ?? index + 1}`;
    case 'workingVoltages':
      return `working voltage ${index + 1}`;
    case 'parts':
      return `part ${design.parts?.[index]?.id ?? index + 1}`;
    default:
      return `${spaced(list)} ${index + 1}`;
  }
}

/** Inner fields first, as one says them: margins.left.width -> left margin. */
function sentence(keys: readonly Key[]): string {
  const names = keys.filter((key) => typeof key === 'string');
  const joined = names.join('.');
  const known = Object.entries(NAMES).find(
    ([pattern]) => joined === pattern || joined.endsWith(`.${pattern}`),
  );
  if (known === undefined)
    return [...names]
      .reverse()
      .map((name) => spaced(name))
      .join(' of ');
  const rest = joined === known[0] ? [] : joined.slice(0, -known[0].length - 1).split('.');
  return [
    known[1],
    ...rest
      .filter((name) => !QUIET.has(name))
      .reverse()
      .map((name) => spaced(name)),
  ].join(', ');
}

const QUIET = new Set(['leads', 'margins', 'inset']);

const NAMES: Readonly<Record<string, string>> = {
  'margins.left.width': 'left margin',
  'margins.right.width': 'right margin',
  'margins.left.filled': 'left margin filled',
  'margins.right.filled': 'right margin filled',
  'inset.left': 'left inset',
  'inset.right': 'right inset',
  'sleeve.wall': 'wall of the sleeve',
  'sleeve.into': 'reach of the sleeve',
  'sleeve.withstand': 'withstand of the sleeve',
  'leads.start': 'start lead',
  'leads.finish': 'finish lead',
  plyWithstand: 'withstand of a ply',
  'wire.approval': 'approval of the wire',
  'wire.insulationLayers': 'insulation layers of the wire',
  'wire.grade': 'grade of the wire',
  'wire.kind': 'kind of the wire',
  'wire.overallDiameter': 'diameter of the wire over all',
  workingVoltages: 'working voltage',
  'core.bond': 'bond of the core',
  'core.outerGap': 'gap to the core',
  'former.material': 'material of the former',
  'former.wall': 'wall of the former',
  'former.flange': 'flanges of the former',
  'surroundings.hottestInsulation': 'hottest temperature of the insulation',
  bareFrom: 'stripped length',
};

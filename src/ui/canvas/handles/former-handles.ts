// Handles of the former and of the core: tube wall, flanges, rim, chamber widths, dividers, gap to the core.
// The tube's outer face and the left flange's inner face are where measuring starts; they stay where they are.

import type { Design } from '#model/design.ts';
import type { Layer } from '#model/design/layer.ts';
import { isKnown, type Known, type Reading } from '#model/quantity/reading.ts';
import { mm, nm, type Nm } from '#units/quantity.ts';
import { LEAST_ROOM, LONGEST, type DrawnSection, type Handle } from './handle.ts';

const ZERO = mm(0);

export function formerHandles(
  design: Design,
  section: DrawnSection,
): { readonly core: readonly Handle[]; readonly former: readonly Handle[] } {
  const last = section.chambers.at(-1);
  if (last === undefined) return { core: [], former: [] };
  return {
    core: gapHandle(design, section, last.x1),
    former: [...heightHandle(design), ...chamberHandles(design, section), ...shellHandles(design, last.x1)],
  };
}

function heightHandle({ former }: Design): readonly Handle[] {
  const flange = isKnown(former.flange) ? former.flange.value : ZERO;
  return [
    along('y', former.height, {
      path: 'former.height',
      label: 'height of the former',
      span: [nm(-flange), ZERO],
    }),
  ];
}

/** A chamber's right face, and the far face of the divider that follows. */
function chamberHandles({ former, layers }: Design, section: DrawnSection): readonly Handle[] {
  const several = section.chambers.length > 1;
  return section.chambers.flatMap((face, index) => {
    const width = former.chambers[index]?.width;
    if (width === undefined) return [];
    const divider = former.dividers[index];
    // beside the stack the face belongs to the ends of the layers, as long as it rises above them
    const top = section.stackTops[index] ?? ZERO;
    const rim: readonly [Nm, Nm] = [top < former.height.value ? top : ZERO, former.height.value];
    const chamber = along('x', width, {
      path: `former.chambers[${index}].width`,
      label: several ? `width of chamber ${index + 1}` : 'width of the chamber',
      span: rim,
      origin: face.x0,
      least: nm(leastWidth(layers.filter((layer) => layer.chamber === index)) + LEAST_ROOM),
    });
    if (divider === undefined) return [chamber];
    return [
      chamber,
      along('x', divider, {
        path: `former.dividers[${index}]`,
        label: `divider ${index + 1}`,
        span: rim,
        origin: face.x1,
      }),
    ];
  });
}

function shellHandles({ former }: Design, right: Nm): readonly Handle[] {
  const { wall, flange, height } = former;
  const rim: readonly [Nm, Nm] = [ZERO, height.value];
  const tube =
    wall.kind === 'moulded'
      ? [
          along('y', wall.thickness, {
            path: 'former.wall',
            label: 'wall of the tube',
            span: [ZERO, right],
            sign: -1,
          }),
        ]
      : [];
  if (!isKnown(flange)) return tube;
  const side = { path: 'former.flange', span: rim };
  return [
    ...tube,
    along('x', flange, { ...side, label: 'left flange', sign: -1 }),
    along('x', flange, { ...side, id: 'former.flange right', label: 'right flange', origin: right }),
  ];
}

/** The core's inner face above; its gap counts from the rim, or from a stack that is higher. */
function gapHandle({ core, former }: Design, section: DrawnSection, right: Nm): readonly Handle[] {
  const { coreAbove, stackTops } = section;
  if (coreAbove === null || !isKnown(core.outerGap)) return [];
  const origin = nm(Math.max(former.height.value, ...stackTops));
  const handle = along('y', core.outerGap, {
    path: 'core.outerGap',
    label: 'gap between rim and core',
    span: [ZERO, right],
    origin,
  });
  // tape round the core that is thicker than the gap holds the core off
  return handle.at === coreAbove ? [{ ...handle, part: 'core' }] : [];
}

interface AlongOf {
  readonly id?: string;
  readonly path: string;
  readonly label: string;
  readonly span: readonly [Nm, Nm];
  readonly origin?: Nm;
  readonly sign?: 1 | -1;
  readonly least?: Nm;
}

function along(axis: 'x' | 'y', reading: Known<Nm>, of: AlongOf): Handle {
  const { path, label, span, origin = ZERO, sign = 1 } = of;
  const { value, plusMinus } = reading;
  const least = nm(Math.min(value, of.least ?? ZERO));
  const at = nm(origin + sign * value);
  const id = of.id ?? path;
  return {
    id,
    path,
    part: 'former',
    axis,
    at,
    span,
    origin,
    sign,
    value,
    plusMinus,
    least,
    most: LONGEST,
    label,
    isUnknown: false,
  };
}

/** What margins, insets and measured positions of these layers need, at the upper end of what was measured. */
const leastWidth = (layers: readonly Layer[]): number =>
  Math.max(
    0,
    ...layers.map((layer) => {
      const sum = upperOf(layer.margins.left.width) + upperOf(layer.margins.right.width);
      if (layer.kind !== 'winding') return sum + upperOf(layer.inset.left) + upperOf(layer.inset.right);
      return Math.max(sum, layer.extent === null ? 0 : upperOf(layer.extent.to));
    }),
  );

const upperOf = (reading: Reading<Nm>): number => (isKnown(reading) ? reading.value + reading.plusMinus : 0);

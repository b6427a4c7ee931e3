// The thermal class of the insulation as a system: the lowest of what it is made of, and which part sets it; what the book
// holds the hottest spot to; and what life a rule of thumb gives. The class of an enamel is not in a design file.
//
// Steps: system-class {class, setBy}, class-of {what, field, class}; under it the cites of the tables of materials.

import type { Design } from '#model/design.ts';
import type { Margin } from '#model/design/layer.ts';
import type { Lead, Winding } from '#model/design/winding.ts';
import { isKnown, type Unknown } from '#model/quantity/reading.ts';
import { because, type Because } from '#standards/because.ts';
import type { Book } from '#books/questions/book.ts';
import { formerById, sleeveById, tapeById, type Figure } from '#standards/materials/materials.ts';
import { celsius, type Celsius } from '#units/quantity.ts';

import { heatLimits, type HeatLimits } from './heat-limits.ts';
import { lifeHours, type LifeHours } from './thermal-life.ts';

export interface ClassedPart {
  /** Path of the field in the file. */
  readonly field: string;
  readonly material: string;
  readonly thermalClass: Celsius;
  readonly because: Because;
}

export interface Heat {
  readonly parts: readonly ClassedPart[];
  /** Lowest class and the parts that have it; null where no class is known. */
  readonly system: {
    readonly thermalClass: Celsius;
    readonly setBy: readonly ClassedPart[];
    readonly because: Because;
  } | null;
  /** Fields of materials whose class is not known, or that have no name; the wires' enamel is always among them. */
  readonly unknown: readonly string[];
  readonly hottest: Celsius | null;
  /** Half-width of what was read, kelvin. */
  readonly plusMinus: number;
  readonly condition: 'normal' | 'abnormal';
  /** What the hottest spot is held to, as it would be read; null where the book has no such limits or nothing was read. */
  readonly limits: HeatLimits | null;
  readonly life: LifeHours | null;
}

export function heatOf(design: Design, book: Book): Heat {
  const named = materialsIn(design);
  const parts = named.flatMap(({ field, material, figure }) => {
    if (figure === null) return [];
    const values = { what: material, field, class: figure.value };
    return [
      { field, material, thermalClass: figure.value, because: because('class-of', values, [figure.cite]) },
    ];
  });
  const unknown = [
    ...named.flatMap(({ field, figure }) => (figure === null ? [field] : [])),
    ...design.windings.map((_, i) => `windings[${i}].wire`),
  ];
  const system = lowestOf(parts);
  const { hottestInsulation } = design.surroundings;
  const hottest = isKnown(hottestInsulation) ? hottestInsulation.value : null;
  const thermalClass = system?.thermalClass ?? null;
  return {
    parts,
    system,
    unknown,
    hottest,
    plusMinus: isKnown(hottestInsulation) ? hottestInsulation.plusMinus : 0,
    condition: design.surroundings.temperature.condition,
    limits: hottest === null ? null : heatLimits(design, book, thermalClass, isAnyOpen(named)),
    life: thermalClass === null || hottest === null ? null : lifeHours(thermalClass, hottest),
  };
}

function lowestOf(parts: readonly ClassedPart[]): Heat['system'] {
  const [first] = parts;
  if (first === undefined) return null;
  const thermalClass = celsius(Math.min(...parts.map((part) => part.thermalClass)));
  const setBy = parts.filter((part) => part.thermalClass === thermalClass);
  const values = { class: thermalClass, setBy: setBy.map(({ material }) => material).join(', ') };
  return {
    thermalClass,
    setBy,
    because: because(
      'system-class',
      values,
      [],
      setBy.map((part) => part.because),
    ),
  };
}

/** A tape or the former without a class: it may be of the lowest. What a sleeve or an enamel is made of changes nothing. */
const isAnyOpen = (named: readonly Named[]): boolean =>
  named.some(({ figure, counts }) => figure === null && counts);

interface Named {
  /** Without a class it may be of the lowest. */
  readonly counts: boolean;
  readonly field: string;
  readonly material: string;
  readonly figure: Figure<Celsius> | null;
}

function materialsIn(design: Design): readonly Named[] {
  const { former, core, layers, windings } = design;
  const wall = typeof former.wall === 'object' && former.wall.kind === 'plies' ? former.wall.material : null;
  return [
    typeof former.material === 'string'
      ? moulded('former.material', former.material)
      : nameless('former.material'),
    ...(typeof former.wall === 'object' && former.wall.kind === 'plies'
      ? sheetOf('former.wall.material', wall)
      : []),
    ...(core.wrap === null ? [] : sheetOf('core.wrap.material', core.wrap.material)),
    ...layers.flatMap((layer, i): readonly Named[] => [
      ...(layer.kind === 'tape' ? sheetOf(`layers[${i}].material`, layer.material) : []),
      ...(['left', 'right'] as const).flatMap((side) =>
        blockOf(`layers[${i}].margins.${side}`, layer.margins[side]),
      ),
    ]),
    ...layers.flatMap((layer, i) =>
      layer.kind === 'screen'
        ? [
            ...leadSleeve(`layers[${i}].lead`, layer.lead),
            ...(layer.overlap === null
              ? []
              : sheetOf(`layers[${i}].overlap.material`, layer.overlap.material)),
          ]
        : [],
    ),
    ...windings.flatMap((winding, i) => windingSleeves(`windings[${i}]`, winding)),
  ];
}

/** A block without a name is wound of margin tape. */
const blockOf = (field: string, { filled, material }: Margin): readonly Named[] =>
  filled || material !== null ? taped(`${field}.material`, material ?? 'margin-tape') : [];

const nameless = (field: string): Named => ({ field, material: '', figure: null, counts: true });

const sheetOf = (field: string, material: string | null): readonly Named[] =>
  material === null ? [nameless(field)] : taped(field, material);

function windingSleeves(field: string, { leads, links }: Winding): readonly Named[] {
  const ends =
    typeof leads === 'object' && 'start' in leads
      ? [
          ...leadSleeve(`${field}.leads.start`, leads.start),
          ...leadSleeve(`${field}.leads.finish`, leads.finish),
        ]
      : [];
  const between = 'kind' in links ? [] : links.flatMap((link, i) => leadSleeve(`${field}.links[${i}]`, link));
  return [...ends, ...between];
}

type Sleeved = Pick<Lead, 'sleeve'> | 'not-judged' | Unknown | null;

function leadSleeve(field: string, lead: Sleeved): readonly Named[] {
  if (lead === null || typeof lead === 'string' || !('sleeve' in lead)) return [];
  const { sleeve } = lead;
  if (sleeve === null || 'kind' in sleeve || sleeve.material === null) return [];
  const figure = sleeveById(sleeve.material)?.thermalClass ?? null;
  return [{ field: `${field}.sleeve.material`, material: sleeve.material, figure, counts: true }];
}

const moulded = (field: string, material: string): Named => ({
  field,
  material,
  figure: formerById(material)?.thermalClass ?? null,
  counts: true,
});

const taped = (field: string, material: string | null): readonly Named[] =>
  material === null ? [] : [{ field, material, figure: classOf(material), counts: true }];

const classOf = (material: string): Figure<Celsius> | null =>
  (tapeById(material) ?? formerById(material))?.thermalClass ?? null;

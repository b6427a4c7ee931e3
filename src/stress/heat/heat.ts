// The thermal class of the insulation as a system: the lowest of what it is made of, and which part sets it; how far the
// hottest spot lies under it; and what life a rule of thumb gives. The class of an enamel is not in a design file.
//
// Steps: system-class {class, setBy}, class-of {what, field, class}; under it the cites of the tables of materials.

import type { Design, Lead, Winding } from '#model/design.ts';
import { isKnown, type Unknown } from '#model/reading.ts';
import { because, type Because } from '#standards/because.ts';
import type { Book } from '#books/book.ts';
import { formerById, sleeveById, tapeById, type Figure } from '#standards/materials.ts';
import { celsius, type Celsius } from '#units/quantity.ts';

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
  /** What is left to the class; negative where it is exceeded. As read, and lowered by what a thermocouple misses. */
  readonly reserve: {
    readonly asRead: number;
    readonly byThermocouple: number;
    readonly because: Because;
  } | null;
  /** Highest temperature that the book allows that class in normal use; null where it has no row. */
  readonly allowed: { readonly value: Celsius; readonly because: Because } | null;
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
    reserve: thermalClass === null || hottest === null ? null : reserveOf(thermalClass, hottest, book),
    allowed: thermalClass === null ? null : book.insulationTemperature(thermalClass),
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

function reserveOf(thermalClass: Celsius, hottest: Celsius, book: Book): Heat['reserve'] {
  const { value: allowance, because: why } = book.thermocoupleAllowance;
  return {
    asRead: thermalClass - hottest,
    byThermocouple: thermalClass - allowance - hottest,
    because: because('reserve', { class: thermalClass, hottest, allowance }, [], [why]),
  };
}

interface Named {
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
    ...taped('former.wall.material', wall),
    ...taped('core.wrap.material', core.wrap?.material ?? null),
    ...layers.flatMap((layer, i): readonly Named[] => [
      ...(layer.kind === 'tape' ? tapeLayer(`layers[${i}].material`, layer.material) : []),
      ...(['left', 'right'] as const).flatMap((side) =>
        taped(`layers[${i}].margins.${side}.material`, layer.margins[side].material),
      ),
    ]),
    ...layers.flatMap((layer, i) =>
      layer.kind === 'screen'
        ? [
            ...leadSleeve(`layers[${i}].lead`, layer.lead),
            ...taped(`layers[${i}].overlap.material`, layer.overlap?.material ?? null),
          ]
        : [],
    ),
    ...windings.flatMap((winding, i) => windingSleeves(`windings[${i}]`, winding)),
  ];
}

const nameless = (field: string): Named => ({ field, material: '', figure: null });

const tapeLayer = (field: string, material: string | null): readonly Named[] =>
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
  return [{ field: `${field}.sleeve.material`, material: sleeve.material, figure }];
}

const moulded = (field: string, material: string): Named => ({
  field,
  material,
  figure: formerById(material)?.thermalClass ?? null,
});

const taped = (field: string, material: string | null): readonly Named[] =>
  material === null ? [] : [{ field, material, figure: tapeById(material)?.thermalClass ?? null }];

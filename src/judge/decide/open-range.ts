// What one field of a build could be found to be: figures from the least to the most in steps, or one of a few answers.
// Null where finding it out is no single figure, as with the leads of a whole winding.

import { fieldAt } from '#model/edit/edit-design.ts';
import { quantityField } from '#model/quantity/quantity-field.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { inMm, mm } from '#units/quantity.ts';

export type FigureUnit = 'mm' | 'V' | 'V rms' | 'V peak' | 'kHz' | 'plies';

export type OpenRange =
  | {
      readonly kind: 'figures';
      readonly unit: FigureUnit;
      /** Figures are whole multiples of it. */
      readonly step: number;
      /** In steps. */
      readonly from: number;
      readonly to: number;
      readonly write: (figure: number) => unknown;
    }
  | { readonly kind: 'answers'; readonly answers: readonly (string | number)[] };

/** `between`: the pair that a working voltage belongs to. */
export function openRange(
  doc: DesignFile,
  field: string,
  between: readonly [string, string] | null,
): OpenRange | null {
  if (field === 'workingVoltages') return between && voltageRange(doc, between);
  const held = fieldAt(doc, field);
  if (isInterval(held)) return intervalRange(held);
  const end = ENDS.find(({ pattern }) => pattern.test(field));
  return end?.range(doc, field) ?? null;
}

interface Interval {
  readonly value: unknown;
  readonly plusMinus: unknown;
}

const isInterval = (value: unknown): value is Interval =>
  typeof value === 'object' && value !== null && 'value' in value && 'plusMinus' in value;

/** Only what lies inside the interval is still open. */
function intervalRange(held: Interval): OpenRange | null {
  const found = quantityField(held, { dimension: 'length', aboveZero: false, mayBeUnknown: false });
  if (found.kind !== 'known' || found.plusMinus === 0) return null;
  const [least, most] = [
    inMm(found.value) - inMm(found.plusMinus),
    inMm(found.value) + inMm(found.plusMinus),
  ];
  return lengths(least, most, 0.001);
}

const lengths = (from: number, to: number, step = 0.01): OpenRange => ({
  kind: 'figures',
  unit: 'mm',
  step,
  from: Math.ceil(mm(from) / mm(step)),
  to: Math.floor(mm(to) / mm(step)),
  write: (figure) => `${inMm(mm(figure))} mm`,
});

/** What of a pair's voltage is missing: its peak beside an rms that is given, else its rms with the peak of a sine. */
function voltageRange({ workingVoltages = [] }: DesignFile, between: readonly [string, string]): OpenRange {
  const isOurs = (said: { readonly between: readonly string[] }) =>
    said.between.every((id) => between.includes(id));
  const ours = workingVoltages.find(isOurs);
  const hasRms = ours?.rms !== undefined;
  const entry = (volts: number) => ({
    ...(ours ?? { between }),
    ...(hasRms
      ? { peak: `${volts} V` }
      : { rms: `${volts} V`, peak: `${(volts * Math.SQRT2).toFixed(3)} V` }),
  });
  return {
    kind: 'figures',
    unit: hasRms ? 'V peak' : 'V rms',
    step: 10,
    from: 1,
    to: 200,
    write: (volts) => [...workingVoltages.filter((said) => !isOurs(said)), entry(volts)],
  };
}

const KILOHERTZ: OpenRange = {
  kind: 'figures',
  unit: 'kHz',
  step: 1,
  from: 1,
  to: 400,
  write: (figure) => `${figure} kHz`,
};

const VOLTS: OpenRange = {
  kind: 'figures',
  unit: 'V',
  step: 50,
  from: 0,
  to: 200,
  write: (figure) => `${figure} V`,
};

const PLIES: OpenRange = {
  kind: 'figures',
  unit: 'plies',
  step: 1,
  from: 1,
  to: 12,
  write: (figure) => figure,
};

const answers =
  (...given: readonly (string | number)[]) =>
  (): OpenRange => ({ kind: 'answers', answers: given });

interface End {
  readonly pattern: RegExp;
  readonly range: (doc: DesignFile, field: string) => OpenRange | null;
}

const ENDS: readonly End[] = [
  {
    pattern: /margins\.(?:left|right)\.width$/,
    range: (doc, field) => lengths(0, chamberWidth(doc, field) / 2),
  },
  { pattern: /sleeve\.into$/, range: (doc) => lengths(0, widest(doc)) },
  { pattern: /sleeve\.wall$|^former\.(?:wall|flange)$/, range: () => lengths(0, 2) },
  { pattern: /bareFrom$|^core\.outerGap$/, range: () => lengths(0, 15) },
  { pattern: /plyWithstand$|\.withstand$/, range: () => VOLTS },
  { pattern: /^workingVoltages\[\d+\]\.frequency$/, range: () => KILOHERTZ },
  { pattern: /\.plies$/, range: () => PLIES },
  { pattern: /wire\.grade$/, range: gradeRange },
  { pattern: /wire\.insulationLayers$/, range: answers(1, 2, 3) },
  { pattern: /wire\.approval$/, range: answers('none', 'wire-annex') },
  { pattern: /\.(?:at|exit|side)$/, range: answers('left', 'right') },
  { pattern: /leads\.(?:start|finish)\.way$/, range: answers('slot', 'riser', 'top') },
  { pattern: /materialGroup$/, range: answers('IIIb', 'IIIa', 'II', 'I') },
  { pattern: /safetyClass$/, range: answers('none', 'X1', 'X2', 'Y4', 'Y2', 'Y1') },
  { pattern: /^bridges\[\d+\]\.approval$/, range: answers('none', 'basic', 'reinforced') },
  {
    pattern: /^core\.bond$/,
    range: (doc) => ({ kind: 'answers', answers: ['floating', ...doc.circuits.map(({ id }) => id)] }),
  },
];

function gradeRange(doc: DesignFile, field: string): OpenRange {
  const kind = fieldAt(doc, field.replace(/grade$/, 'kind'));
  return { kind: 'answers', answers: kind === 'fully-insulated' ? [3, 4, 5, 6, 7, 8, 9] : [1, 2, 3] };
}

function chamberWidth(doc: DesignFile, field: string): number {
  const [, layer = ''] = /^layers\[(\d+)\]/.exec(field) ?? [];
  return widthOf(doc, doc.layers[Number(layer)]?.chamber ?? 0);
}

const widest = (doc: DesignFile): number =>
  Math.max(0, ...doc.former.chambers.map((_, i) => widthOf(doc, i)));

function widthOf(doc: DesignFile, chamber: number): number {
  const width = doc.former.chambers[chamber]?.width;
  const found = quantityField(width, { dimension: 'length', aboveZero: true, mayBeUnknown: false });
  return found.kind === 'known' ? inMm(found.value) : 0;
}

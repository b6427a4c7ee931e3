// A marked range such as `100-240 V` as two fields: the lowest and the highest of it. What is no range stays as it was typed.

export interface MarkedRange {
  readonly lowest: string;
  readonly highest: string;
}

const NUMBER = String.raw`(\d{1,6}(?:[.,]\d{1,6})?)`;
const UNIT = String.raw`(kV|mV|V)?`;
const RANGE = new RegExp(
  String.raw`^${NUMBER}\s*${UNIT}(?:\s*(?:-|–|—|\.{2,3}|…)\s*|\s+to\s+)${NUMBER}\s*${UNIT}(?:\s*(?:AC|~))?$`,
  'i',
);

/** Null where it is no range, or one that falls. */
export function markedRange(text: string): MarkedRange | null {
  const [, from = '', fromUnit, to = '', toUnit] = RANGE.exec(text.trim()) ?? [];
  if (from === '' || to === '') return null;
  const unit = toUnit ?? fromUnit ?? 'V';
  const ends = { lowest: `${from} ${fromUnit ?? unit}`, highest: `${to} ${unit}` };
  const isRising = (fromUnit ?? unit) !== unit || number(from) <= number(to);
  return isRising ? ends : null;
}

/** Of the supply, by what is marked: one voltage, or a range. */
export function markedFields(text: string): { readonly voltage: string; readonly lowest?: string } {
  const range = markedRange(text);
  return range === null ? { voltage: text } : { voltage: range.highest, lowest: range.lowest };
}

const number = (text: string): number => Number(text.replace(',', '.'));

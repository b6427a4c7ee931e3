// A field of the file as the text that one types, and back. What cannot be read stays text, so that it stays in view.
// `?` stands for don't know, `3 ± 0.2` for an interval, `4 kV dc` for a withstand proved with direct voltage.

export type FieldKind = 'quantity' | 'withstand' | 'count' | 'share' | 'text';

/** `undefined` is a field left out: no text. */
export function textOf(value: unknown, kind: FieldKind = 'quantity'): string {
  if (value === undefined || value === null) return '';
  if (kind === 'share' && typeof value === 'number') return `${Number((value * 100).toPrecision(12))} %`;
  if (value === 'unknown') return '?';
  if (typeof value !== 'object') return String(value);
  const { value: middle, plusMinus, shape } = value as Readonly<Record<string, unknown>>;
  if (middle === undefined) return JSON.stringify(value);
  const width = plusMinus === undefined ? '' : ` ± ${String(plusMinus)}`;
  return `${String(middle)}${width}${shape === 'dc' ? ' dc' : ''}`;
}

export function valueOf(text: string, kind: FieldKind): unknown {
  const plain = text.trim();
  if (kind === 'text') return text;
  if (plain === '') return undefined;
  if (plain === '?') return 'unknown';
  switch (kind) {
    case 'count':
      return /^\d{1,6}$/.test(plain) ? Number(plain) : plain;
    case 'share':
      return shareOf(plain);
    case 'quantity':
      return intervalOf(plain);
    case 'withstand':
      return withstandOf(plain);
  }
}

/** `10 %` or `0.1`. */
function shareOf(text: string): unknown {
  const [, digits, percent] = /^(\d+(?:[.,]\d+)?)\s*(%?)$/.exec(text) ?? [];
  if (digits === undefined) return text;
  const number = Number(digits.replace(',', '.'));
  return percent === '%' ? Number((number / 100).toPrecision(12)) : number;
}

function intervalOf(text: string): unknown {
  const [middle = '', width] = text.split(/\s*(?:±|\+\/?-)\s*/, 2);
  if (width === undefined || middle === '') return text;
  return { value: middle, plusMinus: width };
}

function withstandOf(text: string): unknown {
  const direct = /\s*(?:dc|DC)$/.exec(text);
  if (direct === null) return intervalOf(text);
  const inner = intervalOf(text.slice(0, direct.index));
  return typeof inner === 'object' && inner !== null
    ? { ...inner, shape: 'dc' }
    : { value: inner, shape: 'dc' };
}

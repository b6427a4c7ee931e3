// Arithmetic typed into a field: the file keeps the figure that it comes to, never the sum. The parser is fetched when the
// first sum is typed.

import { dimension, type DimensionName } from '#model/quantity/dimension.ts';

/** An operator or a bracket between figures; a sign before a number or in its exponent is none. `2x1.5` is a sum of the file. */
export const looksLikeSum = (text: string): boolean =>
  /^[^?±]*$/u.test(text) && !/\+\/?-/.test(text) && /[(*/]|[^eE(\s]\s*[+\-−·÷]\s*[\d.,(]/u.test(text.trim());

export interface Summed {
  /** As it was typed. */
  readonly text: string;
  /** As the file takes it: `0.145 mm`; null where it is no sum. */
  readonly value: string | null;
  /** Why it is none. */
  readonly why: string;
}

export async function summed(text: string, name: DimensionName): Promise<Summed> {
  const { quantitySum } = await import('#model/quantity/quantity-sum.ts');
  const plain = text.replace(/[−–]/g, '-').replace(/[×·]/g, '*').replace(/÷/g, '/');
  const found = quantitySum(plain, name);
  if (found.kind === 'bad') return { text, value: null, why: found.why };
  return { text, value: `${found.value} ${dimension(name).own}`, why: '' };
}

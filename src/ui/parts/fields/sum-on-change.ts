// Arithmetic in a plain input: when it is left, the figure that the sum comes to takes its place. What is no sum stays.

import { unitOfSum } from '#state/fields/length-text.ts';
import type { DimensionName } from '#model/quantity/dimension.ts';
import { looksLikeSum, summed } from '#state/fields/field-sum.ts';

export const sumOnChange =
  (name: DimensionName, set: (figure: string) => void) =>
  async ({ currentTarget }: { readonly currentTarget: HTMLInputElement }): Promise<void> => {
    const text = currentTarget.value;
    if (!looksLikeSum(text)) return;
    const { value } = await summed(name === 'length' ? unitOfSum(text) : text, name);
    if (value !== null && currentTarget.value === text) set(value);
  };

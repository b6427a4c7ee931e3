// Figures that follow from what was typed, offered and never forced: output current, and turns of the output.

import { quantityText } from '#model/quantity/quantity-text.ts';
import { plain } from '#words/text/number-words.ts';

type Dimension = Parameters<typeof quantityText>[1];

const valueOf = (text: string, dimension: Dimension): number | null => {
  const found = quantityText(text, dimension);
  return found.kind === 'value' && found.value > 0 ? found.value : null;
};

/** `18 W / 12 V = 1.5 A`; empty where either is not known. */
export function currentOf(power: string, output: string): string {
  const [watts, volts] = [valueOf(power, 'power'), valueOf(output, 'voltsDc')];
  if (watts === null || volts === null) return '';
  return `${plain(watts)} W / ${plain(volts)} V = ${plain(Math.round((watts / volts) * 100) / 100)} A`;
}

/** What is reflected to the primary is the output voltage times the ratio of turns. Null where one is not known. */
export function turnsFor(
  primary: string,
  output: string,
  reflected: string,
): { readonly turns: number; readonly says: string } | null {
  const [volts, back] = [valueOf(output, 'voltsDc'), valueOf(reflected, 'voltsPeak')];
  const turns = /^\s*\d+\s*$/.test(primary) ? Number(primary) : 0;
  if (volts === null || back === null || turns === 0) return null;
  const exact = (turns * volts) / back;
  const found = Math.max(1, Math.round(exact));
  return {
    turns: found,
    says: `${turns} × ${plain(volts)} / ${plain(back)} = ${plain(Math.round(exact * 100) / 100)} turns`,
  };
}

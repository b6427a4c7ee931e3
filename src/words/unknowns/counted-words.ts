// What an open field was counted as, as a phrase: `one ply`, `60 % of 7 kV rms, a table figure`.

import { lengthUnit } from '#words/text/length-unit.ts';
import { confirmedWords } from '#words/text/confirmed-words.ts';
import { lengthPlain, plain } from '#words/text/number-words.ts';
import { sourceNamed } from '#standards/sources.ts';
import type { CountedAs, PlainlyCounted } from '#judge/verdict/assumed.ts';

export function countedAsWords(counted: CountedAs): string {
  switch (counted.as) {
    case 'computed':
      return `as computed, ${Math.round(counted.value)} V ${counted.quantity}`;
    case 'floor':
      return counted.quantity === 'rms'
        ? `at the least that the mains puts there, ${Math.round(counted.value)} V rms`
        : `at a peak of ${Math.ceil(counted.value)} V, the least it can be`;
    case 'frequency':
      return `as high as ${counted.hertz / 1000} kHz`;
    case 'grade':
      return `grade ${counted.grade}`;
    case 'lowest-grade':
      return `the lowest grade, ${counted.grade}`;
    case 'overall':
      return `${lengthPlain(counted.mm)} ${lengthUnit()} over all`;
    case 'ply':
      return `${lengthPlain(counted.mm)} ${lengthUnit()} a ply`;
    case 'type-test':
      return `${Math.floor(counted.peak)} V peak, as its type test shows`;
    case 'stated-test':
      return `${Math.floor(counted.peak)} V peak, what is stated of it and no more`;
    case 'per-mm':
      return `shown to stand ${Math.round(counted.peak / 100) / 10} kV peak a millimetre`;
    case 'share-of-table':
      return `${Math.round(counted.share * 100)} % of ${counted.rms / 1000} kV rms, a table figure`;
    case 'market':
      return marketWords(counted);
    case 'value':
      return counted.value;
    default:
      return PLAINLY[counted.as];
  }
}

function marketWords({ market, quantity, value, cite }: CountedAs & { readonly as: 'market' }): string {
  const figure = quantity === 'altitude' ? `${plain(value)} m` : 'I'.repeat(value);
  const [key] = cite.sources;
  const seen = key === undefined ? null : sourceNamed(key);
  const document = seen?.number ?? seen?.title ?? null;
  return `${figure}, as for ${market} (${confirmedWords(cite.confirmed)}${document === null ? '' : `: ${document}`})`;
}

const PLAINLY: Readonly<Record<PlainlyCounted, string>> = {
  anywhere: 'lying anywhere',
  'as-between-windings': 'as high as between the windings',
  'as-the-mains': 'as the mains of the same peak',
  certified: 'certified to the rule book’s annex for wires',
  'cover-earns-nothing': 'a cover that earns nothing',
  'current-not-shown': 'a current not shown',
  'each-side': 'each side in turn',
  'either-mode': 'whichever mode is worse, and 20 % more',
  enamelled: 'enamelled wire',
  'film-under-least': 'a film under the least thickness',
  'floating-or-tied': 'floating, or tied to each circuit in turn',
  'full-row': 'one full row',
  'left-out': 'left out',
  'in-part': 'not stated, for only a part of it is given',
  'mains-rail': 'the rectified mains, and 20 % more',
  'marked-voltage': 'the marked voltage, and 20 % more',
  'no-approval': 'without approval',
  'no-length': '0 mm',
  'no-safety-part': 'no safety part',
  'no-sleeve': 'no strong sleeve',
  'no-strength': 'no strength shown',
  'one-ply': 'one ply',
  patient: 'protecting a patient',
  'pollution-2': 'pollution degree 2, for no test proves 1',
  'rated-enough': 'rated high enough',
  riser: 'a riser',
  'tenth-more': 'a tenth more than the conductor, for no table lists it',
  thermocouple: 'read by thermocouple',
  'tracking-iiib': 'tracking group IIIb',
  'turns-by-voltage': 'as the stated voltages give them, and 20 % more',
  'unshown-ply': 'one ply of unknown strength',
  'unsleeved-riser': 'an unsleeved riser, at either side',
  'unsleeved-risers': 'unsleeved risers, at either side',
  'worse-end': 'at the end of its interval that is worse',
};

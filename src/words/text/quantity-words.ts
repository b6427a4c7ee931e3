// A figure of a derivation with its unit, lengths in the one that the reader asked for. Figures there are mm for lengths, else
// base units.

import { askedLength, frequency, plain } from './number-words.ts';

/** `unit` as the table file names it; figures come in the base unit, so that a prefix in it is dropped. */
export function quantityWords(value: number, unit: string): string {
  switch (unit) {
    case 'mm':
      return askedLength(value);
    case '1':
      return plain(value);
    case 'Hz':
    case 'kHz':
    case 'MHz':
      return frequency(value);
    case 'degC':
      return `${plain(value)} °C`;
    case 'mA':
      return `${plain(value * 1000)} mA`;
    case 'V rms':
    case 'V peak':
      return `${plain(Math.round(value * 100) / 100)} ${unit}`;
    default:
      return `${plain(value)} ${unit.replace(/^k(?=V)/, '')}`;
  }
}

/** The unit of a table's first axis, by the name that the axis has there. */
export const axisUnit = (name: string): string => AXIS_UNITS[name] ?? '1';

const AXIS_UNITS: Readonly<Record<string, string>> = {
  altitude: 'm',
  peak: 'V peak',
  'required withstand': 'V peak',
  'working voltage': 'V rms',
  mains: 'V rms',
  class: 'degC',
};

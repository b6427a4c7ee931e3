// The kinds of quantity that a design file holds: their own unit, the spellings taken, their range.
// `base` is the unit of the value inside the program; a bare number in the file is in `own`.

import type {
  Celsius,
  Farads,
  Hertz,
  Metres,
  Nm,
  Ohms,
  Seconds,
  VoltsDc,
  VoltsPeak,
  VoltsRms,
  Watts,
} from '#units/quantity.ts';

export interface QuantityOf {
  readonly length: Nm;
  readonly altitude: Metres;
  readonly temperature: Celsius;
  readonly voltsRms: VoltsRms;
  readonly voltsPeak: VoltsPeak;
  readonly voltsDc: VoltsDc;
  readonly frequency: Hertz;
  readonly capacitance: Farads;
  /** Of the capacitor behind the mains rectifier. */
  readonly bulkCapacitance: Farads;
  readonly resistance: Ohms;
  readonly power: Watts;
  readonly duration: Seconds;
}

export type DimensionName = keyof QuantityOf;

export interface Dimension {
  readonly name: DimensionName;
  /** With its article, as a sentence needs it. */
  readonly word: string;
  readonly own: string;
  readonly base: string;
  /** Spelling in the file -> unit of the conversion library. */
  readonly units: ReadonlyMap<string, string>;
  /** Lowest and highest value taken, in `base`, and the same in words. */
  readonly from: number;
  readonly to: number;
  readonly range: string;
  /** What is not 0 is at least so much, in words too: less is no figure of any build, and would only burst a quotient. */
  readonly least: number;
  readonly leastWords: string;
  readonly example: string;
  /** Values are whole numbers of `base`. */
  readonly whole: boolean;
}

const same = (...names: readonly string[]): readonly [string, string][] => names.map((name) => [name, name]);

const volts = (...suffixes: readonly string[]): ReadonlyMap<string, string> =>
  new Map(
    ['', ...suffixes].flatMap((suffix) => ['V', 'kV', 'mV'].map((unit) => [unit + suffix, unit] as const)),
  );

const VOLTS = {
  own: 'V',
  base: 'V',
  from: 0,
  to: 100_000,
  range: '0 to 100 kV',
  least: 1e-6,
  leastWords: '0.001 mV',
  whole: false,
};

const ALL: { readonly [D in DimensionName]: Omit<Dimension, 'name'> } = {
  length: {
    word: 'a length',
    own: 'mm',
    base: 'nm',
    units: new Map([
      ...same('mm', 'um', 'nm', 'cm', 'm', 'in', 'mil'),
      ...['inch', 'inches', '"', '″'].map((spelling) => [spelling, 'in'] as const),
      ...['mils', 'thou'].map((spelling) => [spelling, 'mil'] as const),
    ]),
    from: 0,
    to: 1e9,
    range: '0 to 1 m',
    least: 1,
    leastWords: '1 nm',
    example: '3 mm',
    whole: true,
  },
  altitude: {
    word: 'an altitude',
    own: 'm',
    base: 'm',
    units: new Map([...same('m', 'km', 'ft')]),
    from: 0,
    to: 10_000,
    range: '0 to 10 000 m',
    least: 0.001,
    leastWords: '1 mm',
    example: '2000 m',
    whole: false,
  },
  temperature: {
    word: 'a temperature',
    own: 'degC',
    base: 'degC',
    units: new Map([...same('degC', 'degF', 'K'), ['C', 'degC']]),
    from: -50,
    to: 400,
    range: '-50 to 400 degC',
    least: 0,
    leastWords: '0 degC',
    example: '105 degC',
    whole: false,
  },
  voltsRms: { word: 'a voltage', ...VOLTS, units: volts('rms', 'ac'), example: '250 V' },
  voltsPeak: { word: 'a peak voltage', ...VOLTS, units: volts('peak', 'pk', 'p'), example: '520 V' },
  voltsDc: { word: 'a direct voltage', ...VOLTS, units: volts('dc'), example: '12 V' },
  frequency: {
    word: 'a frequency',
    own: 'Hz',
    base: 'Hz',
    units: new Map(same('Hz', 'kHz', 'MHz')),
    from: 0,
    to: 10e6,
    range: '0 to 10 MHz',
    least: 0.1,
    leastWords: '0.1 Hz',
    example: '65 kHz',
    whole: false,
  },
  capacitance: {
    word: 'a capacitance',
    own: 'F',
    base: 'F',
    units: new Map(same('F', 'uF', 'nF', 'pF')),
    from: 0,
    to: 1e-6,
    range: '0 to 1 uF',
    least: 1e-15,
    leastWords: '0.001 pF',
    example: '2.2 nF',
    whole: false,
  },
  bulkCapacitance: {
    word: 'a capacitance',
    own: 'F',
    base: 'F',
    units: new Map(same('F', 'mF', 'uF', 'nF')),
    from: 0,
    to: 0.1,
    range: '0 to 0.1 F',
    least: 1e-9,
    leastWords: '1 nF',
    example: '33 uF',
    whole: false,
  },
  resistance: {
    word: 'a resistance',
    own: 'ohm',
    base: 'ohm',
    units: new Map([...same('ohm', 'kohm', 'Mohm'), ['Ω', 'ohm'], ['kΩ', 'kohm'], ['MΩ', 'Mohm']]),
    from: 0,
    to: 1e12,
    range: '0 to 1 000 000 Mohm',
    least: 0.001,
    leastWords: '0.001 ohm',
    example: '4.7 Mohm',
    whole: false,
  },
  power: {
    word: 'a power',
    own: 'W',
    base: 'W',
    units: new Map(same('W', 'kW', 'mW')),
    from: 0,
    to: 10_000,
    range: '0 to 10 kW',
    least: 0.001,
    leastWords: '1 mW',
    example: '15 W',
    whole: false,
  },
  duration: {
    word: 'a time',
    own: 's',
    base: 's',
    units: new Map(same('s', 'ms', 'us')),
    from: 0,
    to: 1,
    range: '0 to 1 s',
    least: 1e-9,
    leastWords: '0.001 us',
    example: '3 ms',
    whole: false,
  },
};

export const dimension = (name: DimensionName): Dimension => ({ name, ...ALL[name] });

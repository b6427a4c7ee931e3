// The grounds that the drawing and the page stand on: light, dark, colour on white paper, black ink on white paper.
// Roles only; which circuit takes which hue is for `circuit-look.ts`.

import type { HueKey } from '#words/design/circuit-look.ts';

export type MaterialKey = 'core' | 'former' | 'block' | 'ply' | 'wrap' | 'sleeve' | 'cover';
export type ThemeName = 'light' | 'dark' | 'paper' | 'print';

/** A circuit's colours: the ring (also its text) and the fill of a conductor. */
export interface Hue {
  readonly ring: string;
  readonly fill: string;
}

/** A material's ground, the lines or dots of its hatch, and its rim. */
export interface MaterialTint {
  readonly fill: string;
  readonly hatch: string;
  readonly rim: string;
}

export interface Theme {
  readonly name: ThemeName;
  readonly sheet: string;
  readonly raised: string;
  readonly desk: string;
  readonly ink: string;
  readonly second: string;
  readonly third: string;
  readonly line: string;
  readonly hair: string;
  /** Falls short, missing, the weakest path; used for nothing else. */
  readonly pencil: string;
  readonly circuits: Readonly<Record<HueKey, Hue>>;
  readonly materials: Readonly<Record<MaterialKey, MaterialTint>>;
}

/** Widths of lines in screen pixels; they do not grow with the scale. */
export const LINE = { frame: 2.2, solid: 1.3, dimension: 1, joint: 0.9, block: 0.8, hatch: 0.7 } as const;

const WHITE = '#ffffff';

const LIGHT: Theme = {
  name: 'light',
  sheet: '#f8f9f7',
  raised: '#eef1ef',
  desk: '#dfe4e2',
  ink: '#182023',
  second: '#465257',
  third: '#5f6b70',
  line: '#838f92',
  hair: '#cbd2d1',
  pencil: '#a8124e',
  circuits: {
    primary: { ring: '#84250a', fill: '#dd946d' },
    auxiliary: { ring: '#86640c', fill: '#e6c568' },
    output: { ring: '#10508f', fill: '#8dbbe6' },
    'second-output': { ring: '#00615a', fill: '#f8f9f7' },
    earth: { ring: '#356118', fill: '#f8f9f7' },
    isolated: { ring: '#8450b8', fill: '#f8f9f7' },
  },
  materials: {
    core: { fill: '#d9dcdc', hatch: '#8d9699', rim: '#182023' },
    former: { fill: '#ebede9', hatch: '#b4bab5', rim: '#182023' },
    block: { fill: '#f8f9f7', hatch: '#8a8f88', rim: '#838f92' },
    ply: { fill: '#f0e3b6', hatch: '#d8c88f', rim: '#6f5f2b' },
    wrap: { fill: '#f7efcf', hatch: '#d8c88f', rim: '#6f5f2b' },
    sleeve: { fill: '#eef1ef', hatch: '#eef1ef', rim: '#465257' },
    cover: { fill: '#f8f9f7', hatch: '#f8f9f7', rim: '#838f92' },
  },
};

const DARK: Theme = {
  name: 'dark',
  sheet: '#161c1d',
  raised: '#1f2728',
  desk: '#0d1112',
  ink: '#e8eeec',
  second: '#b1bdbb',
  third: '#94a19f',
  line: '#64716f',
  hair: '#323d3d',
  pencil: '#ff86b1',
  circuits: {
    primary: { ring: '#f1956a', fill: '#8f4220' },
    auxiliary: { ring: '#ecd075', fill: '#735709' },
    output: { ring: '#7dbdf7', fill: '#1f588e' },
    'second-output': { ring: '#5fcfc0', fill: '#161c1d' },
    earth: { ring: '#9acb76', fill: '#161c1d' },
    isolated: { ring: '#dcc8fb', fill: '#161c1d' },
  },
  materials: {
    core: { fill: '#283031', hatch: '#5a6668', rim: '#e8eeec' },
    former: { fill: '#202728', hatch: '#4a5555', rim: '#e8eeec' },
    block: { fill: '#161c1d', hatch: '#6b7674', rim: '#64716f' },
    ply: { fill: '#57502f', hatch: '#817647', rim: '#b8a765' },
    wrap: { fill: '#463f24', hatch: '#817647', rim: '#b8a765' },
    sleeve: { fill: '#1f2728', hatch: '#1f2728', rim: '#b1bdbb' },
    cover: { fill: '#161c1d', hatch: '#161c1d', rim: '#64716f' },
  },
};

/** Black ink: fills become white and two greys, the marks stay. */
const PRINT: Theme = {
  name: 'print',
  sheet: '#ffffff',
  raised: '#f2f2f2',
  desk: '#ffffff',
  ink: '#000000',
  second: '#333333',
  third: '#4d4d4d',
  line: '#808080',
  hair: '#c4c4c4',
  pencil: '#000000',
  circuits: {
    primary: { ring: '#000000', fill: '#c9c9c9' },
    auxiliary: { ring: '#000000', fill: '#ffffff' },
    output: { ring: '#000000', fill: '#ebebeb' },
    'second-output': { ring: '#000000', fill: '#ffffff' },
    earth: { ring: '#000000', fill: '#ffffff' },
    isolated: { ring: '#000000', fill: '#ffffff' },
  },
  materials: {
    core: { fill: '#d9d9d9', hatch: '#7d7d7d', rim: '#000000' },
    former: { fill: '#f0f0f0', hatch: '#a6a6a6', rim: '#000000' },
    block: { fill: '#ffffff', hatch: '#8c8c8c', rim: '#808080' },
    ply: { fill: '#ffffff', hatch: '#c4c4c4', rim: '#000000' },
    wrap: { fill: '#f2f2f2', hatch: '#c4c4c4', rim: '#000000' },
    sleeve: { fill: '#f2f2f2', hatch: '#f2f2f2', rim: '#333333' },
    cover: { fill: '#ffffff', hatch: '#ffffff', rim: '#808080' },
  },
};

/** The light theme without its tint, for paper that is white already. */
const PAPER: Theme = {
  ...LIGHT,
  name: 'paper',
  sheet: WHITE,
  raised: '#f2f4f3',
  circuits: {
    ...LIGHT.circuits,
    'second-output': { ...LIGHT.circuits['second-output'], fill: WHITE },
    earth: { ...LIGHT.circuits.earth, fill: WHITE },
    isolated: { ...LIGHT.circuits.isolated, fill: WHITE },
  },
  materials: {
    ...LIGHT.materials,
    block: { ...LIGHT.materials.block, fill: WHITE },
    cover: { ...LIGHT.materials.cover, fill: WHITE, hatch: WHITE },
  },
};

export const palette: Readonly<Record<ThemeName, Theme>> = {
  light: LIGHT,
  dark: DARK,
  paper: PAPER,
  print: PRINT,
};

/** What drawing offices letter with, where the system has it; no font is fetched. */
export const LETTERING =
  'Bahnschrift, "DIN Alternate", "Avenir Next", Roboto, "DejaVu Sans Condensed", sans-serif';
export const READING = '"Segoe UI", "Helvetica Neue", "Liberation Sans", "Noto Sans", sans-serif';

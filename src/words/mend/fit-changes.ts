// What two builds take of their windows and of copper, figure by figure beside each other.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { CopperReport, LayerRows, WindingCopper } from '#judge/study/copper.ts';
import type { Fit } from '#judge/verdict/verdict.ts';
import { lengthNear, lengthTaken } from '#words/text/number-words.ts';
import { meanTurnWords, ohms } from './fit-words.ts';

export interface FitSide {
  readonly fit: Fit;
  readonly copper: CopperReport;
}

export interface FitChange {
  readonly name: string;
  readonly a: string;
  readonly b: string;
  /** With its sign; a dash where nothing changes. */
  readonly by: string;
}

/** Those of the window always, those of a winding where they differ. */
export function fitChanges(a: FitSide, b: FitSide): readonly FitChange[] {
  const ids = [...new Set([...a.copper.windings, ...b.copper.windings].map(({ winding }) => winding))];
  return [
    ...WINDOW.map((figure) => changeOf(figure, a, b)),
    ...ids.flatMap((id) => windingChanges(id, a.copper, b.copper)).filter((row) => row.a !== row.b),
  ];
}

interface Figure<T> {
  readonly name: string;
  readonly of: (side: T) => number | null;
  readonly says: (value: number) => string;
}

const near = (mm: number): string => `${lengthNear(mm)} ${lengthUnit()}`;

const WINDOW: readonly Figure<FitSide>[] = [
  {
    name: 'height',
    of: ({ fit }) => fit.height.used,
    says: (value) => `${lengthTaken(value)} ${lengthUnit()}`,
  },
  { name: 'left to a full window', of: ({ copper }) => copper.left, says: near },
  { name: 'window full', of: ({ copper }) => copper.fill * 100, says: (value) => `${Math.round(value)} %` },
];

const OF_WINDING: readonly Figure<WindingCopper>[] = [
  { name: 'mean turn', of: ({ meanTurn }) => meanTurn, says: meanTurnWords },
  { name: 'wire', of: ({ length }) => length, says: (value) => `${value.toFixed(2)} m` },
  { name: 'resistance at 20 °C', of: ({ ohmsCold }) => ohmsCold, says: ohms },
  { name: 'resistance hot', of: ({ ohmsHot }) => ohmsHot, says: ohms },
  { name: 'copper', of: ({ weight }) => weight, says: (value) => `${value.toFixed(2)} g` },
];

function windingChanges(id: string, a: CopperReport, b: CopperReport): readonly FitChange[] {
  const ofA = a.windings.find(({ winding }) => winding === id) ?? null;
  const ofB = b.windings.find(({ winding }) => winding === id) ?? null;
  const [rowsA, rowsB] = [a, b].map(({ rows }) => rowsSays(rows.filter(({ winding }) => winding === id)));
  return [
    { name: `${id}, rows`, a: rowsA ?? '', b: rowsB ?? '', by: '' },
    ...OF_WINDING.map(({ name, of, says }) =>
      changeOf(
        { name: `${id}, ${name}`, of: (side: WindingCopper | null) => side && of(side), says },
        ofA,
        ofB,
      ),
    ),
  ];
}

/** `2, 9 turns in the last`, layer by layer. */
const rowsSays = (rows: readonly LayerRows[]): string =>
  rows.length === 0
    ? 'none'
    : rows.map(({ rows: count, lastRow }) => `${count}, ${lastRow} turns in the last`).join('; ');

function changeOf<T>({ name, of, says }: Figure<T>, sideA: T, sideB: T): FitChange {
  const [a, b] = [of(sideA), of(sideB)];
  const told = (value: number | null): string => (value === null ? 'not known' : says(value));
  return { name, a: told(a), b: told(b), by: difference(a, b, says) };
}

function difference(a: number | null, b: number | null, says: (value: number) => string): string {
  if (a === null || b === null) return '';
  if (says(a) === says(b)) return '–';
  return `${b > a ? '+' : '−'}${says(Math.abs(b - a))}`;
}

export const fitChangeWords = ({ name, a, b, by }: FitChange): string =>
  a === b ? `${name}: ${a}, as before` : `${name}: ${a} -> ${b}${by === '' ? '' : ` (${by})`}`;

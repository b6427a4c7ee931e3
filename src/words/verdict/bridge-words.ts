// A bridging part in words: its grade, or the one fault by which it would put the mains on the other side.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { BridgeGrade, Unsafe } from '#books/shared/parts/bridge-grade.ts';

import type { CircuitLook } from '#words/design/circuit-look.ts';
import { lengthDown } from '#words/text/number-words.ts';
import { pairNames } from './pair-words.ts';
import type { JudgedBridge, JudgedOutside } from '#judge/cases/judged-parts.ts';

export function bridgeLine({ worst, best }: JudgedBridge, looks: readonly CircuitLook[]): string {
  const pair = pairNames(worst.between, looks);
  if (worst.unsafe !== null && best.unsafe === null)
    return `${worst.id}, ${pair}: ${NOT_KNOWN[worst.unsafe]}; at its best ${gradeWords(best)}${ratingWords(best)}`;
  const open = worst.grade === best.grade ? '' : `; with every unknown at its best ${gradeWords(best)}`;
  return `${worst.id}, ${pair}: ${gradeWords(worst)}${open}${ratingWords(worst)}`;
}

const ratingWords = ({ ratingAssumed }: BridgeGrade): string =>
  ratingAssumed ? '; no rating is given, taken to be high enough' : '';

/** `pin rows, Primary to Output: clearance 8.20, creepage 8.60 mm: reinforced of reinforced` */
export function outsideLine(entry: JudgedOutside, looks: readonly CircuitLook[]): string {
  const { what, between, clearance, creepage, grade, needed } = entry;
  const figure = (name: string, value: number | null) =>
    value === null ? `${name} not given` : `${name} ${lengthDown(value)} ${lengthUnit()}`;
  const reached = grade === null ? 'nothing to judge' : `${grade} of ${needed}`;
  const named = what === '' ? 'outside distance' : what;
  return `${named}, ${pairNames(between, looks)}: ${figure('clearance', clearance)}, ${figure('creepage', creepage)}: ${reached}`;
}

const gradeWords = ({ grade, unsafe }: BridgeGrade): string =>
  unsafe === null ? grade : `unsafe bridge: ${unsafeWords(unsafe)}`;

/** The sentence that says so. */
export const unsafeWords = (unsafe: Unsafe): string => UNSAFE[unsafe];

const UNSAFE: Readonly<Record<Unsafe, string>> = {
  class: 'it is no safety part; if it shorts, the mains stands on the other side',
  rating: 'its rating lies below the working voltage; if it shorts, the mains stands on the other side',
  'single-part': 'one resistor alone, without approval; if it shorts, the mains stands on the other side',
};

const NOT_KNOWN: Readonly<Record<Unsafe, string>> = {
  class: 'class not known, counted as no safety part',
  rating: 'rated below the working voltage between its circuits, its own voltage not given',
  'single-part': 'approval not known, counted as none',
};

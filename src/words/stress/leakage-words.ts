// Touch current in words: what passes, where it passes, and the limit.

import type { BridgingPart } from '#stress/current/leakage-branches.ts';
import type { Leakage, TouchCurrent } from '#stress/current/leakage.ts';

import { answerWords } from '#words/text/answer-words.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { frequency, plain, volts } from '#words/text/number-words.ts';
import { pairNames } from '#words/verdict/pair-words.ts';

export function leakageLines(leakage: Leakage, looks: readonly CircuitLook[]): readonly string[] {
  const { touch, protective, parts, missing } = leakage;
  if (touch === null && protective === null) return [];
  const at = leakage.frequency === 0 ? 'direct' : frequency(leakage.frequency);
  return [
    `at ${volts(leakage.mains)}, ${at}: the rated voltage and its tolerance, all mains ends live`,
    ...parts.map((part) => partLine(part, looks)),
    ...missing.map((id) => `${id}: its value is not in the file, so that the figures are least figures`),
    ...(touch === null ? [] : touchLines(touch)),
    ...(protective === null
      ? []
      : [
          `through the protective conductor ${milliamperes(protective.value)}, limit ${milliamperes(protective.limit)}: ${answerWords(protective.answer)}`,
        ]),
  ];
}

function touchLines({
  plain: straight,
  throughBody,
  weighed,
  switching,
  total,
  limit,
  answer,
}: TouchCurrent): readonly string[] {
  const fast =
    switching === null
      ? []
      : [
          `switching at ${frequency(switching.frequency)} adds at most ${milliamperes(switching.plain)} rms, felt as ${milliamperes(switching.weighed)}`,
        ];
  return [
    `tied straight to earth ${milliamperes(straight)}, through the body of IEC 60990 ${milliamperes(throughBody)}, weighed ${milliamperes(weighed)} rms`,
    ...fast,
    `in all ${milliamperes(total.rms)} rms, ${milliamperes(total.peak)} peak; limit ${milliamperes(limit.rms)} and ${milliamperes(limit.peak)}: ${answerWords(answer)}`,
  ];
}

function partLine({ id, between, farads, ohms, from }: BridgingPart, looks: readonly CircuitLook[]): string {
  const what = id ?? 'facing layers';
  const value = farads === null ? `${plain((ohms ?? 0) / 1000)} kilohm` : capacitance(farads);
  const origin =
    from === 'file' ? '' : from === 'estimate' ? ', estimated as parallel layers' : ', by the field solver';
  return `${what}, ${pairNames(between, looks)}: ${value}${origin}`;
}

export const capacitance = (farads: number): string =>
  farads >= 1e-9 ? `${plain(farads * 1e9)} nF` : `${(farads * 1e12).toFixed(farads >= 1e-11 ? 0 : 1)} pF`;

/** Rounded up: a current never looks smaller than it is. */
export const milliamperes = (amperes: number): string =>
  `${plain(Math.ceil(Math.round(amperes * 1e9) / 1000) / 1000)} mA`;

// Capacitances in words, and what switching drives through them.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Design } from '#model/design.ts';
import type { FieldCapacitance, FieldReport, WindingCapacitance } from '#judge/field/field-report.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { ownerWords, percent, within } from './field-headline.ts';
import { lengthPlain, plain } from '#words/text/number-words.ts';

export const picofarads = (farads: number): string => {
  const pF = farads * 1e12;
  return `${pF >= 100 ? pF.toFixed(0) : pF >= 10 ? pF.toFixed(1) : pF.toFixed(2)} pF`;
};

export interface CapacitanceRow {
  readonly between: string;
  readonly whole: string;
  readonly perMetre: string;
  readonly within: string;
  /** As parallel layers, before there was a field; empty where none was made. */
  readonly estimate: string;
}

/** Those between conductors, then those between circuits with what floats taken out, where that differs. */
export function capacitanceRows(design: Design, report: FieldReport): readonly CapacitanceRow[] {
  const looks = circuitLooks(design.circuits);
  const row =
    (after: string) =>
    ({ between: [a, b], farads, perMetre, error, estimate }: FieldCapacitance): CapacitanceRow => ({
      between: `${ownerWords(a, looks)} to ${ownerWords(b, looks)}${after}`,
      whole: picofarads(farads),
      perMetre: perMetre === null ? '' : picofarads(perMetre),
      within: error === null ? '' : percent(error),
      estimate: estimate === null ? '' : picofarads(estimate),
    });
  const differs = report.effective.length !== report.capacitances.length;
  return [
    ...report.capacitances.map(row('')),
    ...(differs ? report.effective.map(row(', what floats passing it on')) : []),
  ];
}

export function capacitanceLines(design: Design, report: FieldReport): readonly string[] {
  const looks = circuitLooks(design.circuits);
  const line = ({
    between: [a, b],
    farads,
    perMetre,
    error,
    meanTurn,
    estimate,
  }: FieldCapacitance): string => {
    const each = perMetre === null ? 'turned round the tube' : `${picofarads(perMetre)} a metre`;
    const turn =
      meanTurn === null ? '' : `, mean turn ${lengthPlain(Math.round(meanTurn * 10) / 10)} ${lengthUnit()}`;
    const before = estimate === null ? '' : `; estimated as parallel layers ${picofarads(estimate)}`;
    return `${ownerWords(a, looks)} to ${ownerWords(b, looks)}: ${picofarads(farads)}${within(error)} (${each}${turn})${before}`;
  };
  const differs = report.effective.length !== report.capacitances.length;
  const effective = differs ? report.effective.map((one) => `with what floats taken out, ${line(one)}`) : [];
  return [...report.capacitances.map(line), ...effective, ...report.windings.map(windingLine)];
}

const windingLine = ({ between: [a, b], farads, error }: WindingCapacitance): string =>
  `winding ${a} to winding ${b}, everything else held: ${picofarads(farads)}${within(error)}`;

export function switchingLines(design: Design, report: FieldReport): readonly string[] {
  const looks = circuitLooks(design.circuits);
  return report.switching.map(({ onto, farads, error, withoutScreens, amperesPerVolt }) => {
    const current =
      amperesPerVolt === null
        ? ''
        : `, ${plain(Number((amperesPerVolt * 1e6).toPrecision(3)))} µA for each volt of the fundamental`;
    const screens =
      withoutScreens === null ? '' : `; with the screens let go it would be ${picofarads(withoutScreens)}`;
    return `onto ${ownerWords(onto, looks)}: ${picofarads(farads)}${within(error)} for each volt at the switched end${current}${screens}`;
  });
}

// What the field comes to, in a sentence, and on what it stands.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { Design } from '#model/design.ts';
import type { FieldReport } from '#judge/field/field-report.ts';
import { circuitLooks, type CircuitLook } from '#words/design/circuit-look.ts';
import { lengthPlain, plain, volts } from '#words/text/number-words.ts';

export function fieldHeadline(design: Design, { none, gaps }: FieldReport): string {
  if (none !== null) return noneWords(design, none);
  const [first] = gaps;
  if (first === undefined) return 'No gap of air carries any voltage worth telling.';
  const isOpen = first.margin > 1 && gaps.some(({ margin, error }) => margin * (1 - (error ?? 0)) <= 1);
  const start =
    first.margin <= 1
      ? 'Discharge starts at work'
      : isOpen
        ? 'Discharge may start at work, within what the meshes differ by'
        : 'Nothing discharges at work';
  const over = gaps.filter(({ margin }) => margin <= 1).length;
  const at = first.margin > 1 ? '' : `, in ${over === 1 ? 'one gap' : `${over} gaps`}`;
  const tested = gaps.filter(({ test, startsAt }) => test !== null && startsAt < test).length;
  const test =
    first.margin <= 1 || tested === 0
      ? ''
      : `; at the test it starts in ${tested === 1 ? 'one gap' : `${tested} gaps`}`;
  return `${start}${at}${test}. Gap 1 stands ${times(first.margin)} its working voltage.`;
}

export const times = (margin: number): string =>
  margin >= 10 ? `${Math.floor(margin)} times` : `${(Math.floor(margin * 10) / 10).toFixed(1)} times`;

function noneWords(design: Design, none: NonNullable<FieldReport['none']>): string {
  switch (none.kind) {
    case 'alone':
      return 'Only one conductor is drawn: there is no field to solve.';
    case 'too-many-turns':
      return `${none.turns} turns are drawn; the field is solved for ${none.most} at most.`;
    case 'touching': {
      const looks = circuitLooks(design.circuits);
      const [a, b] = none.between.map((id) => ownerWords(id, looks));
      return `${a} and ${b} touch at x ${lengthPlain(none.at[0])} ${lengthUnit()}, y ${lengthPlain(none.at[1])} ${lengthUnit()}: no field between them.`;
    }
  }
}

/** On what voltages, in what air, how exact. */
export function fieldBasis(design: Design, report: FieldReport): readonly string[] {
  if (report.none !== null) return [];
  const looks = circuitLooks(design.circuits);
  const cases = report.cases.map(({ between: [a, b], peak, byTurn, core, coreTied }) => {
    const how = byTurn ? 'each turn at its place' : 'each circuit at one potential';
    const tied = coreTied === null ? '' : `, the core taken to be tied to ${ownerWords(coreTied, looks)}`;
    const stands = core === null ? '' : `; the core stands at ${volts(core)}`;
    return `${volts(peak)} peak across ${ownerWords(a, looks)} and ${ownerWords(b, looks)}, ${how}${tied}${stands}`;
  });
  const memory = report.permittivities.filter(({ confirmed }) => confirmed === 'memory');
  return [
    ...cases,
    `section ${report.section}, ${plain(report.altitude)} m; ${exactness(report)}`,
    ...(memory.length === 0
      ? []
      : [
          `permittivities marked memory, not checked against a source: ${memory.map(({ what, value }) => `${what} ${plain(value)}`).join(', ')}`,
        ]),
  ];
}

/** ` within 0.4 %`; nothing where one mesh alone was looked at. */
export const within = (error: number | null): string => (error === null ? '' : ` within ${percent(error)}`);

export const percent = (part: number): string => `${(Math.ceil(part * 1000) / 10).toFixed(1)} %`;

/** Of the couplings that count, and of the trifles, for which the mesh is not made. */
function exactness({ error, capacitances }: FieldReport): string {
  if (error === null) return 'a first look on a coarse mesh';
  const worst = Math.max(error, ...capacitances.map((one) => one.error ?? 0));
  const trifles =
    percent(worst) === percent(error)
      ? ''
      : `, in capacitances under a fiftieth of the largest within ${percent(worst)}`;
  return `two meshes agree within ${percent(error)}${trifles}`;
}

/** A circuit by its letter and name, the core and a floating screen by what they are. */
export function ownerWords(id: string, looks: readonly CircuitLook[]): string {
  const look = looks.find(({ circuit }) => circuit === id);
  return look === undefined ? (id === 'core' ? 'the core' : id) : look.name;
}

// The worked sheet of a pair as plain text: how each required figure was found, column by column.

import { lengthUnit } from '#words/text/length-unit.ts';
import { plyWords } from '#words/verdict/ply-words.ts';
import type { PairVerdict } from '#judge/verdict/pair.ts';
import type { Because } from '#standards/because.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { confirmedWords } from '#words/text/confirmed-words.ts';
import { kilovoltsUp, lengthUp } from '#words/text/number-words.ts';
import { pairNames, pairSentence } from '#words/verdict/pair-words.ts';
import { printable } from '#words/text/printable.ts';
import { workedSheet, type SheetRow } from './derivation-table.ts';

export function explainText(pair: PairVerdict, looks: readonly CircuitLook[]): string {
  const sheets = sheetsOf(pair).map(({ title, why }) => [title, ...columns(workedSheet(why))].join('\n'));
  const head = [`How the figures were found: ${pairNames(pair.between, looks)}`, pairSentence(pair, looks)];
  return `${[head.map(printable).join('\n'), ...sheets].join('\n\n')}\n`;
}

interface Sheet {
  readonly title: string;
  readonly why: Because;
}

/** Every figure of a pair with its derivation, in the order in which they build on each other. */
export function sheetsOf(pair: PairVerdict): readonly Sheet[] {
  const { required, stress } = pair;
  const asked = required === null ? [] : askedSheets(required);
  return [
    { title: 'Working voltage', why: stress.because },
    ...asked,
    { title: `Grade reached: ${pair.achieved}`, why: pair.because },
  ];
}

function askedSheets(required: NonNullable<PairVerdict['required']>): readonly Sheet[] {
  const { clearance, creepage, throughInsulation, test } = required;
  return [
    {
      title: `Creepage asked: basic ${lengthUp(creepage.basic)}, reinforced ${lengthUp(creepage.reinforced)} ${lengthUnit()}, group ${creepage.materialGroup}`,
      why: creepage.because,
    },
    {
      title: `Clearance asked: basic ${lengthUp(clearance.basic)}, reinforced ${lengthUp(clearance.reinforced)} ${lengthUnit()}`,
      why: clearance.because,
    },
    {
      title: `Solid insulation asked: ${lengthUp(throughInsulation.leastThickness)} ${lengthUnit()} in one layer, or ${plyWords(throughInsulation.plies)}`,
      why: throughInsulation.because,
    },
    {
      title: `Withstand test: ${kilovoltsUp(test.peak)} peak, ${kilovoltsUp(test.rms)} rms, ${test.seconds} s`,
      why: test.because,
    },
  ];
}

/** Label, text, figure and how well it is known, padded to the widest of each. */
function columns(rows: readonly SheetRow[]): readonly string[] {
  const cells = rows.map(({ label, text, value, confirmed }) =>
    [label, text, value, confirmed === null ? '' : confirmedWords(confirmed)].map(printable),
  );
  const widths = [0, 1, 2].map((column) => Math.max(0, ...cells.map((row) => row[column]?.length ?? 0)));
  return cells.map((row) => `  ${row.map((cell, k) => cell.padEnd(widths[k] ?? 0)).join('  ')}`.trimEnd());
}

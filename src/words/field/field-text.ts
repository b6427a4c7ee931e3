// The field in words, as the command line prints it; page and report take the same sentences.

import type { Design } from '#model/design.ts';
import type { FieldReport } from '#judge/field/field-report.ts';
import { leakageLines } from '#words/stress/leakage-words.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import type { Leakage } from '#stress/current/leakage.ts';
import { CAUTION } from '#words/text/answer-words.ts';
import { printable } from '#words/text/printable.ts';
import { capacitanceLines, switchingLines } from './capacitance-words.ts';
import { gapLines } from './gap-words.ts';
import { fieldHeadline, fieldBasis } from './field-headline.ts';

export interface FieldBlock {
  readonly title: string;
  readonly lines: readonly string[];
}

/** `leakage`: worked out anew with the capacitances that were found. */
export const fieldText = (design: Design, report: FieldReport, leakage: Leakage): string =>
  `${[
    { title: report.title, lines: [fieldHeadline(design, report), ...fieldBasis(design, report)] },
    ...fieldBlocks(design, report),
    ...after(design, report, leakage),
  ]
    .filter(({ lines }) => lines.length > 0)
    .map(({ title, lines }) => [title, ...lines.map((line) => `  ${line}`)].map(printable).join('\n'))
    .join('\n\n')}\n`;

export function fieldBlocks(design: Design, report: FieldReport): readonly FieldBlock[] {
  if (report.none !== null) return [];
  return [
    { title: 'Where discharge would start', lines: gapLines(design, report) },
    { title: 'Capacitances', lines: capacitanceLines(design, report) },
    { title: 'What switching drives', lines: switchingLines(design, report) },
  ];
}

function after(design: Design, { none }: FieldReport, leakage: Leakage): readonly FieldBlock[] {
  if (none !== null) return [];
  return [
    { title: 'Touch current', lines: leakageLines(leakage, circuitLooks(design.circuits)) },
    { title: 'Cautions', lines: [CAUTION] },
  ];
}

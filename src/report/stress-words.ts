// Stress in words, as the command line prints it: working voltages, what enamel holds, bridging parts, touch current,
// the test plan with what a pass would not prove, heat, and the cautions.

import type { Design } from '#model/design.ts';
import { CAUTION, answerWords, bookWords } from './answer-words.ts';
import { bridgeLine } from './bridge-words.ts';
import { circuitLooks, type CircuitLook } from './circuit-look.ts';
import { heatLines } from './heat-words.ts';
import { leakageLines } from './leakage-words.ts';
import { printable } from './printable.ts';
import type { StressSheet } from './stress-sheet.ts';
import { testLines, TEST_CAUTIONS } from './test-words.ts';
import { neighbourLine, pairStressLines } from './voltage-words.ts';

export function stressText(design: Design, sheet: StressSheet): string {
  return `${stressBlocks(sheet, circuitLooks(design.circuits))
    .filter(({ lines }) => lines.length > 0)
    .map(({ title, lines }) => [title, ...lines.map((line) => `  ${line}`)].map(printable).join('\n'))
    .join('\n\n')}\n`;
}

export interface StressBlock {
  readonly title: string;
  readonly lines: readonly string[];
}

/** The same blocks on the command line, on the page and in the report. */
export function stressBlocks(sheet: StressSheet, looks: readonly CircuitLook[]): readonly StressBlock[] {
  return [
    { title: sheet.title, lines: [`${answerWords(sheet.verdict)}, ${bookWords(sheet.rules)}`] },
    { title: 'Working voltages', lines: sheet.pairs.flatMap((pair) => pairStressLines(pair, looks)) },
    { title: 'Neighbouring layers on one side', lines: sheet.neighbours.map(neighbourLine) },
    { title: 'Bridging parts', lines: sheet.bridges.map((bridge) => bridgeLine(bridge, looks)) },
    { title: 'Touch current', lines: leakageLines(sheet.leakage, looks) },
    { title: 'Test plan', lines: sheet.tests.flatMap((test) => testLines(test, looks)) },
    { title: 'Heat', lines: heatLines(sheet.heat) },
    { title: 'Cautions', lines: [CAUTION, ...(sheet.tests.length === 0 ? [] : TEST_CAUTIONS)] },
  ];
}

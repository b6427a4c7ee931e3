// Stress in words, as the command line prints it: working voltages, what enamel holds, bridging parts, touch current,
// the test plan with what a pass would not prove, heat, and the cautions.

import type { Design } from '#model/design.ts';
import { CAUTION, answerWords, bookWords } from '#words/text/answer-words.ts';
import { bridgeLine, outsideLine } from '#words/verdict/bridge-words.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { heatLines } from './heat-words.ts';
import { leakageLines } from './leakage-words.ts';
import { printable } from '#words/text/printable.ts';
import type { StressReport } from '#judge/study/stress-report.ts';
import { testLines, untestedLine, TEST_CAUTIONS } from '#words/verdict/test-words.ts';
import { neighbourLine, pairStressLines } from './voltage-words.ts';

export function stressText(design: Design, sheet: StressReport): string {
  return `${stressBlocks(sheet, design)
    .filter(({ lines }) => lines.length > 0)
    .map(({ title, lines }) => [title, ...lines.map((line) => `  ${line}`)].map(printable).join('\n'))
    .join('\n\n')}\n`;
}

export interface StressBlock {
  readonly title: string;
  readonly lines: readonly string[];
  /** Those of the lines that say of something that it falls short. */
  readonly short: readonly string[];
}

/** The same blocks on the command line, on the page and in the report. */
export function stressBlocks(sheet: StressReport, design: Design): readonly StressBlock[] {
  const looks = circuitLooks(design.circuits);
  const bridge = (one: StressReport['bridges'][number]) => bridgeLine(one, looks);
  const unsafe = sheet.bridges.filter(({ best }) => best.unsafe !== null);
  const exceeded = sheet.neighbours.filter(({ exceeds }) => exceeds);
  const leakage = leakageLines(sheet.leakage, looks);
  return [
    block(sheet.title, [`${answerWords(sheet.verdict)}, ${bookWords(sheet.rules)}`]),
    block(
      'Working voltages',
      sheet.pairs.flatMap((pair) => pairStressLines(pair, looks)),
    ),
    block(
      'Neighbouring layers on one side',
      sheet.neighbours.map(neighbourLine),
      exceeded.map(neighbourLine),
    ),
    block('Bridging parts', sheet.bridges.map(bridge), unsafe.map(bridge)),
    block(
      'Board gaps and pin rows',
      sheet.outside.map((entry) => outsideLine(entry, looks)),
    ),
    block(
      'Touch current',
      leakage,
      leakage.filter((line) => line.endsWith(answerWords('falls-short'))),
    ),
    block('Test plan', [
      ...sheet.tests.flatMap((test) => testLines(test, looks)),
      ...sheet.untested.map((pair) => untestedLine(pair, looks)),
    ]),
    block('Heat', heatLines(sheet.heat, design)),
    block('Cautions', [CAUTION, ...(sheet.tests.length === 0 ? [] : TEST_CAUTIONS)]),
  ];
}

const block = (title: string, lines: readonly string[], short: readonly string[] = []): StressBlock => ({
  title,
  lines,
  short,
});

// The proving test of a pair in words, with what a pass would and would not show. A build can pass and still fall
// short: the test knows nothing of pollution, of years, and of the next piece from the line.

import { lengthUnit } from '#words/text/length-unit.ts';
import type { TestOutcome, TestPlan } from '#stress/breakdown/test-plan.ts';

import { answerWords } from '#words/text/answer-words.ts';
import type { CircuitLook } from '#words/design/circuit-look.ts';
import { kilovoltsUp, lengthDown, plies } from '#words/text/number-words.ts';
import { nameOf, pairNames } from './pair-words.ts';
import { inMm } from '#units/quantity.ts';
import type { PairTest, Untested } from '#judge/study/stress-report.ts';

export function testLines(test: PairTest, looks: readonly CircuitLook[]): readonly string[] {
  const { type, routine, connect, disconnect } = test;
  const names = (ids: readonly string[]) => ids.map((id) => nameOf(id, looks)).join(' and ');
  return [
    `${test.proves.map((pair) => pairNames(pair, looks)).join(' and ')}, ${test.needed}: ${levelWords(type)} for ${type.seconds} s${highWords(test)}`,
    ...(routine === null
      ? []
      : [`  in production ${levelWords(routine)} for ${routine.seconds[0]} to ${routine.seconds[1]} s`]),
    `  join all ends of ${names(connect[0])}; join all ends of ${names(connect[1])}; ${CORE[test.core]}`,
    ...(disconnect.length === 0 ? [] : [`  take off first: ${disconnect.join(', ')}`]),
    `  ${expectedWords(test)}`,
    `  ${proofWords(test)}`,
  ];
}

/** Solids are tested at mains frequency with more, for what high frequency takes from them. */
const highWords = ({ ordinary }: PairTest): string =>
  ordinary === null ? '' : `, for its part above 30 kHz; the ordinary level is ${kilovoltsUp(ordinary)} peak`;

/** Why a pair has no test. */
export function untestedLine({ between, rms, peak }: Untested, looks: readonly CircuitLook[]): string {
  const at = `${Math.round(rms)} V rms and ${Math.ceil(peak)} V peak`;
  return `${pairNames(between, looks)}: no test level; at ${at} the voltages of this supply are beyond the rule book's tables`;
}

const levelWords = ({ rms, dc }: TestPlan['type'] | NonNullable<TestPlan['routine']>): string =>
  `${kilovoltsUp(rms)} rms or ${kilovoltsUp(dc)} dc`;

const CORE: Readonly<Record<TestPlan['core'], string>> = {
  'either-side': 'once with the core joined to the first side, once to the second',
  first: 'the core on the first side',
  second: 'the core on the second side',
  left: 'the core as it is bound',
};

function expectedWords({ expected, outcome }: PairTest): string {
  if (expected === null)
    return 'what it would break down at is not known: no path is left, or the strength of one';
  const { path, least, likely, most } = expected;
  const way =
    path.length === 0 && path.plies === 0
      ? 'the enamel where wires touch'
      : [
          path.length > 0 ? `${lengthDown(inMm(path.length))} ${lengthUnit()} of air` : '',
          path.plies > 0 ? plies(path.plies) : '',
        ]
          .filter((part) => part !== '')
          .join(' and ');
  const span = least === most ? '' : ` (${kilovolts(least)} to ${kilovolts(most)})`;
  return `weakest way ${way}: breaks down at about ${kilovolts(likely)} peak${span}; ${OUTCOMES[outcome]}`;
}

const kilovolts = (value: number): string => `${(value / 1000).toFixed(1)} kV`;

const OUTCOMES: Readonly<Record<TestOutcome, string>> = {
  'likely-passes': 'this build probably passes',
  'may-pass': 'this build may pass or fail',
  'likely-fails': 'this build probably fails',
  unknown: 'nothing can be expected',
};

function proofWords({ outcome, verdict }: PairTest): string {
  const trap =
    verdict === 'falls-short' && (outcome === 'likely-passes' || outcome === 'may-pass')
      ? `A pass would mislead here: the pair ${answerWords(verdict)}. `
      : '';
  return `${trap}A pass shows that nothing breaks down today. It shows no distance, no ply and no grade.`;
}

/** For whoever carries it out. */
export const TEST_CAUTIONS: readonly string[] = [
  'Test voltages kill. Only a qualified person tests, with a source limited in current, a screened place and nobody within reach.',
  'Raise the voltage slowly, hold it, lower it slowly; after direct voltage discharge both sides before touching.',
  'Every full test ages the insulation: repeat it rarely, and at less.',
  'A tested piece that broke down is waste, also if it passes the next time.',
];

// Verdicts as JUnit XML, which build servers read: a suite for each file, a case for the build and one for each of its pairs.
// Falling short is a failure, and so is what is not shown, for unknown counts as worst; a file that was not judged is an error.

import type { Design } from '#model/design.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { answerWords, bookWords } from '#words/text/answer-words.ts';
import { escapeText } from '#words/text/escape-text.ts';
import { circuitLooks } from '#words/design/circuit-look.ts';
import { headline, pairNames, pairSentence } from '#words/verdict/pair-words.ts';

/** One `<testsuite>`. */
export function junitSuite(file: string, design: Design, verdict: Verdict): string {
  const looks = circuitLooks(design.circuits);
  const group = `${design.title}, ${bookWords(verdict.rules)}`;
  const cases = [
    testCase(group, 'the whole build', verdict.verdict, headline(verdict, looks)),
    ...verdict.pairs.map((pair) =>
      testCase(group, pairNames(pair.between, looks), pair.verdict, pairSentence(pair, looks)),
    ),
  ];
  const failures = cases.filter(({ failed }) => failed).length;
  return suite(file, { tests: cases.length, failures, errors: 0 }, cases.map(({ text }) => text).join(''));
}

/** One `<testsuite>` of a file that could not be judged. */
export const junitError = (file: string, says: string): string =>
  suite(
    file,
    { tests: 1, failures: 0, errors: 1 },
    `    <testcase${given({ classname: file, name: 'reading the file' })}>\n      <error${given({ message: says })}/>\n    </testcase>\n`,
  );

/** The whole document. */
export const junitOf = (suites: readonly string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<testsuites>\n${suites.join('')}</testsuites>\n`;

function testCase(
  classname: string,
  name: string,
  answer: Answer,
  says: string,
): { readonly failed: boolean; readonly text: string } {
  const open = `    <testcase${given({ classname, name })}`;
  if (answer === 'meets') return { failed: false, text: `${open}/>\n` };
  const failure = `<failure${given({ type: answer, message: answerWords(answer) })}>${escapeText(says)}</failure>`;
  return { failed: true, text: `${open}>\n      ${failure}\n    </testcase>\n` };
}

const suite = (name: string, counts: Readonly<Record<string, number>>, inside: string): string =>
  `  <testsuite${given({ name, ...counts })}>\n${inside}  </testsuite>\n`;

const given = (attributes: Readonly<Record<string, string | number>>): string =>
  Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escapeText(String(value)).replace(/\s+/g, ' ')}"`)
    .join('');

// One of many files, judged and already told: the verdict itself is let go, so that a thousand of them fit in memory.

import { told } from '#words/told.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { sideBySideText } from '#words/books/side-by-side-text.ts';
import { printable } from '#words/text/printable.ts';
import { verdictLine } from '#words/verdict/verdict-text.ts';
import { lowestAnswer } from '#judge/answers/pair-answer.ts';
import { judge } from '#judge/judging/judge.ts';
import { sideBySide } from '#judge/study/side-by-side.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Design } from '#model/design.ts';
import { junitError, junitSuite } from '#papers/junit.ts';
import { explained } from '#cli/line/explained.ts';
import type { FileJob } from './file-job.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { ownFault } from '#cli/line/own-fault.ts';

/** How the files are to be judged and told. */
export interface JudgeOrder {
  /** Ids of the rule books, one verdict each; empty: that of the file. */
  readonly rules: readonly string[];
  readonly form: 'words' | 'json' | 'junit';
  /** Empty: the worst pair; null: no worked sheet. */
  readonly explain: string | null;
}

/** `fault`: one of the program. */
export interface JudgeItem {
  readonly answer: Answer | 'bad' | 'fault';
  readonly text: string;
}

export const judgeJob: FileJob<JudgeOrder, JudgeItem> = {
  item: (file, _, order) => judgeItem(file, order),
  fault: faultItem,
};

function judgeItem(file: string, { rules, form, explain }: JudgeOrder): JudgeItem {
  const loaded = loadDesign(file, rules[0]);
  if (loaded.kind === 'bad') return badItem(file, loaded.faults, form, rules.length);
  const { design } = loaded;
  if (rules.length > 1) return itemByBooks(file, design, rules, form);
  const { verdict } = judge(design);
  const answer = verdict.verdict;
  if (form === 'json') return { answer, text: JSON.stringify(told(verdict)) };
  if (form === 'junit') return { answer, text: junitSuite(file, design, verdict) };
  const sheets = explain === null ? [] : (explained(design, verdict, explain) ?? []);
  return { answer, text: [`${verdictLine(file, design, verdict)}\n`, ...sheets].join('') };
}

/** One verdict by every one of these books. */
export const verdictsBy = (design: Design, books: readonly string[]): readonly Verdict[] =>
  books.map((rules) => judge({ ...design, rules }).verdict);

/** Flat as JSON, side by side in words. */
function itemByBooks(
  file: string,
  design: Design,
  books: readonly string[],
  form: JudgeOrder['form'],
): JudgeItem {
  if (form === 'json') {
    const verdicts = verdictsBy(design, books);
    const answer = lowestAnswer(verdicts.map(({ verdict }) => verdict));
    return { answer, text: verdicts.map((verdict) => JSON.stringify(told(verdict))).join(',\n') };
  }
  const found = sideBySide(design, books);
  const answer = lowestAnswer(found.books.map(({ verdict }) => verdict));
  return { answer, text: `${printable(file)}\n${sideBySideText(design, found)}\n` };
}

/** As JSON it takes the place of every verdict that it would have had, so that places tell files and books. */
function badItem(
  file: string,
  faults: readonly BadInput[],
  form: JudgeOrder['form'],
  books: number,
): JudgeItem {
  const [first] = faults;
  if (form === 'junit') return { answer: 'bad', text: junitError(file, faultLines(file, faults)) };
  if (form === 'words')
    return { answer: 'bad', text: `bad input    ${faultLines(file, faults.slice(0, 1))}\n` };
  const more = faults.length > 1 ? { faults } : {};
  return { answer: 'bad', text: forEach(books, JSON.stringify({ file, error: first, ...more })) };
}

const forEach = (books: number, text: string): string =>
  Array.from({ length: Math.max(1, books) }, () => text).join(',\n');

function faultItem(file: string, broke: unknown, { form, rules }: JudgeOrder): JudgeItem {
  const says = ownFault(file, broke);
  if (form === 'junit') return { answer: 'fault', text: junitError(file, says) };
  if (form === 'words') return { answer: 'fault', text: `not judged   ${says}\n` };
  const error: BadInput = { field: '', found: 'a fault of the program', expected: 'a verdict', says };
  return { answer: 'fault', text: forEach(rules.length, JSON.stringify({ file, error })) };
}

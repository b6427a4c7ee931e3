// One of many files, judged and already told: the verdict itself is let go, so that a thousand of them fit in memory.

import { told } from '#words/told.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { verdictLine } from '#words/verdict/verdict-text.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Answer } from '#judge/verdict/answer.ts';
import { junitError, junitSuite } from '#papers/junit.ts';
import { explained } from '#cli/line/explained.ts';
import type { FileJob } from './file-job.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { ownFault } from '#cli/line/own-fault.ts';

/** How the files are to be judged and told. */
export interface JudgeOrder {
  readonly rules: string | null;
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
  fault: (file, error, { form }) => faultItem(file, error, form),
};

function judgeItem(file: string, { rules, form, explain }: JudgeOrder): JudgeItem {
  const loaded = loadDesign(file, rules);
  if (loaded.kind === 'bad') return badItem(file, loaded.faults, form);
  const { design } = loaded;
  const { verdict } = judge(design);
  const answer = verdict.verdict;
  if (form === 'json') return { answer, text: JSON.stringify(told(verdict)) };
  if (form === 'junit') return { answer, text: junitSuite(file, design, verdict) };
  const sheets = explain === null ? [] : (explained(design, verdict, explain) ?? []);
  return { answer, text: [`${verdictLine(file, design, verdict)}\n`, ...sheets].join('') };
}

function badItem(file: string, faults: readonly BadInput[], form: JudgeOrder['form']): JudgeItem {
  const [first] = faults;
  if (form === 'junit') return { answer: 'bad', text: junitError(file, faultLines(file, faults)) };
  if (form === 'words')
    return { answer: 'bad', text: `bad input    ${faultLines(file, faults.slice(0, 1))}\n` };
  const more = faults.length > 1 ? { faults } : {};
  return { answer: 'bad', text: JSON.stringify({ file, error: first, ...more }) };
}

function faultItem(file: string, broke: unknown, form: JudgeOrder['form']): JudgeItem {
  const says = ownFault(file, broke);
  if (form === 'junit') return { answer: 'fault', text: junitError(file, says) };
  if (form === 'words') return { answer: 'fault', text: `not judged   ${says}\n` };
  const error: BadInput = { field: '', found: 'a fault of the program', expected: 'a verdict', says };
  return { answer: 'fault', text: JSON.stringify({ file, error }) };
}

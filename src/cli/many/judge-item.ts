// One of many files, judged and already told: the verdict itself is let go, so that a thousand of them fit in memory.

import { told } from '#words/told.ts';
import type { BadInput } from '#model/faults/bad-input.ts';
import { verdictLine } from '#words/verdict/verdict-text.ts';
import { judge } from '#judge/judging/judge.ts';
import type { Answer } from '#judge/verdict/verdict.ts';
import { explained } from '#cli/line/explained.ts';
import type { FileJob } from './file-job.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { ownFault } from '#cli/line/own-fault.ts';

/** How the files are to be judged and told. */
export interface JudgeOrder {
  readonly rules: string | null;
  readonly json: boolean;
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
  fault: (file, error, { json }) => faultItem(file, error, json),
};

function judgeItem(file: string, { rules, json, explain }: JudgeOrder): JudgeItem {
  const loaded = loadDesign(file, rules);
  if (loaded.kind === 'bad') return badItem(file, loaded.faults, json);
  const { design } = loaded;
  const { verdict } = judge(design);
  const answer = verdict.verdict;
  if (json) return { answer, text: JSON.stringify(told(verdict)) };
  const sheets = explain === null ? [] : (explained(design, verdict, explain) ?? []);
  return { answer, text: [`${verdictLine(file, design, verdict)}\n`, ...sheets].join('') };
}

function badItem(file: string, faults: readonly BadInput[], json: boolean): JudgeItem {
  const [first] = faults;
  if (!json) return { answer: 'bad', text: `bad input    ${faultLines(file, faults.slice(0, 1))}\n` };
  const more = faults.length > 1 ? { faults } : {};
  return { answer: 'bad', text: JSON.stringify({ file, error: first, ...more }) };
}

function faultItem(file: string, broke: unknown, json: boolean): JudgeItem {
  const says = ownFault(file, broke);
  if (!json) return { answer: 'fault', text: `not judged   ${says}\n` };
  const error: BadInput = { field: '', found: 'a fault of the program', expected: 'a verdict', says };
  return { answer: 'fault', text: JSON.stringify({ file, error }) };
}

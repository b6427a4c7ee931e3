// `judge --jsonl`: one design a line in, one verdict a line out, in the same order and in memory that does not grow. A line that
// is no design, or over which the program breaks, gives `{ "line", "error" }` in its place. Empty lines are passed over.

import { told } from '#words/told.ts';
import { createReadStream } from 'node:fs';
import type { BadInput } from '#model/faults/bad-input.ts';
import { judge } from '#judge/judging/judge.ts';
import { inputLines } from '#cli/files/input-lines.ts';
import { readDesignOf } from '#cli/files/load-design.ts';
import { ownFault } from '#cli/line/own-fault.ts';
import type { ExitCode, Outcome } from '#cli/line/outcome.ts';

/** `file`: `-` is standard input. `write` resolves once it may be called again. */
export async function judgeLines(
  file: string,
  rules: string | null,
  write: (text: string) => Promise<void>,
): Promise<Outcome> {
  let code: ExitCode = 0;
  const bytes = file === '-' ? process.stdin : createReadStream(file);
  for await (const { number, text } of inputLines(bytes)) {
    const answer = answerOf(number, text, rules);
    if (answer.code > code) code = answer.code;
    await write(`${answer.line}\n`);
  }
  return { code, out: [], err: '' };
}

interface LineAnswer {
  readonly code: ExitCode;
  readonly line: string;
}

function answerOf(line: number, text: string | BadInput, rules: string | null): LineAnswer {
  const bad = (code: ExitCode, error: BadInput | undefined): LineAnswer => ({
    code,
    line: JSON.stringify({ line, error }),
  });
  if (typeof text !== 'string') return bad(2, text);
  try {
    const read = readDesignOf(text, rules);
    if (read.kind === 'bad') return bad(2, read.faults[0]);
    const { verdict } = judge(read.design);
    return { code: verdict.verdict === 'meets' ? 0 : 1, line: JSON.stringify(told(verdict)) };
  } catch (error) {
    const says = ownFault(`line ${line}`, error);
    return bad(3, { field: '', found: 'a fault of the program', expected: 'a verdict', says });
  }
}

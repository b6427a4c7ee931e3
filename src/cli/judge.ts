// `judge FILE... [--rules ID] [--json] [--explain [A,B]]`: the verdict in words or as JSON.

import type { BadInput } from '#model/bad-input.ts';
import type { Design } from '#model/design.ts';
import { circuitLooks } from '#report/circuit-look.ts';
import { explainText } from '#report/explain-text.ts';
import { worstFirst } from '#report/pair-words.ts';
import { verdictLine, verdictText } from '#report/verdict-text.ts';
import { printable } from '#report/printable.ts';
import { judge } from '#rules/judge.ts';
import { knownIds } from '#rules/known-ids.ts';
import type { Verdict } from '#rules/verdict.ts';
import { readArguments } from './arguments.ts';
import { faultLines, loadDesign } from './load-design.ts';
import { refused, type ExitCode, type Outcome } from './outcome.ts';

type Judged =
  | { readonly kind: 'verdict'; readonly file: string; readonly design: Design; readonly verdict: Verdict }
  | { readonly kind: 'bad'; readonly file: string; readonly faults: readonly BadInput[] };

export function judgeFiles(words: readonly string[]): Outcome {
  const given = readArguments(words, { rules: 'value', json: 'switch', explain: 'pair' });
  if (given.kind === 'wrong') return refused(`judge: ${given.says}.`);
  const { files, options } = given;
  const rules = options.get('rules') ?? null;
  if (files.length === 0) return refused('judge: name at least one design file, or - for standard input.');
  if (files.filter((file) => file === '-').length > 1)
    return refused('judge: standard input can be read once only.');
  if (rules !== null && !knownIds.rules.includes(rules))
    return refused(
      `judge: there is no rule book ${printable(rules)}; there is ${knownIds.rules.join(', ')}.`,
    );
  const judged = files.map((file) => judgeFile(file, rules));
  const explain = options.get('explain') ?? null;
  const [only] = judged;
  if (judged.length === 1 && only !== undefined) return one(only, options.has('json'), explain);
  return options.has('json') ? manyAsJson(judged) : manyInWords(judged, explain);
}

function judgeFile(file: string, rules: string | null): Judged {
  const loaded = loadDesign(file, rules);
  if (loaded.kind === 'bad') return { kind: 'bad', file, faults: loaded.faults };
  const { design } = loaded;
  return { kind: 'verdict', file, design, verdict: judge(design).verdict };
}

function one(judged: Judged, json: boolean, explain: string | null): Outcome {
  if (judged.kind === 'bad') return refused(faultLines(judged.file, judged.faults));
  const { design, verdict } = judged;
  if (json) return { code: codeOf(judged), out: [`${JSON.stringify(verdict, null, 2)}\n`], err: '' };
  const sheets = explain === null ? [] : explained(judged, explain);
  if (sheets === null)
    return refused(`judge: ${printable(judged.file)} has no pair ${printable(explain ?? '')}.`);
  return { code: codeOf(judged), out: [verdictText(design, verdict), ...sheets], err: '' };
}

/** Worked sheets of the worst pair or of the named one; null where there is no such pair. */
function explained(judged: Extract<Judged, { kind: 'verdict' }>, asked: string): readonly string[] | null {
  const looks = circuitLooks(judged.design.circuits);
  const [worst] = worstFirst(judged.verdict);
  const ids = asked.split(',');
  const pair =
    asked === ''
      ? worst
      : judged.verdict.pairs.find(
          ({ between }) => ids.length === 2 && between.every((id) => ids.includes(id)),
        );
  if (pair === undefined) return asked === '' ? [] : null;
  return [`\n${explainText(pair, looks)}`];
}

/** Piece by piece, because the whole of a thousand verdicts is longer than one text may be. */
function manyAsJson(all: readonly Judged[]): Outcome {
  const items = all.map((judged, k) => {
    const end = k === all.length - 1 ? '\n' : ',\n';
    return JSON.stringify(judged.kind === 'bad' ? badItem(judged.file, judged.faults) : judged.verdict) + end;
  });
  return { code: worstCode(all), out: ['[\n', ...items, ']\n'], err: '' };
}

function badItem(file: string, faults: readonly BadInput[]) {
  const [first] = faults;
  return faults.length > 1 ? { file, error: first, faults } : { file, error: first };
}

function manyInWords(all: readonly Judged[], explain: string | null): Outcome {
  const lines = all.flatMap((judged) => {
    if (judged.kind === 'bad')
      return [`bad input    ${faultLines(judged.file, judged.faults.slice(0, 1))}\n`];
    const sheets = explain === null ? [] : (explained(judged, explain) ?? []);
    return [`${verdictLine(judged.file, judged.design, judged.verdict)}\n`, ...sheets];
  });
  return { code: worstCode(all), out: [...lines, `\n${summary(all)}\n`], err: '' };
}

function summary(all: readonly Judged[]): string {
  const count = (is: (judged: Judged) => boolean): number => all.filter(is).length;
  const answered = (answer: Verdict['verdict']): number =>
    count((judged) => judged.kind === 'verdict' && judged.verdict.verdict === answer);
  const parts = [
    `${answered('meets')} meet`,
    `${answered('falls-short')} fall short`,
    `${answered('not-shown')} not shown`,
    `${count(({ kind }) => kind === 'bad')} bad input`,
  ];
  return `${all.length} files: ${parts.join(', ')}`;
}

const codeOf = (judged: Judged): ExitCode =>
  judged.kind === 'bad' ? 2 : judged.verdict.verdict === 'meets' ? 0 : 1;

const worstCode = (all: readonly Judged[]): ExitCode => all.map(codeOf).reduce((a, b) => (a > b ? a : b), 0);

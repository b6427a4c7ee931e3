// `judge FILE... [--rules ID] [--json] [--explain [A,B]]`: the verdict in words or as JSON; `judge --jsonl [FILE]`: one a line;
// with several `--rules`, or `--rules all`, one build by several rule books side by side.

import { told } from '#words/told.ts';
import { statSync } from 'node:fs';
import { verdictText } from '#words/verdict/verdict-text.ts';
import { printable } from '#words/text/printable.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { explained } from '#cli/line/explained.ts';
import type { JudgeOrder } from '#cli/many/judge-item.ts';
import { judgeLines } from '#cli/many/judge-lines.ts';
import { judgeMany } from '#cli/many/judge-many.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';
import { judgeBooks } from './judge-books.ts';

export function judgeFiles(words: readonly string[]): Outcome | Promise<Outcome> {
  const given = readArguments(words, {
    rules: 'values',
    json: 'switch',
    jsonl: 'switch',
    explain: 'pair',
  });
  if (given.kind === 'wrong') return refused(`judge: ${given.says}.`);
  const { files, options } = given;
  const books = booksOf(options);
  const rules = books?.[0] ?? null;
  const [only] = files;
  if (books !== null && books.length > 1 && options.has('jsonl'))
    return refused('judge: --jsonl judges by one rule book.');
  if (options.has('jsonl')) return linesOf(files, options);
  if (only === undefined) return refused('judge: name at least one design file, or - for standard input.');
  if (files.filter((file) => file === '-').length > 1)
    return refused('judge: standard input can be read once only.');
  for (const id of books ?? []) {
    const noBook = noSuchBook(id);
    if (noBook !== null) return noBook;
  }
  if (books !== null && books.length > 1) {
    if (files.length > 1) return refused('judge: several rule books are held side by side on one file.');
    if (options.has('explain')) return refused('judge: --explain prints the sheet of one rule book.');
    return judgeBooks(only, books, options.has('json'));
  }
  const order: JudgeOrder = { rules, json: options.has('json'), explain: options.get('explain') ?? null };
  return files.length === 1 ? judgeOne(only, order) : judgeMany(files, order);
}

/** The rule books that were named, each once; null: that of the file. */
function booksOf(options: ReadonlyMap<string, string>): readonly string[] | null {
  const named = options.get('rules')?.split('\n');
  if (named === undefined) return null;
  return [...new Set(named.flatMap((id) => (id === 'all' ? knownIds.rules : [id])))];
}

const noSuchBook = (rules: string | null): Outcome | null =>
  rules === null || knownIds.rules.includes(rules)
    ? null
    : refused(`judge: there is no rule book ${printable(rules)}; there is ${knownIds.rules.join(', ')}.`);

/** Without a file standard input is read. */
function linesOf(files: readonly string[], options: ReadonlyMap<string, string>): Outcome | Promise<Outcome> {
  const [file = '-'] = files;
  const rules = options.get('rules') ?? null;
  if (files.length > 1) return refused('judge: --jsonl reads one file, or standard input.');
  if (options.has('json') || options.has('explain'))
    return refused('judge: --jsonl writes one verdict a line, without --json or --explain.');
  if (file !== '-' && statSync(file, { throwIfNoEntry: false })?.isFile() !== true)
    return refused(`judge: ${printable(file)} is no file.`);
  return noSuchBook(rules) ?? judgeLines(file, rules, writeOut);
}

/** Waits where the reader is slower. */
const writeOut = (text: string): Promise<void> =>
  new Promise((goOn) => {
    if (process.stdout.write(text)) goOn();
    else process.stdout.once('drain', goOn);
  });

/** A single bad file prints nothing but its faults. */
function judgeOne(file: string, { rules, json, explain }: JudgeOrder): Outcome {
  const loaded = loadDesign(file, rules);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design } = loaded;
  const { verdict } = judge(design);
  const code = verdict.verdict === 'meets' ? 0 : 1;
  if (json) return { code, out: [`${JSON.stringify(told(verdict), null, 2)}\n`], err: '' };
  const sheets = explain === null ? [] : explained(design, verdict, explain);
  if (sheets === null) return refused(`judge: ${printable(file)} has no pair ${printable(explain ?? '')}.`);
  return { code, out: [verdictText(design, verdict), ...sheets], err: '' };
}

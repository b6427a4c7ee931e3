// `judge FILE... [--rules ID] [--json] [--junit] [--explain [A,B]]`: the verdict in words, as JSON or for a build server;
// `judge FILE --watch`: again whenever the file was written; `judge --jsonl [FILE]`: one a line;
// with several `--rules`, or `--rules all`, builds by several rule books, side by side in words, flat as JSON; with `--field` the touch current
// of one build by the field of its section, in place of the estimate.

import { told } from '#words/told.ts';
import { statSync } from 'node:fs';
import { verdictText } from '#words/verdict/verdict-text.ts';
import { printable } from '#words/text/printable.ts';
import { junitOf, junitSuite } from '#papers/junit.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Design } from '#model/design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { explained } from '#cli/line/explained.ts';
import type { JudgeOrder } from '#cli/many/judge-item.ts';
import { judgeLines } from '#cli/many/judge-lines.ts';
import { judgeMany } from '#cli/many/judge-many.ts';
import { faultLines, loadDesign } from '#cli/files/load-design.ts';
import { savesOf } from '#cli/files/saves-of.ts';
import { done, refused, type Outcome } from '#cli/line/outcome.ts';
import { judgeBooks } from './judge-books.ts';

export function judgeFiles(words: readonly string[]): Outcome | Promise<Outcome> {
  const given = readArguments(words, {
    rules: 'values',
    json: 'switch',
    jsonl: 'switch',
    junit: 'switch',
    watch: 'switch',
    field: 'switch',
    explain: 'pair',
  });
  if (given.kind === 'wrong') return refused(`judge: ${given.says}.`);
  const { files, options } = given;
  const books = booksOf(options);
  const [only] = files;
  if (books !== null && books.length > 1 && options.has('jsonl'))
    return refused('judge: --jsonl judges by one rule book.');
  const apart = APART.find((two) => two.every((option) => options.has(option)));
  if (apart !== undefined) return refused(`judge: --${apart[0]} and --${apart[1]} do not go together.`);
  if (options.has('jsonl')) return linesOf(files, options);
  if (only === undefined) return refused('judge: name at least one design file, or - for standard input.');
  if (files.filter((file) => file === '-').length > 1)
    return refused('judge: standard input can be read once only.');
  for (const id of books ?? []) {
    const noBook = noSuchBook(id);
    if (noBook !== null) return noBook;
  }
  if (books !== null && books.length > 1) {
    for (const option of ['explain', 'junit', 'watch', 'field'])
      if (options.has(option)) return refused(`judge: --${option} is for one rule book.`);
    if (files.length === 1) return judgeBooks(only, books, options.has('json'));
  }
  const form = options.has('json') ? 'json' : options.has('junit') ? 'junit' : 'words';
  const order: JudgeOrder = { rules: books ?? [], form, explain: options.get('explain') ?? null };
  if (options.has('watch')) return watchOne(files, order);
  if (options.has('field')) {
    if (files.length > 1) return refused('judge: --field solves the field of one build.');
    return judgeOneByField(only, order);
  }
  return files.length === 1 ? judgeOne(only, order) : judgeMany(files, order);
}

/** Options that do not go together. */
const APART = [
  ['junit', 'json'],
  ['junit', 'jsonl'],
  ['junit', 'explain'],
  ['watch', 'field'],
  ['watch', 'jsonl'],
  ['field', 'jsonl'],
] as const;

/** Ends with the interrupt key alone. */
async function watchOne(files: readonly string[], order: JudgeOrder): Promise<Outcome> {
  const [file = '-'] = files;
  if (files.length > 1 || !isFile(file)) return refused('judge: --watch is for one file that is there.');
  for await (const saved of savesOf(file)) {
    const { out, err } = judgeOne(saved, order);
    process.stderr.write(err);
    for (const piece of out) await writeOut(`${piece}\n`);
  }
  return done();
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
  if (file !== '-' && !isFile(file)) return refused(`judge: ${printable(file)} is no file.`);
  return noSuchBook(rules) ?? judgeLines(file, rules, writeOut);
}

const isFile = (file: string): boolean => statSync(file, { throwIfNoEntry: false })?.isFile() === true;

/** Waits where the reader is slower. */
const writeOut = (text: string): Promise<void> =>
  new Promise((goOn) => {
    if (process.stdout.write(text)) goOn();
    else process.stdout.once('drain', goOn);
  });

/** A single bad file prints nothing but its faults. */
function judgeOne(
  file: string,
  { rules, form, explain }: JudgeOrder,
  verdictOf = (design: Design): Verdict => judge(design).verdict,
): Outcome {
  const loaded = loadDesign(file, rules[0]);
  if (loaded.kind === 'bad') return refused(faultLines(file, loaded.faults));
  const { design } = loaded;
  const verdict = verdictOf(design);
  const code = verdict.verdict === 'meets' ? 0 : 1;
  if (form === 'junit') return { code, out: [junitOf([junitSuite(file, design, verdict)])], err: '' };
  if (form === 'json') return { code, out: [`${JSON.stringify(told(verdict), null, 2)}\n`], err: '' };
  const sheets = explain === null ? [] : explained(design, verdict, explain);
  if (sheets === null) return refused(`judge: ${printable(file)} has no pair ${printable(explain ?? '')}.`);
  return { code, out: [verdictText(design, verdict), ...sheets], err: '' };
}

/** Loaded where it is asked for: whoever only judges does not wait for the solver of fields. */
async function judgeOneByField(file: string, order: JudgeOrder): Promise<Outcome> {
  const { byField } = await import('#cli/verbs/by-field.ts');
  return judgeOne(file, order, (design) => byField(design).studied.verdict);
}

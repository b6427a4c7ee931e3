// The verbs of the command line. Each is loaded only when it is asked for, so that a start from cold stays short.

import type { Outcome } from '#cli/line/outcome.ts';

export interface Verb {
  readonly name: string;
  readonly usage: string;
  readonly says: string;
  readonly load: () => Promise<(words: readonly string[]) => Outcome | Promise<Outcome>>;
}

export const verbs: readonly Verb[] = [
  {
    name: 'judge',
    usage:
      'judge FILE... [--rules ID]... [--json | --junit | --explain [A,B]] [--field], or judge FILE --watch, or judge --jsonl [FILE]',
    says: 'verdict in words, as JSON or as JUnit XML; with --field the touch current by the field of the section; with --watch again whenever the file is saved, with --jsonl one design and one verdict a line; exit 0 meets, 1 falls short or not shown, 2 bad input, 3 a fault of the program',
    load: async () => (await import('#cli/verbs/judging/judge.ts')).judgeFiles,
  },
  {
    name: 'draw',
    usage: 'draw FILE --out X.svg [--section NAME] [--stretch N] [--black], or --out X.dxf, or --out X.png',
    says: 'the section with the weakest paths',
    load: async () => (await import('#cli/verbs/telling/draw.ts')).drawFile,
  },
  {
    name: 'stress',
    usage: 'stress FILE [--json]',
    says: 'working voltages, transients, bridging parts, touch current, tests, heat',
    load: async () => (await import('#cli/verbs/judging/stress.ts')).stressOfFile,
  },
  {
    name: 'field',
    usage: 'field FILE [--json] [--round] [--out X.svg], or --out X.edp',
    says: 'capacitances, where discharge would start, the picture of the field of the drawn section; the section as a script for FreeFem++',
    load: async () => (await import('#cli/verbs/telling/field.ts')).fieldOfFile,
  },
  {
    name: 'mend',
    usage: 'mend FILE [--json | --out X.html [--black]] [--top N]',
    says: 'the smallest changes that reach what is needed, best first',
    load: async () => (await import('#cli/verbs/searching/mend.ts')).mendFile,
  },
  {
    name: 'spread',
    usage:
      'spread FILE [--draws N] [--seed S] [--measured N] [--margin MM] [--tape MM] [--sleeve MM] [--forgotten-ply N] [--threads N] [--json]',
    says: 'tolerance: the share of pieces wound by this drawing that meet',
    load: async () => (await import('#cli/verbs/searching/spread.ts')).spreadFile,
  },
  {
    name: 'fit',
    usage: 'fit FILE [--json]',
    says: 'rows, fill, mean turn, wire, copper resistance cold and hot, weight',
    load: async () => (await import('#cli/verbs/searching/fit.ts')).fitOfFile,
  },
  {
    name: 'compare',
    usage: 'compare A B [--json | --out X.html [--black]]',
    says: 'two builds side by side: layers, pairs, what changed and what it did',
    load: async () => (await import('#cli/verbs/searching/compare.ts')).compareFiles,
  },
  {
    name: 'series',
    usage: 'series FILE VARIANTS.csv [--json]',
    says: 'one build with each row of figures (a column a field), judged',
    load: async () => (await import('#cli/verbs/searching/series.ts')).seriesOf,
  },
  {
    name: 'report',
    usage: 'report FILE --out X.html [--winder] [--black] [--field], or --out X.csv',
    says: 'self-contained report, prints to PDF; the sheet for who winds it; the figures alone',
    load: async () => (await import('#cli/verbs/telling/report.ts')).reportFile,
  },
  {
    name: 'overview',
    usage: 'overview FOLDER|FILE... --out DIR',
    says: 'one table of many builds, worst first, each opening its report',
    load: async () => (await import('#cli/verbs/judging/overview.ts')).overviewOf,
  },
  {
    name: 'exercise',
    usage: 'exercise ID [--seed S] [--answers] [--out X.html]',
    says: 'a printable exercise with numbers drawn for the seed, or its answer sheet',
    load: async () => (await import('#cli/verbs/learning/exercise.ts')).exerciseOf,
  },
  {
    name: 'mark',
    usage: 'mark FILE... [--json]',
    says: 'answer files of a class marked at once',
    load: async () => (await import('#cli/verbs/learning/mark.ts')).markFiles,
  },
  {
    name: 'table',
    usage:
      'table [TABLE] [--rules ID], or table TABLE --out X.svg [--at V] [--column C] [--place P,...] [--build FILE]',
    says: 'the tables of a rule book, or every cell of one and how well it is known; what it asks as a plot, with a build',
    load: async () => (await import('#cli/verbs/telling/table.ts')).tableOf,
  },
  {
    name: 'schema',
    usage: 'schema',
    says: 'JSON Schema of the design file',
    load: async () => (await import('#cli/verbs/telling/schema.ts')).printSchema,
  },
  {
    name: 'completion',
    usage: 'completion bash|zsh|fish',
    says: 'a script that lets the shell complete verbs, options and files',
    load: async () => (await import('#cli/verbs/telling/completion.ts')).completionOf(verbs),
  },
];

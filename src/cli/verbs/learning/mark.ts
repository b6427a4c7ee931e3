// `mark FILE... [--json]`: answer files of a class marked at once, one line each. A bad file does not stop the rest.

import { markAnswers, type MadeExercises, type Marking } from '#learn/exercise/mark.ts';
import { markedLine } from '#words/learn/exercise-words.ts';
import { printable } from '#words/text/printable.ts';
import { readArguments } from '#cli/line/arguments.ts';
import { refused, type Outcome } from '#cli/line/outcome.ts';
import { readFile } from '#cli/files/read-file.ts';

type Row = { readonly file: string; readonly marking: Marking };

export function markFiles(words: readonly string[]): Outcome {
  const given = readArguments(words, { json: 'switch' });
  if (given.kind === 'wrong') return refused(`mark: ${given.says}.`);
  if (given.files.length === 0) return refused('mark: name one answer file or more.');
  const made: MadeExercises = new Map();
  const rows = given.files.map((file): Row => ({ file, marking: markFile(file, made) }));
  const bad = rows.filter(({ marking }) => marking.kind === 'bad');
  const code = bad.length > 0 ? 2 : 0;
  if (given.options.has('json'))
    return { code, out: [`${JSON.stringify(rows.map(rowData), null, 2)}\n`], err: '' };
  const lines = rows.flatMap(({ marking }) =>
    marking.kind === 'marked' ? [printable(markedLine(marking.marked))] : [],
  );
  const err = bad.map(({ file, marking }) => `${printable(faultLine(file, marking))}\n`).join('');
  return { code, out: lines.map((line) => `${line}\n`), err };
}

function markFile(file: string, made: MadeExercises): Marking {
  const read = readFile(file, 'an answer file');
  if (read.kind === 'bad') return { kind: 'bad', ...read.fault };
  try {
    return markAnswers(JSON.parse(read.text), made);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { kind: 'bad', field: '', found: 'no JSON', expected: 'an answer file' };
  }
}

const faultLine = (file: string, marking: Marking): string =>
  marking.kind === 'bad'
    ? `${file}: ${marking.field === '' ? 'the file' : marking.field} is ${marking.found}; expected ${marking.expected}.`
    : file;

function rowData({ file, marking }: Row) {
  if (marking.kind === 'bad') {
    const { field, found, expected } = marking;
    return { file, error: { field, found, expected, says: faultLine(file, marking) } };
  }
  const { pupil, points, of, exercise, questions } = marking.marked;
  const answers = questions.map(({ question, given, isRight, slip }) => ({
    id: question.id,
    given,
    right: isRight,
    slip,
  }));
  return { file, pupil, exercise: exercise.id, seed: exercise.seed, points, of, answers };
}

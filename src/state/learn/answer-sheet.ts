// A pupil's answers as a file (format layerwright-answers/1) or a link, and reading them back to be marked. Reading bounds
// what comes in; what is wrong with a file is said by its field.

import type { Marked, Marking } from '#learn/exercise/mark.ts';
import { packedText, unpackedText } from '#state/storage/packed-text.ts';
import type { Thread } from '#state/threads/thread.ts';
import { markedLine } from '#words/learn/exercise-words.ts';

export interface GivenAnswers {
  readonly exercise: string;
  readonly seed: number;
  readonly pupil: string;
  readonly answers: Readonly<Record<string, string>>;
}

export interface MarkedFile {
  readonly name: string;
  /** Null where the file cannot be marked. */
  readonly marked: Marked | null;
  readonly says: string;
}

const MOST_BYTES = 100_000;

export const answersText = (given: GivenAnswers): string =>
  `${JSON.stringify({ format: 'layerwright-answers/1', ...given }, null, 2)}\n`;

/** What follows the page's name in a link that marks. */
export const markPlace = async (given: GivenAnswers): Promise<string> =>
  `mark/${await packedText(answersText(given))}`;

export async function markText(thread: Thread, name: string, text: string): Promise<MarkedFile> {
  const bad = (says: string): MarkedFile => ({ name, marked: null, says });
  if (text.length > MOST_BYTES) return bad('larger than any answer file');
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return bad('no answer file: it is no JSON');
  }
  const outcome = await thread.ask('mark', json).outcome;
  if (outcome.kind !== 'answer') return bad('not marked: the thread beside the page gave no answer');
  return markedFile(name, outcome.answer);
}

export async function markLink(thread: Thread, letters: string): Promise<MarkedFile> {
  const found = await unpackedText(letters);
  return found.kind === 'text'
    ? markText(thread, 'the link', found.text)
    : { name: 'the link', marked: null, says: found.says };
}

function markedFile(name: string, marking: Marking): MarkedFile {
  if (marking.kind === 'marked') return { name, marked: marking.marked, says: markedLine(marking.marked) };
  const { field, found, expected } = marking;
  return {
    name,
    marked: null,
    says: `${field === '' ? 'the file' : field} is ${found}; expected ${expected}`,
  };
}

// A lesson as a teacher writes it on the page: plain entries, read by the same schema as every other lesson, then held against
// the judge beside the page: its start misses the goal, its solution reaches it, and without its point it does not.

import { goalMet } from '#learn/lesson/goal-met.ts';
import { applyLessonEdits } from '#learn/lesson/lesson-edits.ts';
import type { Lesson, LessonEdit } from '#learn/lesson/lesson-schema.ts';
import { readLesson, type ReadLesson } from '#learn/lesson/read-lesson.ts';
import { readDesign } from '#model/read/read-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import { judgeErrand, type JudgeErrand } from '#state/judging/judge-errand.ts';
import { packedText, unpackedText } from '#state/storage/packed-text.ts';
import type { Thread } from '#state/threads/thread.ts';

export interface LessonEntries {
  title: string;
  short: string;
  asks: string;
  pair: string;
  way: boolean;
  length: boolean;
  grade: boolean;
  explains: string;
  task: string;
  hints: string;
  /** Lines of `path = value`. */
  solution: string;
  point: string;
  learnt: string;
  practice: string;
}

export type Proof = 'start' | 'solution' | 'point';

export class LessonDraft {
  readonly build: DesignFile;
  entries: LessonEntries = $state({
    title: '',
    short: '',
    asks: '',
    pair: '',
    way: false,
    length: false,
    grade: true,
    explains: '',
    task: '',
    hints: '',
    solution: '',
    point: '',
    learnt: '',
    practice: '',
  });
  readonly #judge: JudgeErrand;

  constructor(build: DesignFile, thread: Thread) {
    this.build = build;
    this.entries.pair = build.circuits
      .slice(0, 2)
      .map(({ id }) => id)
      .join(' to ');
    this.#judge = judgeErrand(thread);
  }

  readonly read: ReadLesson = $derived.by(() => readLesson(lessonOf(this.entries, this.build), knownIds));

  get text(): string {
    return `${JSON.stringify(lessonOf(this.entries, this.build), null, 2)}\n`;
  }

  get place(): Promise<string> {
    return packedText(this.text).then((letters) => `given/${letters}`);
  }

  /** What does not hold; empty: the lesson does what a lesson must. */
  async proved(lesson: Lesson): Promise<readonly Proof[]> {
    const solved = applyLessonEdits(lesson.build, lesson.solution);
    const undone = applyLessonEdits(solved, lesson.point);
    const tries = [
      ['start', lesson.build, false],
      ['solution', solved, true],
      ['point', undone, false],
    ] as const;
    const wrong: Proof[] = [];
    for (const [proof, doc, wanted] of tries)
      if ((await this.#isDone(lesson, doc)) !== wanted) wrong.push(proof);
    return wrong;
  }

  /** Null where the build cannot be judged. */
  async #isDone(lesson: Lesson, doc: DesignFile): Promise<boolean | null> {
    const read = readDesign(doc, knownIds);
    if (read.kind === 'bad') return null;
    const found = await this.#judge(read.design);
    if (found.kind !== 'judged') return null;
    return goalMet(lesson.task.goal, { verdict: found.judgement.verdict, doc, start: lesson.build });
  }
}

function lessonOf(entries: LessonEntries, build: DesignFile): unknown {
  const { title, short, asks, explains, task, solution, point, learnt, practice } = entries;
  const pair = entries.pair.split(' to ');
  const edits = editsOf(solution);
  return {
    format: 'layerwright-lesson/1',
    id: idOf(short),
    short,
    title,
    asks,
    pair,
    guess: (['way', 'length', 'grade'] as const).filter((each) => entries[each]),
    build: $state.snapshot(build),
    explains,
    task: {
      asks: task,
      fields: edits.flatMap((edit) => ('set' in edit ? [edit.set] : [])),
      goal: [{ is: 'pair-verdict', between: pair, verdict: 'meets' }],
    },
    hints: entries.hints
      .split('\n')
      .filter((line) => line.trim() !== '')
      .map((says) => ({ says: says.trim() })),
    solution: edits,
    point: editsOf(point),
    learnt: { says: learnt, practice },
  };
}

const idOf = (short: string): string =>
  short
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);

/** A value is what JSON makes of it (3, true), else the words that stand there (`2.45 mm`). */
function editsOf(lines: string): readonly LessonEdit[] {
  return lines
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [path = '', ...rest] = line.split('=');
      const text = rest.join('=').trim();
      return { set: path.trim(), to: valueOf(text) };
    });
}

function valueOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

export type GivenLesson = ReadLesson | { readonly kind: 'refused'; readonly says: string };

/** A lesson from a link or a file. */
export async function lessonOfLink(letters: string): Promise<GivenLesson> {
  const found = await unpackedText(letters);
  return found.kind === 'text' ? lessonOfText(found.text) : { kind: 'refused', says: found.says };
}

export function lessonOfText(text: string): GivenLesson {
  try {
    return readLesson(JSON.parse(text), knownIds);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { kind: 'refused', says: 'This is no lesson: it is no JSON.' };
  }
}

// The path of lessons: which there are, how far one has come with each, and the walk through the one that is open.

import type { Lesson } from '#learn/lesson/lesson-schema.ts';
import type { ThemeState } from '#state/document/theme.svelte.ts';
import { judging } from '#state/searches/judging.ts';
import { judgingBeside } from '#state/judging/judging-beside.ts';
import type { Threads } from '#state/threads/threads.ts';
import { saveFile } from '#state/storage/files.ts';
import { LessonWalk } from './lesson-walk.svelte.ts';
import {
  keepProgress,
  keptProgress,
  progressOfFile,
  progressText,
  progressTogether,
  type LessonProgress,
} from './progress.ts';

export class Learning {
  readonly lessons: readonly Lesson[];
  progress = $state.raw(keptProgress());
  /** This browser keeps nothing, so that progress lasts as long as the page. */
  isForgetful = $state(false);
  readonly #threads: Threads;
  readonly #theme: ThemeState;

  constructor(lessons: readonly Lesson[], threads: Threads, theme: ThemeState) {
    this.lessons = lessons;
    this.#threads = threads;
    this.#theme = theme;
  }

  of(id: string): LessonProgress | null {
    return this.progress.lessons[id] ?? null;
  }

  /** Judged beside the page, by the thread that runs errands: the sheet's own stays free. */
  walk(lesson: Lesson): LessonWalk {
    return new LessonWalk(
      lesson,
      { ...judging(), beside: judgingBeside(this.#threads.errands) },
      this.#theme,
    );
  }

  /** A lesson that was done once stays done. */
  note({ lesson, tries, hints }: LessonWalk, isDone: boolean): void {
    const before = this.of(lesson.id);
    const entry = { done: isDone || (before?.done ?? false), tries, hints };
    if (JSON.stringify(before) === JSON.stringify(entry)) return;
    this.progress = { ...this.progress, lessons: { ...this.progress.lessons, [lesson.id]: entry } };
    this.isForgetful = !keepProgress(this.progress);
  }

  /** Takes over what was saved elsewhere; false: it is no such file. */
  load(text: string): boolean {
    const found = progressOfFile(text);
    if (found === null) return false;
    this.progress = progressTogether(this.progress, found);
    this.isForgetful = !keepProgress(this.progress);
    return true;
  }

  save(): void {
    saveFile(progressText(this.progress), 'lessons-progress.json', 'application/json');
  }
}

// One walk through a lesson: say, see, change. Before one has said something the build only lies there, not judged; after
// it the same build is live under the hand, and the task is held against the judgement of the worker, never a stored answer.

import type { Judging } from '#state/document/editor.svelte.ts';
import { Workspace } from '#state/document/workspace.svelte.ts';
import { Editor } from '#state/document/editor.svelte.ts';
import type { ThemeState } from '#state/document/theme.svelte.ts';
import { goalMet } from '#learn/lesson/goal-met.ts';
import { applyLessonEdits } from '#learn/lesson/lesson-edits.ts';
import type { Lesson, LessonOffer } from '#learn/lesson/lesson-schema.ts';
import type { JudgedBuild } from '#state/judging/newest-judgement.svelte.ts';
import type { PairVerdict, Verdict } from '#state/judging/judged.ts';
import type { Said } from '#words/learn/guess-words.ts';

export const MOST_HINTS = 2;

export class LessonWalk {
  readonly lesson: Lesson;
  /** The build as it lies; its paths are not known. */
  readonly blind: Workspace;
  readonly live: Workspace;
  /** Null until one has said something, or that one does not know. */
  said: Said | null = $state.raw(null);
  /** 3: the stored solution was shown. */
  hints = $state(0);
  tries = $state(0);
  /** The build that the lesson begins with, as judged; null while it is on its way. */
  began: JudgedBuild | null = $state.raw(null);

  constructor(lesson: Lesson, judging: Judging, theme: ThemeState) {
    this.lesson = lesson;
    const { read, sketch = judging.judge } = judging;
    this.blind = new Workspace(new Editor(lesson.build, { read, judge: sketch }), theme);
    this.live = new Workspace(new Editor(lesson.build, judging), theme);
    this.live.selection.pair = lesson.pair;
  }

  get step(): 'say' | 'see' | 'change' {
    if (this.said === null) return 'say';
    return this.isChanged ? 'change' : 'see';
  }

  get isChanged(): boolean {
    return this.live.editor.doc !== this.lesson.build;
  }

  /** The judgement of the pair as the lesson began; null while it is on its way. */
  readonly before: PairVerdict | null = $derived.by(() =>
    this.#pairIn(this.began?.judgement.verdict ?? null),
  );

  /** The pair as it stands now, whatever is tried. */
  readonly now: PairVerdict | null = $derived.by(() => this.#pairIn(this.live.verdict));

  /** Whether the build as it was kept does what is asked; null while that is not known. */
  readonly isDone: boolean | null = $derived.by(() => {
    const { editor } = this.live;
    const judged = editor.isPreviewing ? null : editor.judgedNow;
    if (judged === null) return null;
    const { doc, judgement } = judged;
    return goalMet(this.lesson.task.goal, { verdict: judgement.verdict, doc, start: this.lesson.build });
  });

  /** Judges the build that the lesson begins with; resolves once that is known or will not be. */
  async begin(): Promise<void> {
    const judged = await this.live.editor.judgedSoon();
    if (judged?.doc !== this.lesson.build) return;
    this.began = judged;
    const section = this.before?.limiting?.section ?? null;
    if (section !== null && this.live.sections.includes(section)) this.live.pickSection(section);
  }

  say(said: Said): void {
    this.said = said;
  }

  /** One hint more; after the last the stored solution is laid out. */
  hint(): void {
    if (this.hints <= MOST_HINTS) this.hints += 1;
    const given = this.lesson.hints[this.hints - 1];
    if (given !== undefined) return this.#pointAt(given.at ?? null);
    this.hints = MOST_HINTS + 1;
    const solved = applyLessonEdits(this.lesson.build, this.lesson.solution);
    this.live.editor.change(solved, 'the stored solution');
    this.#pointAt(null);
  }

  /** A change that the lesson offers behind a button. An edit that no longer fits the build changes nothing. */
  offer({ says, edits }: LessonOffer): void {
    const { editor } = this.live;
    try {
      editor.change(applyLessonEdits(editor.doc, edits), says);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }

  /** The build as the lesson began; a step that can be taken back. */
  startAgain(): void {
    this.live.editor.change(this.lesson.build, 'begin the lesson again');
  }

  #pointAt(field: string | null): void {
    const layer = /^layers\[(\d+)\]/.exec(field ?? '')?.[1];
    this.live.selection.marked = layer === undefined ? [] : [Number(layer)];
  }

  #pairIn(verdict: Verdict | null): PairVerdict | null {
    const [a, b] = this.lesson.pair;
    return verdict?.pairs.find(({ between }) => between.includes(a) && between.includes(b)) ?? null;
  }
}

// How far one has come with the lessons, kept by this browser alone and handed on as a file (format layerwright-progress/1).
// What was kept may have been damaged since: whatever does not fit is begun anew.

import * as z from 'zod';

const entry = z.strictObject({
  /** Done, or begun only. */
  done: z.boolean(),
  /** How often a change was tried before it was done, and how many hints were taken. */
  tries: z.int().min(0).max(10_000),
  hints: z.int().min(0).max(3),
});

const progressSchema = z.strictObject({
  format: z.literal('layerwright-progress/1'),
  lessons: z.record(z.string().max(40), entry),
});

export type Progress = z.output<typeof progressSchema>;
export type LessonProgress = z.output<typeof entry>;

const KEY = 'layerwright-progress';
export const NO_PROGRESS: Progress = { format: 'layerwright-progress/1', lessons: {} };

export const readProgress = (text: string | null): Progress =>
  (text === null ? null : progressOfFile(text)) ?? NO_PROGRESS;

/** Of a file that was handed on; null: it is none. */
export function progressOfFile(text: string): Progress | null {
  try {
    const parsed = progressSchema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

/** Both together: what was done in either is done, with the tries and hints of the one that is further. */
export function progressTogether(here: Progress, there: Progress): Progress {
  const ids = new Set([...Object.keys(here.lessons), ...Object.keys(there.lessons)]);
  const lessons = Object.fromEntries(
    [...ids].map((id) => [id, further(here.lessons[id], there.lessons[id])] as const),
  );
  return { format: here.format, lessons };
}

function further(here: LessonProgress | undefined, there: LessonProgress | undefined): LessonProgress {
  if (here === undefined || there === undefined) return here ?? there ?? { done: false, tries: 0, hints: 0 };
  if (here.done !== there.done) return here.done ? here : there;
  return here.tries >= there.tries ? here : there;
}

export function keptProgress(): Progress {
  try {
    return readProgress(localStorage.getItem(KEY));
  } catch {
    return NO_PROGRESS;
  }
}

/** False where this browser keeps nothing. */
export function keepProgress(progress: Progress): boolean {
  try {
    localStorage.setItem(KEY, progressText(progress));
    return true;
  } catch {
    return false;
  }
}

export const progressText = (progress: Progress): string => `${JSON.stringify(progress, null, 2)}\n`;

// Progress as a file: taken over from elsewhere it takes nothing away, and whatever is no such file changes nothing.

import { describe, expect, it } from 'vitest';
import {
  NO_PROGRESS,
  type Progress,
  progressOfFile,
  progressText,
  progressTogether,
  readProgress,
} from '#state/learn/progress.ts';

const progress = (lessons: Progress['lessons']): Progress => ({ ...NO_PROGRESS, lessons });
const HERE = progress({
  margin: { done: true, tries: 1, hints: 0 },
  wire: { done: false, tries: 4, hints: 1 },
  heat: { done: false, tries: 0, hints: 0 },
});
const THERE = progress({
  margin: { done: false, tries: 9, hints: 2 },
  wire: { done: true, tries: 2, hints: 0 },
  heat: { done: false, tries: 3, hints: 0 },
  core: { done: true, tries: 1, hints: 0 },
});

describe('progress', () => {
  it('should keep what was done in either, whichever is taken over', () => {
    const together = progressTogether(HERE, THERE);
    expect(together).toEqual(progressTogether(THERE, HERE));
    expect(together.lessons).toEqual({
      margin: { done: true, tries: 1, hints: 0 },
      wire: { done: true, tries: 2, hints: 0 },
      heat: { done: false, tries: 3, hints: 0 },
      core: { done: true, tries: 1, hints: 0 },
    });
  });

  it('should come back from its file as it was', () => {
    expect(progressOfFile(progressText(HERE))).toEqual(HERE);
  });

  it.each(['', 'no json', '[]', '{"format":"layerwright-design/1"}', '{"format":"layerwright-progress/1"}'])(
    'should be none: %s',
    (text) => {
      expect(progressOfFile(text)).toBeNull();
      expect(readProgress(text)).toEqual(NO_PROGRESS);
    },
  );
});

import { describe, expect, it } from 'vitest';
import { actWords, changeWords } from '#words/mend/mend-words.ts';
import { plainFile } from '#test/model/sample-files.ts';

const plies = (from: unknown) => ({ field: 'layers[1].plies', from, to: 3 });

describe('an act on plies that nobody counted', () => {
  it('should have them counted first', () => {
    expect(actWords([plies('unknown')], plainFile())).toMatch(
      /^count the plies.* first; 3 if there are fewer$/,
    );
    expect(changeWords(plies('unknown'), plainFile())).toMatch(/count them first -> 3$/);
  });

  it('should tell those that are counted as ever', () => {
    expect(actWords([plies(1)], plainFile())).toMatch(/to 3 \(now 1\)$/);
  });
});

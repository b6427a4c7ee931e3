// The foot of every paper that a verdict stands on: what it was judged with, and who decides.

import type { Verdict } from '#judge/verdict/verdict.ts';
import { bookWords } from '#words/text/answer-words.ts';
import { TOOL_VERSION } from '#words/text/tool-version.ts';

export const paperFoot = (rules: Verdict['rules']) => ({
  left: `Layerwright ${TOOL_VERSION}, ${bookWords(rules)}`,
  right:
    'meets, falls short or cannot be shown, for the named edition; a test laboratory and local codes decide',
});

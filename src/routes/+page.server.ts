// The judgement of the build that the page opens with, made when the page is built: it is there before any script runs.

import { firstJudgement } from '#state/begin/first-judgement.ts';

export const load = () => ({ first: firstJudgement() });

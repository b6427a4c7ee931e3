// Times the mend of a failing build of eight layers, and the spread of one of twelve: judged in one thread.

import { fileJudge } from '#judge/judging/judge-files.ts';
import { heldMends } from '#mend/hold/held-mends.ts';
import { editDesign } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { PLACEMENT } from '#spread/placement.ts';
import { MEASURED, spread } from '#spread/spread.ts';
import { sandwich } from './builds.ts';

const DRAWS = 10_000;

export function mending(): readonly (readonly [string, string, string])[] {
  const search = heldMends(failing(8), fileJudge());
  const began = performance.now();
  let first: number | null = null;
  for (let step = search.next(); step.done !== true; step = search.next())
    if (first === null && step.value().proposals.length > 0) first = performance.now() - began;
  const whole = performance.now() - began;
  const drawing = spread(sandwich(12) as unknown as DesignFile, fileJudge(), {
    seed: 1,
    draws: DRAWS,
    measured: MEASURED,
    placement: PLACEMENT,
  });
  const drawn = performance.now();
  for (let step = drawing.next(); step.done !== true; step = drawing.next());
  return [
    ['first mend of 8 layers', first === null ? 'none found' : seconds(first), '<= 2 s'],
    ['all mends of 8 layers, and how they hold', seconds(whole), '<= 10 s'],
    [`${DRAWS} draws of 12 layers`, seconds(performance.now() - drawn), '<= 10 s'],
  ];
}

const seconds = (ms: number): string => `${(ms / 1000).toFixed(1)} s`;

/** The tape between auxiliary and output wound with one ply only. */
const failing = (layers: number): DesignFile =>
  editDesign(sandwich(layers) as unknown as DesignFile, 'layers[3].plies', 1);

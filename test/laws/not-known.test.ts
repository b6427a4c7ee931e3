// What is not known never beats what is known, and a wider interval never improves.

import { describe, it } from 'vitest';
import { heightOf, reaches } from '#standards/ladder.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import { copyOf, eachLead, type File } from './change-design.ts';
import { check, type Complain, eachLayer, lowered } from './check-law.ts';

/** Judging what is open takes several times as long as judging what is known. */
const SOME_RUNS = 4;

/** The known build (`known`) reaches less at worst, or the one with the unknown cannot be at best what it is known to be. */
const neverBeats: Complain = (known, open) => [...lowered(open, known, () => true), ...hopeless(known, open)];

const neverImproves: Complain = (narrow, wide) => lowered(wide, narrow, () => true);

describe('what is not known', () => {
  it.each([
    ['how many plies', eachLayer('tape', (copy, at) => (copy.layers[at].plies = 'unknown'))],
    ['what a ply stands', eachLayer('tape', (copy, at) => (copy.layers[at].plyWithstand = 'unknown'))],
    ['a margin', eachLayer('winding', (copy, at) => (copy.layers[at].margins.left.width = 'unknown'))],
    ['the gap to the core', (file: File) => [copyOf(file, (copy) => (copy.core.outerGap = 'unknown'))]],
    ['the flange', (file: File) => [copyOf(file, (copy) => (copy.former.flange = 'unknown'))]],
    ['the wall', (file: File) => [copyOf(file, (copy) => (copy.former.wall = 'unknown'))]],
    ['the bond of the core', (file: File) => [copyOf(file, (copy) => (copy.core.bond = 'unknown'))]],
    [
      'the sleeves',
      (file: File) => [copyOf(file, (copy) => eachLead(copy, (lead) => (lead.sleeve = 'unknown')))],
    ],
    [
      'the ways of leads',
      (file: File) => [copyOf(file, (copy) => eachLead(copy, (lead) => (lead.way = 'unknown')))],
    ],
  ] as const)('should never beat the known value: %s', (_, change) => {
    check(change, neverBeats, (file) => file, SOME_RUNS);
  });

  it.each([
    ['a margin', (copy: File, half: number) => widthsOf(copy, half)],
    [
      'the gap to the core',
      (copy: File, half: number) => (copy.core.outerGap = { value: 0.5, plusMinus: half }),
    ],
    ['the height', (copy: File, half: number) => (copy.former.height = { value: 4, plusMinus: half })],
  ] as const)('should never improve by a wider interval: %s', (_, change) => {
    check(
      (file) => [copyOf(file, (copy) => void change(copy, 0.4))],
      neverImproves,
      (file) => copyOf(file, (copy) => void change(copy, 0.1)),
      SOME_RUNS,
    );
  });
});

/** Pairs that do not reach with the unknown at best what they reach, and need, with the known value. */
function hopeless(known: Verdict, open: Verdict): readonly string[] {
  return open.pairs.flatMap((pair, i) => {
    const was = known.pairs[i]!;
    // what is enough at worst is not looked at further; double is enough where reinforced is needed
    const isEnough = reaches(pair.achievedAtBest, pair.needed);
    return !isEnough && heightOf(pair.achievedAtBest) < heightOf(was.achieved)
      ? [`${pair.between.join('-')} at best ${pair.achievedAtBest}, known to be ${was.achieved}`]
      : [];
  });
}

function widthsOf(copy: File, half: number): void {
  for (const { kind, margins } of copy.layers)
    if (kind === 'winding') margins.left.width = { value: 0.5, plusMinus: half };
}

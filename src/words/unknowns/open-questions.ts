// What is easily forgotten in a winding and what no field of the file answers; printed so that nobody takes silence for
// an answer.

import type { Design } from '#model/design.ts';

interface Question {
  readonly asks: string;
  /** The file answers it. */
  readonly answered: (design: Design) => boolean;
}

const covered = ({ windings }: Design): boolean =>
  windings.some(({ wire }) => wire.kind === 'layer-insulated' || wire.kind === 'fully-insulated');

const named = (design: Design, pattern: RegExp): boolean =>
  design.evidence.some(({ says }) => pattern.test(says)) ||
  design.outside.some(({ what }) => pattern.test(what));

const QUESTIONS: readonly Question[] = [
  {
    asks: 'covered wire: stripped length at the pins, and what solder heat did to the cover',
    answered: (design) => !covered(design) || named(design, /strip|solder/i),
  },
  {
    asks: 'pins sunk in the moulding: distance under and between the pin rows',
    answered: (design) => named(design, /pin/i),
  },
  { asks: 'outer band, clip or heat sink near the coil', answered: (design) => design.parts.length > 0 },
  { asks: 'board tracks and parts under the core', answered: (design) => named(design, /board|track/i) },
  { asks: 'tape round the core at the pin side', answered: (design) => design.core.wrap !== null },
  { asks: 'leads that cross on the pin shelf', answered: (design) => named(design, /shelf|cross/i) },
  { asks: 'notches in the flanges', answered: (design) => named(design, /notch/i) },
  {
    asks: 'tape count at several places round the coil',
    answered: (design) => named(design, /count|plies/i),
  },
  {
    asks: 'tension and direction of the tape, loose end of the outer wrap',
    answered: (design) => named(design, /tension|wrap/i),
  },
  {
    asks: 'ageing: brittle tape, darkened moulding',
    answered: (design) => design.origin === 'proposed' || named(design, /ag(e|e?ing)|brittle|dark/i),
  },
  {
    asks: 'marks on the part, which may be false',
    answered: (design) => design.origin !== 'dissected' || named(design, /mark/i),
  },
];

export const openQuestionsOf = (design: Design): readonly string[] =>
  QUESTIONS.filter(({ answered }) => !answered(design)).map(({ asks }) => asks);

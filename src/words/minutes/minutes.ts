// The first ten minutes of each of the three who come: what to do, step by step, and what one sees then. In `says` what stands
// in ** is a label on the page and what stands in ` is to be typed, so that a test does exactly what is written here.

export interface Minute {
  readonly says: string;
  /** Stands on the page once it is done. */
  readonly sees: string;
}

export interface Minutes {
  readonly id: 'examiner' | 'designer' | 'teacher';
  readonly who: string;
  readonly why: string;
  /** All begin on the first page. */
  readonly steps: readonly Minute[];
}

export const minutes: readonly Minutes[] = [
  {
    id: 'examiner',
    who: 'You took a transformer apart',
    why: 'Read a verdict on an invented build, then put your own down in the order in which it comes apart.',
    steps: [
      {
        says: 'Press **Go on with this build**. An invented build lies on the sheet, judged.',
        sees: 'The output winding begins 1.65 mm from the left flange',
      },
      {
        says: 'Press **5.6 mm**, the distance that is asked: the lines under it show which rows of the standard it comes from.',
        sees: '2.5 + 22/70 × 0.7 = 2.72',
      },
      {
        says: 'Take the grip **left margin of layer 3** and press `ArrowRight` eight times: the margin grows, the verdict follows.',
        sees: 'margins 2.0',
      },
      {
        says: 'Press **Taking apart**, then **begin with an empty one**. Nothing is written in that nobody saw.',
        sees: 'Before you touch it',
      },
      {
        says: 'Press **Next step** four times, past label, surroundings and core. Press **tape from flange to flange** and write `3` into **plies**: the first thing that came off lies in the drawing.',
        sees: 'Outer wrap',
      },
      {
        says: 'Press **Report**: two pages that say it all, to be printed; what was not measured is listed as unknown.',
        sees: 'Print, or save as PDF',
      },
    ],
  },
  {
    id: 'designer',
    who: 'You design one',
    why: 'See what is asked before a turn is wound, lay a construction out, and find how much of it survives the hand that winds.',
    steps: [
      {
        says: 'Press **Design**. What it needs first is named; no figure stands there that you did not give.',
        sees: 'First say between the flanges',
      },
      {
        says: 'Write `10 mm` into **between the flanges**, `4 mm` into **tube to rim** and `264 V` into **highest mains**: what will be asked stands at the end, before anything is wound.',
        sees: 'Asked for 264 V rms',
      },
      {
        says: 'Write `90` into **turns, Primary** and `9` into **turns, Output**. Every kind of construction is laid out and judged, with how high it comes.',
        sees: 'of 4.00 mm high',
      },
      {
        says: 'Press **Lay it on the sheet**: the one with margins, ready to be changed by its grips.',
        sees: 'outermost on top',
      },
      {
        says: 'Press **Mend**: the smallest changes that bring every pair to what it needs, or what would have to be known first.',
        sees: 'sets tried',
      },
      {
        says: 'Press **Spread**: the share of pieces wound by this drawing that meet, one piece after the other judged.',
        sees: 'of builds meet',
      },
    ],
  },
  {
    id: 'teacher',
    who: 'You teach',
    why: 'A lesson first as your pupils will have it, then a sheet to print with other numbers for each of them.',
    steps: [
      {
        says: 'Press **Learn**: twenty-three lessons, each a build that is really judged. The first one is open.',
        sees: 'Say first what you think',
      },
      {
        says: 'Press **reinforced**, then **See the solver’s answer**: yours and the solver’s side by side.',
        sees: 'you said',
      },
      {
        says: 'Press **Exercises**, then **Other numbers**: each sheet number gives a pupil other figures, and the answers come on a sheet of their own.',
        sees: 'sheet number',
      },
      {
        says: 'Press **Sheets to explore**: plots that follow the hand, for the wall.',
        sees: 'What is asked for a voltage',
      },
      {
        says: 'Press **Words**: every term in a sentence and a small drawing, in six languages where the standards name it.',
        sees: 'creepage',
      },
    ],
  },
];

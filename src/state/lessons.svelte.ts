// Lessons: small builds changed in steps, the grade guessed before each. The answer is never written here: it is judged.

import type { DesignFile } from '#model/schema.ts';
import { applyEdits } from './edit.ts';
import type { Grade } from './judged.ts';
import { addLayer } from './layer-edits.ts';

export interface LessonStep {
  readonly asks: string;
  readonly apply: (doc: DesignFile) => DesignFile;
}

export interface Lesson {
  readonly id: string;
  readonly steps: readonly LessonStep[];
}

const set =
  (...edits: readonly (readonly [string, unknown])[]) =>
  (doc: DesignFile): DesignFile =>
    applyEdits(
      doc,
      edits.map(([path, value]) => ({ path, value })),
    );

const ply = { kind: 'tape', material: 'polyester-tape-25', plies: 1, plyThickness: '0.06 mm' } as const;

const margins = (width: string) =>
  set(
    ...[0, 2].flatMap((layer) =>
      ['left', 'right'].map((side) => [`layers[${layer}].margins.${side}.width`, width] as const),
    ),
  );

export const lessons: readonly Lesson[] = [
  {
    id: 'lesson-enamel',
    steps: [
      {
        asks: 'Both windings get wire with three times the enamel, grade 3.',
        apply: set(['windings[0].wire.grade', 3], ['windings[1].wire.grade', 3]),
      },
      {
        asks: 'One ply of tape is laid between them, from flange to flange.',
        apply: (doc) => addLayer(doc, 1, ply),
      },
      { asks: 'Two more plies are laid on the first.', apply: set(['layers[1].plies', 3]) },
    ],
  },
  {
    id: 'lesson-margin',
    steps: [
      { asks: 'All margins are made 2 mm instead of 3.', apply: margins('2 mm') },
      { asks: 'All margins are made 2.5 mm.', apply: margins('2.5 mm') },
      {
        asks: 'The output’s right margin is left empty instead of filled with tape.',
        apply: set(['layers[2].margins.right.filled', false]),
      },
    ],
  },
  {
    id: 'lesson-plies',
    steps: [
      { asks: 'One of the three plies is taken away.', apply: set(['layers[1].plies', 2]) },
      {
        asks: 'Each of the two plies is proved to stand 4 kV.',
        apply: set(['layers[1].plyWithstand', '4 kV']),
      },
      { asks: 'Another ply is taken away: one is left.', apply: set(['layers[1].plies', 1]) },
    ],
  },
  {
    id: 'lesson-core',
    steps: [
      { asks: 'The core is bonded to the primary.', apply: set(['core.bond', 'pri']) },
      {
        asks: 'It is let float again, 4 mm away from the windings.',
        apply: set(['core.bond', 'floating'], ['core.outerGap', '4 mm']),
      },
      { asks: 'The tube’s wall is made 0.8 mm thick.', apply: set(['former.wall', '0.8 mm']) },
    ],
  },
];

/** One walk through a lesson: which step, and what was guessed for it. */
export class Walk {
  readonly lesson: Lesson;
  step = $state(0);
  guess: Grade | null = $state(null);

  constructor(lesson: Lesson) {
    this.lesson = lesson;
  }

  get current(): LessonStep | null {
    return this.lesson.steps[this.step] ?? null;
  }

  next(): void {
    this.step += 1;
    this.guess = null;
  }
}

export const lessonOf = (demo: string): Lesson | null => lessons.find(({ id }) => id === demo) ?? null;

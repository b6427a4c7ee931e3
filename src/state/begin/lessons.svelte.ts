// Lessons: small builds changed in steps, the grade guessed before each. The answer is never written here: it is judged.

import type { DesignFile } from '#model/schema/schema.ts';
import { applyEdits } from '#state/document/edit.ts';
import type { Grade } from '#state/judging/judged.ts';
import { addLayer } from '#model/edit/layer-edits.ts';

export interface LessonStep {
  readonly asks: string;
  readonly apply: (doc: DesignFile) => DesignFile;
}

export interface Lesson {
  readonly id: string;
  /** What it is about, asked before it begins. */
  readonly asks: string;
  /** What is worth keeping, said at its end. */
  readonly keeps: string;
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
    asks: 'Enamel keeps the turns of a winding apart. How far does it go between two circuits, and what does tape add?',
    keeps:
      'Enamel is functional insulation at most, however thick. Plies count once there are enough of them.',
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
    asks: 'A margin makes the way round the edges of the tape long. What is it worth when it is narrower, or left empty?',
    keeps:
      'The way along the surfaces counts both margins and the climb between them. In an empty margin the end turns can wander.',
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
    asks: 'Two plies between the circuits, or three, or one: which grade does each make, and what has to be shown of a ply?',
    keeps:
      'Two plies do where each is shown to stand the test, three where any two together do. One ply is basic at most.',
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
    asks: 'No wire goes to the core, and yet it lies near both windings. When does it bridge them?',
    keeps:
      'Over a core that floats the distances on its two sides add up. Tied to one side, the whole distance must lie on the other.',
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
  /** Layers that the last step changed. */
  changed: readonly number[] = $state.raw([]);

  constructor(lesson: Lesson) {
    this.lesson = lesson;
  }

  get current(): LessonStep | null {
    return this.lesson.steps[this.step] ?? null;
  }

  /** The build after this step. */
  take(guess: Grade, doc: DesignFile): DesignFile {
    this.guess = guess;
    const after = this.current?.apply(doc) ?? doc;
    this.changed = changedLayers(doc, after);
    return after;
  }

  next(): void {
    this.step += 1;
    this.guess = null;
    this.changed = [];
  }
}

/** New layers, those that are no longer as they were, and those of a winding that is not. */
function changedLayers(before: DesignFile, after: DesignFile): readonly number[] {
  const windings = after.windings.filter((winding) => !before.windings.includes(winding)).map(({ id }) => id);
  return after.layers.flatMap((layer, i) =>
    !before.layers.includes(layer) || (layer.kind === 'winding' && windings.includes(layer.winding))
      ? [i]
      : [],
  );
}

export const lessonOf = (demo: string): Lesson | null => lessons.find(({ id }) => id === demo) ?? null;

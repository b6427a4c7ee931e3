// The canvas itself: a ground with the section on it, and above it what changes with the hand. Pictures come in, nothing
// goes out: what lies under the pointer is reckoned from the picture, so that no hit canvas is ever drawn.

import type Konva from 'konva/lib/Core';
import { circledLayers, paintTurns } from './paint-turns.ts';
import { paintDrag, paintGrips, paintPicked } from './paint-hand.ts';
import { paintFigures } from './paint-figures.ts';
import { paintFlags } from './paint-flags.ts';
import { paintLetters, paintNotes, paintNumbers } from './paint-notes.ts';
import { paintOverview } from './paint-overview.ts';
import { paintRulers } from './paint-rulers.ts';
import { paintSolids } from './paint-solids.ts';
import { paintStaff, paintThin } from './paint-staff.ts';
import { penOf, type Ink, type Pen } from './pen.ts';
import type { Picture } from './picture.ts';

type Library = typeof Konva;

export class SectionStage {
  readonly #stage: InstanceType<Library['Stage']>;
  readonly #ground: InstanceType<Library['Layer']>;
  readonly #over: InstanceType<Library['Layer']>;
  #picture: Picture | null = null;

  /** `library` is handed in, for it can only be loaded where there is a page. */
  constructor(library: Library, container: HTMLDivElement) {
    library.autoDrawEnabled = false;
    this.#stage = new library.Stage({ container, width: 1, height: 1, listening: false });
    this.#ground = this.#layerOf(library, paintGround);
    this.#over = this.#layerOf(library, paintOver);
  }

  show(picture: Picture): void {
    const before = this.#picture;
    this.#picture = picture;
    const isResized = before?.width !== picture.width || before.height !== picture.height;
    if (isResized) this.#stage.size({ width: picture.width, height: picture.height });
    if (before?.density !== picture.density) this.#sharpen(picture.density);
    if (isResized || before.density !== picture.density || groundDiffers(before, picture))
      this.#ground.batchDraw();
    this.#over.batchDraw();
  }

  destroy(): void {
    this.#stage.destroy();
  }

  #layerOf(library: Library, paint: (pen: Pen) => void): InstanceType<Library['Layer']> {
    const layer = new library.Layer({ listening: false });
    const shape = new library.Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        const ink = context._context as Ink;
        if (this.#picture !== null) paint(penOf(ink, this.#picture));
      },
    });
    layer.add(shape);
    this.#stage.add(layer);
    return layer;
  }

  #sharpen(density: number): void {
    for (const layer of [this.#ground, this.#over]) layer.getCanvas().setPixelRatio(density);
  }
}

const groundDiffers = (a: Picture, b: Picture): boolean =>
  a.view !== b.view ||
  a.theme !== b.theme ||
  a.scene.areas !== b.scene.areas ||
  a.scene.turns !== b.scene.turns ||
  a.scene.notes !== b.scene.notes;

function paintGround(pen: Pen): void {
  const { ink, picture } = pen;
  ink.save();
  ink.fillStyle = picture.theme.sheet;
  ink.fillRect(0, 0, picture.width, picture.height);
  const circled = circledLayers(pen);
  paintSolids(pen, circled);
  paintTurns(pen, circled);
  paintNotes(pen);
  if (picture.isNumbered) paintNumbers(pen);
  paintLetters(pen);
  ink.restore();
}

function paintOver(pen: Pen): void {
  const { ink, picture } = pen;
  const { scene, drag } = picture;
  ink.save();
  paintPicked(pen);
  for (const path of scene.otherPaths) paintThin(pen, path);
  paintGrips(pen);
  if (scene.path !== null) paintStaff(pen, scene.path);
  paintFlags(pen);
  if (scene.path !== null) paintFigures(pen, scene.path);
  paintRulers(pen);
  if (picture.overview !== null) paintOverview(pen, picture.overview);
  if (drag !== null) paintDrag(pen, drag);
  ink.restore();
}

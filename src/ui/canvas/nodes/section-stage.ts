// The canvas itself, as a scene graph of two layers: the ground, which keeps its bitmap until the build or the view changes,
// and above it what changes with the hand. Marks become nodes; grips are nodes that the library finds and drags.

import { fontOf } from '#drawing/canvas/canvas-marks.ts';
import type { Mark } from '#drawing/paper/mark.ts';
import type { Paper } from '#drawing/paper/paper.ts';
import { overMarks } from '#drawing/field/whole-marks.ts';
import { rulerMarks } from '#drawing/marks/ruler-marks.ts';
import { groundMarks, otherPathMarks, pathAndFlagMarks } from '#drawing/marks/section-marks.ts';
import { gripPlate, stands } from '#ui/canvas/grips/grip.ts';
import { GripNodes, type Gripping } from './grip-nodes.ts';
import { dragMarks, pickedMarks, surfaceMarks } from './tool-marks.ts';
import { HatchTiles } from './hatch-tiles.ts';
import { measureMarks } from '#ui/canvas/measuring/measure-marks.ts';
import { MarkNodes, type Library } from './mark-nodes.ts';
import { StrengthImage } from './strength-image.ts';
import { OverviewNodes } from './overview-nodes.ts';
import { paperOf, type Picture } from './picture.ts';

type Layer = InstanceType<Library['Layer']>;

export class SectionStage {
  readonly #stage: InstanceType<Library['Stage']>;
  readonly #measure: Paper['measure'];
  readonly #layers: { readonly ground: Layer; readonly over: Layer };
  readonly #strength: StrengthImage;
  readonly #ground: MarkNodes;
  readonly #under: MarkNodes;
  readonly #grips: GripNodes;
  readonly #upper: MarkNodes;
  readonly #overview: OverviewNodes;
  readonly #held: MarkNodes;
  #picture: Picture | null = null;
  #drawn: Picture | null = null;
  #frame: number | null = null;

  /** `library` is handed in, for it can only be loaded where there is a page. */
  constructor(
    library: Library,
    container: HTMLDivElement,
    gripping: Gripping,
    centreOn: (x: number, y: number) => void,
  ) {
    library.autoDrawEnabled = false;
    library.dragButtons = [0];
    this.#stage = new library.Stage({ container, width: 1, height: 1 });
    this.#layers = { ground: new library.Layer({ listening: false }), over: new library.Layer() };
    this.#stage.add(this.#layers.ground, this.#layers.over);
    this.#measure = measurer();
    const tiles = new HatchTiles();
    const marks = (view: (picture: Picture) => Picture['view'] = ({ view: own }) => own): MarkNodes =>
      new MarkNodes(library, (hatch) =>
        this.#picture === null ? hatch.ground : tiles.fill(hatch, view(this.#picture), this.#picture.density),
      );
    [this.#ground, this.#under, this.#upper, this.#held] = [marks(), marks(), marks(), marks()];
    this.#grips = new GripNodes(library, gripping);
    const small = marks(({ overview, view }) => overview?.view ?? view);
    this.#overview = new OverviewNodes(library, small, centreOn);
    this.#strength = new StrengthImage(library);
    this.#layers.ground.add(this.#strength.node, this.#ground.group);
    const { group: overview } = this.#overview;
    this.#layers.over.add(
      this.#under.group,
      this.#grips.group,
      this.#upper.group,
      overview,
      this.#held.group,
    );
  }

  /** Drawn with the next frame; of several pictures in one frame the last. */
  show(picture: Picture): void {
    this.#picture = picture;
    this.#frame ??= requestAnimationFrame(() => this.#draw(picture));
  }

  /** Whether the pointer is on something of its own: a grip, an edge, the overview. */
  isTaken(x: number, y: number): boolean {
    return this.#stage.getIntersection({ x, y }) !== null;
  }

  destroy(): void {
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#stage.destroy();
  }

  #draw(shown: Picture): void {
    this.#frame = null;
    const picture = this.#picture ?? shown;
    const before = this.#drawn;
    this.#drawn = picture;
    const isResized = before?.width !== picture.width || before.height !== picture.height;
    if (isResized) this.#stage.size({ width: picture.width, height: picture.height });
    if (before?.density !== picture.density) this.#sharpen(picture.density);
    const paper = paperOf(picture, this.#measure);
    if (isResized || before.density !== picture.density || groundDiffers(before, picture)) {
      this.#strength.show(picture.field?.picture ?? null, paper);
      this.#ground.show(groundOf(picture, paper));
      this.#layers.ground.draw();
    }
    this.#under.show([...pickedMarks(picture, paper), ...otherPathMarks(picture.scene, paper)]);
    this.#grips.show(picture);
    this.#upper.show(upperMarks(picture, paper));
    this.#overview.show(picture, paper);
    this.#held.show(heldMarks(picture, paper));
    this.#layers.over.drawScene();
    // nothing is looked for under the pointer while an edge is in the hand
    if (picture.drag === null) this.#layers.over.drawHit();
  }

  #sharpen(density: number): void {
    for (const layer of [this.#layers.ground, this.#layers.over]) layer.getCanvas().setPixelRatio(density);
  }
}

function groundOf({ scene, field, isNumbered }: Picture, paper: Paper): readonly Mark[] {
  const found = field?.picture ?? null;
  if (field === null || found === null || found.whole === null) return groundMarks(scene, paper, isNumbered);
  return overMarks(scene, found, paper, field);
}

const heldMarks = (picture: Picture, paper: Paper): readonly Mark[] => [
  ...surfaceMarks(picture, paper),
  ...(picture.measure === null ? [] : measureMarks(picture.measure, paper)),
  ...(picture.drag === null ? [] : dragMarks(picture.drag, picture.grips, paper)),
];

const upperMarks = (picture: Picture, paper: Paper): readonly Mark[] => [
  ...pathAndFlagMarks(picture.scene, paper, picture.flags, {
    told: picture,
    picked: picture.flag,
    kept: picture.grips.filter(stands).map(gripPlate),
  }),
  ...rulerMarks(picture.scene, paper),
];

const groundDiffers = (a: Picture, b: Picture): boolean =>
  a.view !== b.view ||
  a.theme !== b.theme ||
  a.field !== b.field ||
  a.isNumbered !== b.isNumbered ||
  a.scene.areas !== b.scene.areas ||
  a.scene.turns !== b.scene.turns ||
  a.scene.notes !== b.scene.notes;

/** How wide words run on this screen; a guess where no canvas can be had. */
function measurer(): Paper['measure'] {
  const ink = document.createElement('canvas').getContext('2d');
  return (words, size, bold) => {
    if (ink === null) return words.length * size * 0.6;
    ink.font = fontOf(size, bold);
    return ink.measureText(words).width;
  };
}

// The whole section small in a corner of a close view, with a frame round what is in view: dragged, it pans; a press elsewhere
// on the overview brings that place into the middle.

import type { Paper } from '#drawing/paper/paper.ts';
import { toDrawingX, toDrawingY, toScreenX, toScreenY, type Plate, type View } from '#drawing/scene/view.ts';
import type { Group, Library, MarkNodes } from './mark-nodes.ts';
import { overviewMarks } from '#ui/canvas/viewport/overview-marks.ts';
import type { Picture } from './picture.ts';
import type { Overview } from '#ui/canvas/viewport/viewport.svelte.ts';

type Shape = InstanceType<Library['Shape']>;

const NOWHERE: Plate = { left: 0, top: 0, right: 0, bottom: 0 };

export class OverviewNodes {
  readonly group: Group;
  readonly #marks: MarkNodes;
  readonly #ground: Shape;
  readonly #frame: Shape;
  #overview: Overview = { view: { scale: 1, stretch: 1, left: 0, base: 0 }, box: NOWHERE };

  /** `centreOn` takes millimetres of the section. */
  constructor(library: Library, marks: MarkNodes, centreOn: (x: number, y: number) => void) {
    this.#marks = marks;
    this.group = new library.Group();
    this.#ground = new library.Shape({
      sceneFunc: (context, shape) => {
        const { left, top, right, bottom } = this.#overview.box;
        context.beginPath();
        context.rect(left, top, right - left, bottom - top);
        context.strokeShape(shape);
      },
      hitFunc: (context, shape) => {
        const { left, top, right, bottom } = this.#overview.box;
        context.beginPath();
        context.rect(left, top, right - left, bottom - top);
        context.fillShape(shape);
      },
    });
    this.#frame = new library.Shape({
      draggable: true,
      dragDistance: 0,
      sceneFunc: (context, shape) => {
        context.beginPath();
        context.rect(0, 0, shape.width(), shape.height());
        context.strokeShape(shape);
      },
      hitFunc: (context, shape) => {
        context.beginPath();
        context.rect(0, 0, shape.width(), shape.height());
        context.fillShape(shape);
      },
    });
    const centre = (x: number, y: number): void =>
      centreOn(toDrawingX(this.#overview.view, x), toDrawingY(this.#overview.view, y));
    this.#ground.on('mousedown touchstart', () => {
      const at = this.#ground.getStage()?.getPointerPosition();
      if (!at) return;
      centre(at.x, at.y);
      // the frame comes under the pointer and stays with it
      this.#frame.position({ x: at.x - this.#frame.width() / 2, y: at.y - this.#frame.height() / 2 });
      this.#frame.startDrag();
    });
    this.#frame.on('dragmove', () =>
      centre(this.#frame.x() + this.#frame.width() / 2, this.#frame.y() + this.#frame.height() / 2),
    );
    this.group.add(marks.group, this.#ground, this.#frame);
  }

  show({ overview, view, room, scene, theme }: Picture, paper: Paper): void {
    this.group.visible(overview !== null);
    if (overview === null) return;
    this.#overview = overview;
    this.#marks.show(overviewMarks(scene, { ...paper, view: overview.view, bounds: overview.box }));
    const seen = frameOf(view, room, overview.view, overview.box);
    this.#ground.setAttrs({ stroke: theme.line, strokeWidth: 1 });
    this.#frame.setAttrs({ stroke: theme.ink, strokeWidth: 2 });
    this.#frame.size({ width: seen.right - seen.left, height: seen.bottom - seen.top });
    if (!this.#frame.isDragging()) this.#frame.position({ x: seen.left, y: seen.top });
  }
}

/** What the room shows of the section, on the overview, kept within its box. */
function frameOf(view: View, room: Plate, small: View, box: Plate): Plate {
  const within = (value: number, least: number, most: number): number =>
    Math.max(least, Math.min(most, value));
  return {
    left: within(toScreenX(small, toDrawingX(view, room.left)), box.left, box.right),
    right: within(toScreenX(small, toDrawingX(view, room.right)), box.left, box.right),
    top: within(toScreenY(small, toDrawingY(view, room.top)), box.top, box.bottom),
    bottom: within(toScreenY(small, toDrawingY(view, room.bottom)), box.top, box.bottom),
  };
}

// Marks as nodes of the canvas library: one shape for each run of marks that are the same thing (the core, the plies, all turns
// of a circuit, the path), kept from picture to picture and named after it. One node for every single mark was tried: it
// doubled the time of a frame (40 layers, 260 marks). They answer no pointer; what can be taken in the hand has nodes of its own.

import type Konva from 'konva/lib/Core';
import { drawMark, type Tiles } from '#drawing/canvas/canvas-marks.ts';
import type { Mark } from '#drawing/paper/mark.ts';

export type Library = typeof Konva;
export type Group = InstanceType<Library['Group']>;
type Shape = InstanceType<Library['Shape']>;

export class MarkNodes {
  readonly group: Group;
  readonly #library: Library;
  readonly #tiles: Tiles;
  #nodes: readonly Shape[] = [];

  constructor(library: Library, tiles: Tiles) {
    this.#library = library;
    this.#tiles = tiles;
    this.group = new library.Group({ listening: false });
  }

  show(marks: readonly Mark[]): void {
    const runs = runsOf(marks);
    for (const node of this.#nodes.slice(runs.length)) node.destroy();
    const added = runs.slice(this.#nodes.length).map(() => this.#node());
    if (added.length > 0) this.group.add(...added);
    this.#nodes = [...this.#nodes.slice(0, runs.length), ...added];
    this.#nodes.forEach((node, k) => node.setAttrs({ marks: runs[k], name: runs[k]?.[0]?.role ?? '' }));
  }

  #node(): Shape {
    return new this.#library.Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context, shape) => {
        for (const mark of shape.getAttr('marks') as readonly Mark[]) drawMark(context, mark, this.#tiles);
      },
    });
  }
}

function runsOf(marks: readonly Mark[]): readonly (readonly Mark[])[] {
  const runs: Mark[][] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    if (last?.[0]?.role === mark.role) last.push(mark);
    else runs.push([mark]);
  }
  return runs;
}

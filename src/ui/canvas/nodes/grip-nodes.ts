// The grips of the edges as nodes: the canvas library tells which one the pointer is on (its hit graph), drags it, and asks
// where it may go. A handle is taken right on its edge, and at the grip itself from a little way off.

import type Konva from 'konva/lib/Core';
import type { Theme } from '#drawing/scene/palette.ts';
import { EDGE_REACH, GRIP, reachOf, stands, type Grip } from '#ui/canvas/grips/grip.ts';
import type { Pointer } from '#ui/canvas/handles/drag.ts';
import type { Handle } from '#ui/canvas/handles/handle.ts';
import type { Group, Library } from './mark-nodes.ts';
import type { Picture } from './picture.ts';

type Shape = InstanceType<Library['Shape']>;
type DragEvent = Konva.KonvaEventObject<MouseEvent | TouchEvent>;

/** Who answers when a grip is taken. */
export interface Gripping {
  take: (handle: Handle, pointer: Pointer) => void;
  dragTo: (pointer: Pointer) => void;
  drop: () => void;
  /** Where the held grip stands with the pointer here. */
  held: (pointer: Pointer) => { readonly x: number; readonly y: number } | null;
  hover: (id: string | null) => void;
}

interface Shown {
  readonly grip: Grip;
  readonly reach: number;
  readonly look: 'none' | 'plain' | 'dark';
  readonly theme: Theme;
}

export class GripNodes {
  readonly group: Group;
  readonly #library: Library;
  readonly #gripping: Gripping;
  #shown: ReadonlyMap<string, Shown> = new Map();

  constructor(library: Library, gripping: Gripping) {
    this.#library = library;
    this.#gripping = gripping;
    this.group = new library.Group();
  }

  show({ grips, drag, hot, layers, theme, reach }: Picture): void {
    const shown = grips.map((grip): Shown => {
      const { id, part } = grip.handle;
      const isDark = drag?.handle.id === id || hot === id;
      const isShown = isDark || layers.some((layer) => layer === part) || stands(grip);
      const look = isDark ? 'dark' : isShown ? 'plain' : 'none';
      return { grip, reach: reachOf(grip, grips, reach), look, theme };
    });
    this.#shown = new Map(shown.map((each) => [each.grip.handle.id, each]));
    // of edges that run together the shortest lies on top
    this.#fill([...shown].sort((a, b) => lengthOf(b.grip) - lengthOf(a.grip)));
    if (drag === null) this.#stopDrags();
  }

  /** Put back by key: the library still has it in the hand. */
  #stopDrags(): void {
    for (const node of this.group.getChildren()) if (node.isDragging()) node.stopDrag();
  }

  /** Nodes stay with their handle as long as it is there, so that a drag is not cut off. */
  #fill(shown: readonly Shown[]): void {
    const old = new Map(this.group.getChildren().map((node) => [node.id(), node]));
    shown.forEach(({ grip, look, theme }, k) => {
      const { id } = grip.handle;
      const node = old.get(id) ?? this.#node(id);
      if (!old.delete(id)) this.group.add(node as Shape);
      const fill = look === 'dark' ? theme.ink : theme.sheet;
      node.setAttrs({ x: grip.x, y: grip.y, fill, stroke: theme.ink, look });
      if (node.zIndex() !== k) node.zIndex(k);
    });
    old.forEach((node) => node.destroy());
  }

  #node(id: string): Shape {
    const node: Shape = new this.#library.Shape({
      id,
      name: 'grip',
      draggable: true,
      dragDistance: 0,
      perfectDrawEnabled: false,
      strokeWidth: 1.6,
      dragBoundFunc: (position, event) => this.#gripping.held(pointerOf(node, event)) ?? position,
      sceneFunc: (context, shape) => {
        const shown = this.#shown.get(id);
        if (shown === undefined || shown.look === 'none') return;
        const { axis } = shown.grip.handle;
        const [width, height] = axis === 'x' ? [GRIP.wide, shown.grip.long] : [shown.grip.long, GRIP.wide];
        context.beginPath();
        context.roundRect(-width / 2, -height / 2, width, height, GRIP.wide / 2);
        context.fillStrokeShape(shape);
      },
      hitFunc: (context, shape) => {
        const shown = this.#shown.get(id);
        if (shown === undefined) return;
        context.beginPath();
        traceHit(context, shown);
        context.fillShape(shape);
      },
    });
    node.on('mousedown touchstart', (event: DragEvent) => {
      const grip = this.#shown.get(id)?.grip;
      if (isFirst(event.evt) && grip !== undefined)
        this.#gripping.take(grip.handle, pointerOf(node, event.evt));
    });
    node.on('dragmove', (event: DragEvent) => this.#gripping.dragTo(pointerOf(node, event.evt)));
    node.on('dragend', () => this.#gripping.drop());
    node.on('mouseover', () => this.#gripping.hover(id));
    node.on('mouseout', () => this.#gripping.hover(null));
    return node;
  }
}

/** A disc round the grip, and a strip along its edge. */
function traceHit(
  context: Pick<Path2D, 'arc' | 'rect'>,
  { grip: { handle, span, x, y }, reach }: Shown,
): void {
  context.arc(0, 0, reach, 0, 2 * Math.PI);
  const [from, to] = span;
  if (handle.axis === 'x') context.rect(-EDGE_REACH, from - y, 2 * EDGE_REACH, to - from);
  else context.rect(from - x, -EDGE_REACH, to - from, 2 * EDGE_REACH);
}

/** The main button, or the only finger. */
const isFirst = (event: MouseEvent | TouchEvent): boolean =>
  'touches' in event ? event.touches.length === 1 : event.button === 0;

function pointerOf(node: Shape, event: MouseEvent | TouchEvent): Pointer {
  const { x, y } = node.getStage()?.getPointerPosition() ?? node.position();
  return { x, y, fine: event.shiftKey || event.altKey };
}

const lengthOf = ({ span }: Grip): number => span[1] - span[0];

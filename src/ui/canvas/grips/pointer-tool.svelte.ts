// What the hand does on the drawing: takes an edge, carries a layer, pans, pinches, picks. Pointers and keys come in as
// plain events; changes go to the editor as a preview while they last and as one step when they end.

import type { Workspace } from '#state/document/workspace.svelte.ts';
import { inMm } from '#units/quantity.ts';
import { dragged, editsOfDrag, isMoved, taken, type Drag, type Pointer } from '#ui/canvas/handles/drag.ts';
import type { DrawnSection, Handle } from '#ui/canvas/handles/handle.ts';
import { layerAt, layerDrop, type LayerDrop } from './layer-drop.ts';
import type { Measuring } from '#ui/canvas/measuring/measuring.svelte.ts';
import type { Viewport } from '#ui/canvas/viewport/viewport.svelte.ts';
import { otherEdges } from '#ui/canvas/handles/snap.ts';
import { endsOf, surfaceAt, type Stroke, type Surface } from './stroke.ts';
import { toDrawingX, toDrawingY, toScreenX, toScreenY } from '#drawing/scene/view.ts';
import type { Scene } from '#drawing/scene/scene.ts';

/** What the hand can see. */
export interface Reach {
  readonly scene: () => Scene | null;
  readonly section: () => DrawnSection | null;
  readonly measuring: Measuring;
  /** Whether something of its own is under the pointer: a grip, an edge, the overview. */
  readonly isTaken: (x: number, y: number) => boolean;
  /** No edge can be moved and nothing put in. */
  readonly isStill: () => boolean;
  /** Gives the keyboard to a grip that was taken by the pointer. */
  readonly focus: (id: string) => void;
  /** Keeps an edge that was put down in a way of its own; false: it is kept as a figure that was set. */
  readonly keep: (drag: Drag) => boolean;
}

interface Pressed {
  readonly x: number;
  readonly y: number;
  /** The layer under the pointer when it came down. */
  readonly layer: number | null;
  readonly adds: boolean;
  readonly carries: boolean;
}

type Spot = Pick<
  PointerEvent,
  'pointerId' | 'pointerType' | 'shiftKey' | 'altKey' | 'ctrlKey' | 'metaKey'
> & {
  readonly x: number;
  readonly y: number;
};

/** Where each pointer that is down was last. */
type Finger = Pick<Spot, 'pointerId' | 'x' | 'y'>;

/** Pixels: a press that moves less is a click. */
const CLICK_PX = 4;

export class Hand {
  drag: Drag | null = $state.raw(null);
  carried: LayerDrop | null = $state.raw(null);
  /** Id of the handle under the pointer. */
  over: string | null = $state(null);
  isPanning = $state(false);
  /** A layer that is being drawn. */
  stroke: Stroke | null = $state.raw(null);
  /** The surface under the pointer that a layer can be drawn on. */
  surface: Surface | null = $state.raw(null);
  #pressed: Pressed | null = null;
  #fingers: readonly Finger[] = [];
  readonly #workspace: Workspace;
  readonly #viewport: Viewport;
  readonly #reach: Reach;

  constructor(workspace: Workspace, viewport: Viewport, reach: Reach) {
    this.#workspace = workspace;
    this.#viewport = viewport;
    this.#reach = reach;
  }

  down(spot: Spot): void {
    this.#lay(spot);
    if (this.#fingers.length > 1) return this.putBack();
    const scene = this.#reach.scene();
    if (this.#reach.measuring.isOn && scene !== null)
      return this.#reach.measuring.begin(scene, this.#viewport.view, spot.x, spot.y);
    if (this.#reach.isTaken(spot.x, spot.y)) return;
    if (this.#beginStroke(spot)) return;
    const layer = this.#layerAt(spot.x, spot.y);
    const carries =
      layer !== null && spot.pointerType !== 'touch' && this.#workspace.selection.layers.includes(layer);
    this.#pressed = {
      x: spot.x,
      y: spot.y,
      layer,
      carries,
      adds: spot.shiftKey || spot.ctrlKey || spot.metaKey,
    };
  }

  move(spot: Spot): void {
    const before = this.#fingers.find(({ pointerId }) => pointerId === spot.pointerId);
    if (before === undefined) {
      this.surface = spot.pointerType === 'touch' ? null : this.#surfaceAt(spot);
      return;
    }
    if (this.stroke !== null && this.#fingers.length === 1) return this.#extendStroke(this.stroke, spot);
    const scene = this.#reach.scene();
    if (scene !== null && this.#reach.measuring.extend(scene, this.#viewport.view, spot.x, spot.y)) return;
    if (this.#fingers.length > 1) this.#pinch(spot, before);
    else if (this.#pressed !== null) this.#shift(this.#pressed, spot, before);
    this.#lay(spot);
  }

  up(spot: Spot): void {
    this.#lift(spot.pointerId);
    const pressed = this.#pressed;
    this.#pressed = null;
    void this.#reach.measuring.end(this.#reach.section());
    if (this.stroke !== null) return this.#endStroke(this.stroke);
    if (this.drag !== null) return this.drop();
    if (this.carried !== null) return this.#putDown(this.carried);
    if (pressed !== null && !this.isPanning) this.#pick(pressed);
    this.isPanning = false;
  }

  /** Picks the layer that lies here, unless it is picked with others already. */
  pickAt({ x, y }: Pick<Spot, 'x' | 'y'>): void {
    const layer = this.#layerAt(x, y);
    const { selection } = this.#workspace;
    if (layer === null) selection.layers = [];
    else if (!selection.layers.includes(layer)) selection.pickLayer(layer);
  }

  /** Opens the row of the layer that lies here. */
  openAt({ x, y }: Pick<Spot, 'x' | 'y'>): void {
    const layer = this.#layerAt(x, y);
    if (layer === null || this.#reach.measuring.isOn) return;
    this.#workspace.selection.pickLayer(layer);
    this.#workspace.selection.openRow = layer;
  }

  /** The pointer is gone: nothing happened. */
  lost(pointerId: number): void {
    this.#lift(pointerId);
    this.putBack();
  }

  take(handle: Handle, pointer: Pointer): void {
    const section = this.#reach.section();
    if (section === null || this.#reach.measuring.isOn) return;
    // first, for a grip that loses the keyboard lets go of what is held
    this.#reach.focus(handle.id);
    this.#viewport.hold();
    this.drag = taken(handle, otherEdges(section, handle), pointer, this.#viewport.view);
  }

  /** Where the held edge stands with the pointer here: its new place along the axis, the pointer's across it. */
  held(pointer: Pointer): { readonly x: number; readonly y: number } | null {
    if (this.drag === null) return null;
    const { view } = this.#viewport;
    const { handle, position } = dragged(this.drag, pointer, view);
    return handle.axis === 'x'
      ? { x: toScreenX(view, inMm(position)), y: pointer.y }
      : { x: pointer.x, y: toScreenY(view, inMm(position)) };
  }

  dragTo(pointer: Pointer): void {
    if (this.drag !== null) this.#follow(dragged(this.drag, pointer, this.#viewport.view));
  }

  /** As the keyboard moves it: the drag without a pointer. */
  moveTo(handle: Handle, value: Drag['value'], position: Drag['position']): void {
    if (this.drag?.handle.id !== handle.id) {
      this.drop();
      this.take(handle, { x: 0, y: 0, fine: false });
    }
    const { drag } = this;
    if (drag !== null)
      this.#follow({ ...drag, value, position, guides: drag.edges.filter((edge) => edge === position) });
  }

  /** One step of the history, or none where the edge came back. */
  drop(): void {
    const { drag } = this;
    if (drag === null) return;
    this.drag = null;
    if (!isMoved(drag)) this.#workspace.editor.cancel();
    else if (!this.#reach.keep(drag))
      this.#workspace.editor.edit(editsOfDrag(drag), `set the ${drag.handle.label}`);
    this.#viewport.letGo();
  }

  putBack(): void {
    if (this.drag !== null) {
      this.drag = null;
      this.#workspace.editor.cancel();
      this.#viewport.letGo();
    }
    if (this.stroke !== null) this.#workspace.placing.putBack();
    this.stroke = null;
    this.#pressed = null;
    this.carried = null;
    this.isPanning = false;
  }

  #surfaceAt({ x, y }: Pick<Spot, 'x' | 'y'>): Surface | null {
    const [scene, section] = [this.#reach.scene(), this.#reach.section()];
    const { placing, editor } = this.#workspace;
    const isBusy = placing.wish !== null || editor.isPreviewing || this.#reach.isStill();
    if (scene === null || section === null || isBusy || !this.#viewport.isWhole) return null;
    if (section.slumped !== null || this.#reach.isTaken(x, y)) return null;
    return surfaceAt(section, scene, this.#viewport.view, x, y);
  }

  #beginStroke(spot: Spot): boolean {
    const surface = this.#surfaceAt(spot);
    // a finger scrolls the page: it puts a layer in by the button in the list
    if (surface === null || spot.pointerType === 'touch') return false;
    const from = toDrawingX(this.#viewport.view, spot.x);
    this.stroke = { ...surface, from, to: from };
    this.surface = null;
    this.#viewport.hold();
    return true;
  }

  #extendStroke(stroke: Stroke, spot: Spot): void {
    const { view } = this.#viewport;
    this.stroke = { ...stroke, to: toDrawingX(view, spot.x) };
    const { placing, editor } = this.#workspace;
    const ends = endsOf(this.stroke, view);
    if (placing.wish !== null) placing.set(ends);
    else if (ends.left !== '' || ends.right !== '')
      placing.open(editor.doc.layers.length, stroke.chamber, ends);
  }

  #endStroke(stroke: Stroke): void {
    const { placing, editor } = this.#workspace;
    this.stroke = null;
    this.#viewport.letGo();
    if (placing.wish === null) placing.open(editor.doc.layers.length, stroke.chamber);
  }

  #follow(drag: Drag): void {
    const isNew = drag.value !== this.drag?.value;
    this.drag = drag;
    if (!isNew) return;
    if (isMoved(drag)) this.#workspace.editor.preview(editsOfDrag(drag));
    else this.#workspace.editor.cancel();
  }

  #shift(pressed: Pressed, spot: Spot, before: { readonly x: number; readonly y: number }): void {
    const [columns, rows] = [spot.x - pressed.x, spot.y - pressed.y];
    if (!this.isPanning && this.carried === null && Math.hypot(columns, rows) < CLICK_PX) return;
    const scene = this.#reach.scene();
    if (pressed.carries && pressed.layer !== null && scene !== null && !this.isPanning) {
      this.carried = layerDrop(scene.layers, pressed.layer, toDrawingY(this.#viewport.view, spot.y));
      return;
    }
    const from = this.isPanning ? before : pressed;
    this.isPanning = true;
    this.#viewport.pan(spot.x - from.x, spot.y - from.y);
  }

  #pinch(spot: Spot, before: { readonly x: number; readonly y: number }): void {
    const other = this.#fingers.find(({ pointerId }) => pointerId !== spot.pointerId);
    if (other === undefined) return;
    const [was, is] = [before, spot].map(({ x, y }) => Math.hypot(x - other.x, y - other.y));
    const [x, y] = [(spot.x + other.x) / 2, (spot.y + other.y) / 2];
    this.#viewport.pan((spot.x - before.x) / 2, (spot.y - before.y) / 2);
    if (was !== undefined && is !== undefined && was > 0) this.#viewport.zoom(is / was, x, y);
  }

  #putDown({ layer, index }: LayerDrop): void {
    this.carried = null;
    if (index !== layer) this.#workspace.moveLayers(layer, index > layer ? index + 1 : index);
  }

  #pick({ layer, adds }: Pressed): void {
    const { selection } = this.#workspace;
    if (layer !== null) selection.pickLayer(layer, adds);
    else if (!adds) selection.layers = [];
  }

  #lay({ pointerId, x, y }: Spot): void {
    this.#lift(pointerId);
    this.#fingers = [...this.#fingers, { pointerId, x, y }];
  }

  #lift(pointerId: number): void {
    this.#fingers = this.#fingers.filter((finger) => finger.pointerId !== pointerId);
  }

  #layerAt(column: number, row: number): number | null {
    const [scene, section] = [this.#reach.scene(), this.#reach.section()];
    if (scene === null || section === null) return null;
    const { view } = this.#viewport;
    const chambers = section.chambers.map(({ x0, x1 }) => ({ x0: inMm(x0), x1: inMm(x1) }));
    return layerAt(scene.layers, chambers, toDrawingX(view, column), toDrawingY(view, row));
  }
}

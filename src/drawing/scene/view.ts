// Where the drawing stands on its paper: the one place that turns millimetres into pixels and back.
// x runs right and y runs up in millimetres; on paper y runs down. Pixels are CSS pixels of the stage, or points of an SVG.
// `scale` is pixels per millimetre along the axis; outward it is `scale * stretch`.

export interface View {
  readonly scale: number;
  readonly stretch: number;
  /** Pixel column of x = 0 and pixel row of y = 0. */
  readonly left: number;
  readonly base: number;
}

/** A box in pixels, y downward. */
export interface Plate {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const toScreenX = (view: View, x: number): number => view.left + x * view.scale;
export const toScreenY = (view: View, y: number): number => view.base - y * view.scale * view.stretch;
export const toDrawingX = (view: View, column: number): number => (column - view.left) / view.scale;
export const toDrawingY = (view: View, row: number): number =>
  (view.base - row) / (view.scale * view.stretch);

// The mesh: points in millimetres, triangles by three points each, the body that fills each of them.

export interface Mesh {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Index of the circle that a point lies on, see `circles`; -1: on none. */
  readonly circle: Int32Array;
  /** Centre and radius of each circle, three numbers each, mm. */
  readonly circles: Float64Array;
  /** Electrode of a point that metal holds, else -1. */
  readonly electrode: Int32Array;
  /** Three points each, counter-clockwise. */
  readonly triangles: Int32Array;
  /** Body in the middle of each triangle, `AIR` for none. */
  readonly body: Int32Array;
  /** Mean relative permittivity of each triangle. */
  readonly permittivity: Float64Array;
}

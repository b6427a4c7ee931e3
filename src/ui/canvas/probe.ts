// What reads the drawing at a place: told where the pointer is, in millimetres, and moved by keys.

export interface Probe {
  readonly point: (x: number, y: number) => void;
  /** Whether the key meant something to it. */
  readonly key: (event: KeyboardEvent) => boolean;
}

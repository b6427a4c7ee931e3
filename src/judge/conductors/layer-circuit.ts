// The circuit that a layer's conductor belongs to.

import type { Design } from '#model/design.ts';
import type { Layer } from '#model/design/layer.ts';

/** Null for tapes and floating screens. */
export function circuitOf(design: Design, layer: Layer): string | null {
  switch (layer.kind) {
    case 'winding':
      return design.windings.find(({ id }) => id === layer.winding)!.circuit;
    case 'screen':
      return layer.circuit;
    case 'tape':
      return null;
  }
}

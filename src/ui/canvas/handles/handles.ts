// Every edge of a section that can be taken in the hand, in the order of the list: core, layers from the outermost, former.
// An edge that the section shows elsewhere than the file says (slumped, pushed aside by a lead) is no handle there.

import type { Design } from '#model/design.ts';
import { formerHandles } from './former-handles.ts';
import type { DrawnSection, Handle } from './handle.ts';
import { layerHandles } from './layer-handles.ts';
import { sleeveHandles } from './sleeve-handles.ts';

export function handlesOf(design: Design, section: DrawnSection): readonly Handle[] {
  const { core, former } = formerHandles(design, section);
  const layers = design.layers
    .flatMap((layer, index) => [
      ...layerHandles(design, section, layer, index),
      ...sleeveHandles(design, section, index),
    ])
    .reverse();
  return [...core, ...layers, ...former];
}

// Taking a transformer apart, in the order in which it comes apart: what is looked for at each step, and what comes off the
// coil next, which lies inside all that came off before. What nobody has looked at yet stands as unknown, or as an interval.

import { blankDesign } from '#model/begin/blank-design.ts';
import { unmeasured } from '#model/begin/unmeasured.ts';
import { insertAt } from '#model/edit/edit-list.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import { freeWindingId } from '#model/edit/circuit-edits.ts';

export type ApartStep =
  | { readonly kind: 'label' | 'outside' | 'bridges' | 'core' | 'next' | 'former'; readonly id: string }
  | { readonly kind: 'layer'; readonly id: string; readonly layer: number };

/** From the outside in; a layer keeps its id when more come off from under it. */
export function apartSteps(doc: DesignFile): readonly ApartStep[] {
  const count = doc.layers.length;
  const layers = Array.from({ length: count }, (_, k): ApartStep => {
    return { kind: 'layer', id: `layer ${k + 1} from outside`, layer: count - 1 - k };
  });
  const plain = (kind: Exclude<ApartStep['kind'], 'layer'>): ApartStep => ({ kind, id: kind });
  const before = (['label', 'outside', 'bridges', 'core'] as const).map(plain);
  return [...before, ...layers, plain('next'), plain('former')];
}

/** A build of which nothing has been seen yet. */
export const untouchedBuild = (): DesignFile => ({
  ...blankDesign(),
  title: 'Transformer taken apart',
  origin: 'dissected',
  evidence: [],
  unopened: true,
});

type Layer = DesignFile['layers'][number];

/** Where a tape or screen ends before anyone has looked. */
const UNSEEN_INSET = { left: unmeasured.inset, right: unmeasured.inset };

const innermost = (doc: DesignFile, layer: Layer): DesignFile => insertAt(doc, 'layers', 0, layer);

/** `reaches`: it was seen to lie from flange to flange. */
export const tapeCameOff = (doc: DesignFile, reaches: boolean): DesignFile =>
  innermost(doc, {
    kind: 'tape',
    plyThickness: 'unknown',
    plies: 'unknown',
    ...(reaches ? {} : { inset: UNSEEN_INSET }),
  });

export const screenCameOff = (doc: DesignFile): DesignFile =>
  innermost(doc, { kind: 'screen', thickness: unmeasured.foil, inset: UNSEEN_INSET });

/** More of a winding of which some came off already; the link between is not seen yet. */
export function windingCameOff(doc: DesignFile, winding: string): DesignFile {
  const windings = doc.windings.map((each) =>
    each.id === winding && each.links === undefined ? { ...each, links: 'unknown' as const } : each,
  );
  return innermost({ ...doc, windings }, unseenTurns(winding));
}

export function newWindingCameOff(doc: DesignFile, circuit: string): DesignFile {
  const taken = doc.windings.map(({ id }) => id);
  const id = freeWindingId(
    taken,
    doc.circuits.findIndex((each) => each.id === circuit),
  );
  const wire = { kind: 'unknown', conductor: 'unknown' };
  const wound = insertAt(doc, 'windings', taken.length, { id, circuit, wire, leads: 'unknown' });
  return innermost(wound, unseenTurns(id));
}

const unseenTurns = (winding: string): Layer => ({
  kind: 'winding',
  winding,
  turns: 'unknown',
  margins: { left: { width: 'unknown' }, right: { width: 'unknown' } },
});

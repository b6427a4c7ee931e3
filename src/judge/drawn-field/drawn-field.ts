// The drawn section as the field solver wants it: every turn a circle with its enamel or cover, every ply, block and
// wall a box with its permittivity, core and screens as metal. Conductors are named by their owner: a bonded core or
// screen bears the name of its circuit, and is one conductor with it, but may be let float by itself.

import type { Body, FieldSection } from '#field/field-section.ts';
import type { Design } from '#model/design.ts';
import type { Section } from '#solver/section/section.ts';
import type { Turn } from '#solver/placing/turns.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { coreCircuit } from '#judge/conductors/core-circuit.ts';
import { SolidPermittivities, type CountedPermittivity } from './solid-permittivities.ts';
import { turnPlaces } from './turn-places.ts';

export interface DrawnField {
  readonly section: FieldSection;
  /** What each body is, in the order of the section's bodies. */
  readonly bodies: readonly DrawnBody[];
  readonly electrodes: readonly DrawnElectrode[];
  /** Conductors that nothing holds. */
  readonly floating: readonly number[];
  /** Conductor of the core; null where the section has none. */
  readonly core: number | null;
  /** Conductors of bonded screens. */
  readonly screens: readonly number[];
  readonly permittivities: readonly CountedPermittivity[];
}

export interface DrawnBody {
  readonly kind: 'turn' | 'ply' | 'block' | 'former' | 'wrap' | 'screen' | 'core';
  /** Index in the file's `layers`; null for former and core. */
  readonly layer: number | null;
  /** Which ply of its layer, from the tube outward. */
  readonly ply: number | null;
}

export interface DrawnElectrode {
  /** Circuit, `core`, or the id of a floating screen. */
  readonly owner: string;
  /** Null but for turns: the winding, and how many of its turns lie before the middle of this one. */
  readonly turn: { readonly winding: string; readonly at: number; readonly y: Nm } | null;
}

/** Enamel of wires whose metal is not known: this part of the diameter on either side. */
const UNKNOWN_ENAMEL = 0.05;

export function drawnField(
  design: Design,
  section: Section,
  turns: readonly Turn[],
  axis: Nm | null,
): DrawnField {
  const solids = new SolidPermittivities(design);
  const bodies: Body[] = [];
  const drawn: DrawnBody[] = [];
  const electrodes: DrawnElectrode[] = [];
  const ofElectrode: number[] = [];
  const names: string[] = [];
  const screens: number[] = [];
  let core: number | null = null;
  const conductor = (name: string, own: boolean): number => {
    const known = own ? -1 : names.indexOf(name);
    return known === -1 ? names.push(name) - 1 : known;
  };
  for (const { id } of design.circuits) if (turns.some(({ circuit }) => circuit === id)) conductor(id, false);
  for (const region of section.regions) {
    const { x0, y0, x1, y1, layer } = region;
    const box = { shape: 'box', x0, y0, x1, y1 } as const;
    if (region.kind === 'wireCover') continue;
    if (region.kind !== 'conductor') {
      bodies.push({ ...box, electrode: null, permittivity: solids.of(region) });
      drawn.push({ kind: KINDS[region.kind], layer, ply: region.ply });
      continue;
    }
    if (region.of !== 'core' && region.of !== 'screen') continue;
    if (region.of === 'core') {
      core ??= conductor(coreOwner(design), true);
      if (!electrodes.some((_, i) => ofElectrode[i] === core)) {
        ofElectrode.push(core);
        electrodes.push({ owner: names[core]!, turn: null });
      }
    } else {
      const own = conductor(region.conductor, true);
      screens.push(own);
      ofElectrode.push(own);
      electrodes.push({ owner: region.conductor, turn: null });
    }
    const electrode = region.of === 'core' ? ofElectrode.indexOf(core!) : electrodes.length - 1;
    bodies.push({ ...box, electrode, permittivity: 1 });
    drawn.push({ kind: region.of, layer, ply: null });
  }
  turnPlaces(design, turns).forEach((place, i) => {
    const turn = turns[i]!;
    electrodes.push({ owner: turn.circuit, turn: { winding: place.winding, at: place.at, y: turn.y } });
    ofElectrode.push(conductor(turn.circuit, false));
    bodies.push({
      shape: 'disc',
      x: turn.x,
      y: turn.y,
      metal: metalOf(turn, place.isBare),
      overall: turn.overall,
      electrode: electrodes.length - 1,
      permittivity: solids.ofWire(place.kind),
    });
    drawn.push({ kind: 'turn', layer: turn.layer, ply: null });
  });
  const isCircuit = (name: string) => design.circuits.some(({ id }) => id === name);
  return {
    section: {
      frame: frameOf(section),
      background: section.potted ? solids.compound() : 1,
      bodies,
      shell: null,
      axis,
      conductors: names,
      electrodes: ofElectrode,
    },
    bodies: drawn,
    electrodes,
    floating: names.flatMap((name, i) => (isCircuit(name) ? [] : [i])),
    core,
    screens: screens.filter((i) => isCircuit(names[i]!)),
    permittivities: solids.counted,
  };
}

const KINDS = {
  ply: 'ply',
  block: 'block',
  sleeve: 'block',
  moulding: 'former',
  wrap: 'wrap',
} as const;

const coreOwner = (design: Design): string => coreCircuit(design) ?? 'core';

/** The core's metal is drawn a little way in. */
function frameOf({ frame, regions }: Section): FieldSection['frame'] {
  const cores = regions.filter((region) => region.kind === 'conductor' && region.of === 'core');
  return {
    x0: nm(Math.min(frame.x0, ...cores.map(({ x0 }) => x0))),
    y0: nm(Math.min(frame.y0, ...cores.map(({ y0 }) => y0))),
    x1: nm(Math.max(frame.x1, ...cores.map(({ x1 }) => x1))),
    y1: nm(Math.max(frame.y1, ...cores.map(({ y1 }) => y1))),
  };
}

function metalOf({ overall, conductor }: Turn, isBare: boolean): Nm {
  if (isBare || conductor < overall) return conductor;
  return nm(Math.round(overall * (1 - 2 * UNKNOWN_ENAMEL)));
}

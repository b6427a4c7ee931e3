// The drawn section as the field solver wants it: every turn a circle with its enamel or cover, every ply, block and
// wall a box with its permittivity, core and screens as metal. Conductors are named by their owner: a bonded core or
// screen bears the name of its circuit, and is one conductor with it, but may be let float by itself.

import type { Body, FieldSection } from '#field/field-section.ts';
import type { Design } from '#model/design.ts';
import type { Region, Section } from '#solver/section/section.ts';
import type { Turn } from '#solver/placing/turns.ts';
import { nm, type Nm } from '#units/quantity.ts';
import { coreCircuit } from '#judge/conductors/core-circuit.ts';
import { SolidPermittivities, type CountedPermittivity } from './solid-permittivities.ts';
import { type TurnPlace, turnPlaces } from './turn-places.ts';

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
  const field = new FieldBodies(new SolidPermittivities(design));
  for (const { id } of design.circuits) if (turns.some(({ circuit }) => circuit === id)) field.circuit(id);
  for (const region of section.regions) field.addRegion(region, coreOwner(design));
  turnPlaces(design, turns).forEach((place, i) => field.addTurn(turns[i]!, place));
  const { solids, bodies, drawn, names, electrodes, ofElectrode, core } = field;
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
    screens: field.screens.filter((i) => isCircuit(names[i]!)),
    permittivities: solids.counted,
  };
}

/** What is drawn so far, body by body; every metal body is an electrode of a conductor. */
class FieldBodies {
  readonly bodies: Body[] = [];
  readonly drawn: DrawnBody[] = [];
  readonly electrodes: DrawnElectrode[] = [];
  readonly ofElectrode: number[] = [];
  readonly names: string[] = [];
  readonly screens: number[] = [];
  core: number | null = null;
  readonly solids: SolidPermittivities;

  constructor(solids: SolidPermittivities) {
    this.solids = solids;
  }

  /** The conductor of a circuit, one for all its turns. */
  circuit(name: string): number {
    const known = this.names.indexOf(name);
    return known === -1 ? this.#own(name) : known;
  }

  addRegion(region: Region, coreName: string): void {
    const { x0, y0, x1, y1, layer } = region;
    const box = { shape: 'box', x0, y0, x1, y1 } as const;
    if (region.kind === 'wireCover') return;
    if (region.kind !== 'conductor') {
      this.bodies.push({ ...box, electrode: null, permittivity: this.solids.of(region) });
      this.drawn.push({ kind: KINDS[region.kind], layer, ply: region.ply });
      return;
    }
    if (region.of !== 'core' && region.of !== 'screen') return;
    const electrode = region.of === 'core' ? this.#coreElectrode(coreName) : this.#screen(region.conductor);
    this.bodies.push({ ...box, electrode, permittivity: 1 });
    this.drawn.push({ kind: region.of, layer, ply: null });
  }

  addTurn(turn: Turn, { winding, at, isBare, kind }: TurnPlace): void {
    const { x, y, circuit, overall, layer } = turn;
    const electrode = this.#electrode(this.circuit(circuit), { owner: circuit, turn: { winding, at, y } });
    const metal = metalOf(turn, isBare);
    const permittivity = this.solids.ofWire(kind);
    this.bodies.push({ shape: 'disc', x, y, metal, overall, electrode, permittivity });
    this.drawn.push({ kind: 'turn', layer, ply: null });
  }

  /** All sides of the core are one electrode. */
  #coreElectrode(name: string): number {
    this.core ??= this.#own(name);
    const known = this.ofElectrode.indexOf(this.core);
    return known === -1 ? this.#electrode(this.core, { owner: name, turn: null }) : known;
  }

  #screen(owner: string): number {
    const own = this.#own(owner);
    this.screens.push(own);
    return this.#electrode(own, { owner, turn: null });
  }

  #own(name: string): number {
    return this.names.push(name) - 1;
  }

  #electrode(conductor: number, electrode: DrawnElectrode): number {
    this.ofElectrode.push(conductor);
    return this.electrodes.push(electrode) - 1;
  }
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

// A design file once read: every quantity in its branded unit, every default filled in, every reference checked.
// Plain readonly data. What the file left open stays `Unknown`; what took a default is named in `defaulted`.
// The fields are those of the file (format layerwright-design/1), in its order and under its names.

import type { Role } from '#units/terms.ts';
import type { ConfirmedCell, Evidence } from './design/evidence.ts';
import type { Core, Former, Part } from './design/former.ts';
import type { Layer } from './design/layer.ts';
import type { Bridge, Outside } from './design/outside.ts';
import type { Supply, Surroundings } from './design/supply.ts';
import type { Converter, WorkingVoltage } from './design/voltages.ts';
import type { Winding } from './design/winding.ts';

export interface Design {
  readonly format: 'layerwright-design/1';
  readonly title: string;
  readonly origin: 'proposed' | 'dissected' | 'lesson';
  readonly made: string | null;
  readonly notes: string;
  /** Id of the rule book; whether it exists is for `rules` to say. */
  readonly rules: string;
  readonly supply: Supply;
  readonly surroundings: Surroundings;
  readonly converter: Converter | null;
  readonly workingVoltages: readonly WorkingVoltage[];
  readonly circuits: readonly Circuit[];
  readonly former: Former;
  readonly core: Core;
  readonly parts: readonly Part[];
  readonly windings: readonly Winding[];
  readonly layers: readonly Layer[];
  readonly outside: readonly Outside[];
  readonly bridges: readonly Bridge[];
  readonly evidence: readonly Evidence[];
  /** Cells of the standards' tables that the user read in a copy of their own. */
  readonly confirmed: readonly ConfirmedCell[];
  /** Taken apart from the outside: below the innermost layer listed nothing is known yet. */
  readonly unopened: boolean;
  /** Paths of fields that the file left out and that took a default which can shape the verdict. */
  readonly defaulted: readonly string[];
}

export interface Circuit {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  /** Whom a touchable circuit protects; asked by the medical book alone, null where the file does not say. */
  readonly means: 'patient' | 'operator' | null;
}

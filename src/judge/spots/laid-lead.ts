// The lead that a section names among what is laid in it: whose it is, what it is called, and its fields in the file.

import type { Design } from '#model/design.ts';

export interface LaidLead {
  /** `P start`, `P link 1`, `screen 3`, whichever way it is tried in that section. */
  readonly lead: string;
  /** The circuit it belongs to; a floating screen has none. */
  readonly circuit: string;
  readonly field: string;
}

/** Empty where nothing of that name is in the file. */
export function laidLead(design: Design, name: string): readonly LaidLead[] {
  const screen = /^screen (\d+)/.exec(name);
  if (screen !== null) return screenLead(design, screen[0], Number(screen[1]) - 1);
  return design.windings.flatMap(({ id, circuit }, i) => {
    if (!name.startsWith(`${id} `)) return [];
    const end = /^(start|finish|link \d+)/.exec(name.slice(id.length + 1))?.[0];
    if (end === undefined) return [];
    const field = `windings[${i}].${end.startsWith('link') ? 'links' : `leads.${end}`}`;
    return [{ lead: `${id} ${end}`, circuit, field }];
  });
}

function screenLead({ layers }: Design, lead: string, at: number): readonly LaidLead[] {
  const layer = layers[at];
  if (layer?.kind !== 'screen' || layer.circuit === null) return [];
  return [{ lead, circuit: layer.circuit, field: `layers[${at}].lead` }];
}

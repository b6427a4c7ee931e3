// Leads: through a slot instead of up the flange, or in a sleeve that is a barrier by itself and reaches to the winding.

import type { WeakSpot } from '#judge/verdict/spot.ts';
import { fieldAt } from '#model/edit/edit-design.ts';
import type { DesignFile } from '#model/schema/schema.ts';
import type { Act } from './act.ts';
import { lengthAt, upToStep, widthText } from './file-lengths.ts';

/** A wall above the least thickness of one solid layer, of a material with its own row of strength. */
const SLEEVE = { material: 'ptfe', wall: '0.5 mm' } as const;
/** As deep as margins are wide; what is more lies flush with the winding's end. */
const DEEP = 5;

export function leadActs(doc: DesignFile, spot: WeakSpot): readonly Act[] {
  const ids = spot.layers.flatMap((index) => {
    const layer = doc.layers[index];
    return layer?.kind === 'winding' ? [layer.winding] : [];
  });
  return doc.windings.flatMap((winding, w) =>
    ids.includes(winding.id)
      ? (['start', 'finish'] as const)
          .filter((end) => isLaidIn(spot.section, winding.id, end))
          .flatMap((end) => actsOfLead(doc, spot, `windings[${w}].leads.${end}`))
      : [],
  );
}

/** A section of leads names them; acts on others mend nothing there. */
const isLaidIn = (section: string, winding: string, end: string): boolean =>
  !section.includes('lead') || section.includes(`${winding} ${end}`);

function actsOfLead(doc: DesignFile, spot: WeakSpot, lead: string): readonly Act[] {
  const value = fieldAt(doc, lead);
  if (typeof value !== 'object' || value === null) return [];
  const margins = doc.layers.flatMap((_, i) =>
    (['left', 'right'] as const).map((side) => lengthAt(doc, `layers[${i}].margins.${side}.width`, 0) ?? 0),
  );
  const to = { ...SLEEVE, into: `${Math.max(DEEP, ...margins)} mm` };
  const sleeve: Act = {
    kind: 'sleeve',
    on: `${lead}.sleeve`,
    set: [{ field: `${lead}.sleeve`, to }],
    amount: null,
  };
  const slot: Act = {
    kind: 'slot',
    on: `${lead}.way`,
    set: [{ field: `${lead}.way`, to: 'slot' }],
    amount: null,
  };
  const pushed = pushedIn(doc, spot, lead);
  const through = fieldAt(doc, `${lead}.way`) === 'slot' ? [] : [slot];
  // a bare end is mended by the sleeve that is there; where it is bridged through its wall, only by a strong one
  return spot.kind === 'bare-lead' ? [...pushed, ...through, sleeve] : [sleeve, ...through, ...pushed];
}

/** A sleeve that is there, pushed further in by what is missing. */
function pushedIn(doc: DesignFile, { length, required }: WeakSpot, lead: string): readonly Act[] {
  const field = `${lead}.sleeve.into`;
  const now = lengthAt(doc, field);
  if (now === null || length === null || required === null || required <= length) return [];
  const amount = required - length;
  const set = [{ field, to: widthText(doc, field, upToStep(now + amount)) }];
  return [{ kind: 'sleeve', on: `${lead}.sleeve`, set, amount }];
}

// Whether a path ends on a lead, and on which: bare metal of it, or its sleeve where that is pierced or may be braid.

import type { Design } from '#model/design.ts';
import type { Leg } from '#solver/network/pieces.ts';
import type { ConductorRegion, Section } from '#solver/section/section.ts';
import { type OrientedLeg, regionsAt } from '#judge/paths/path-legs.ts';
import type { Nm } from '#units/quantity.ts';
import { laidLead } from './laid-lead.ts';

export interface LeadEnd {
  /** `P start`; null where it ends on none, or on either of two. */
  readonly lead: string | null;
  /** It runs in a lead's sleeve there. */
  readonly sleeved: boolean;
}

export const NO_LEAD: LeadEnd = { lead: null, sleeved: false };

const isLead = (r: ConductorRegion): boolean => r.of === 'lead' || r.of === 'link' || r.of === 'screen-lead';

/** Conductors at whose end the path stands on a lead, and not just where the lead meets its own winding, or runs in its sleeve. */
export function endsOnLead(
  section: Section,
  legs: readonly OrientedLeg[],
  ends: readonly ConductorRegion[],
): readonly string[] {
  const first = legs[0]!;
  const last = legs.at(-1)!;
  return [
    { conductor: first.conductors[0], leg: first },
    { conductor: last.conductors[1], leg: last },
  ].flatMap(({ conductor, leg }) => {
    const here = ends.filter((r) => r.conductor === conductor);
    const isOnLead = here.some(isLead) && !here.some((r) => !isLead(r));
    return isOnLead || isInSleeve(section, leg) ? [conductor] : [];
  });
}

/** It pierces a sleeve, or runs lengthwise in one that may be braid. */
function isInSleeve(section: Section, { kind, from, to }: Leg): boolean {
  if (kind !== 'through') return false;
  const middle: Leg['from'] = [((from[0] + to[0]) / 2) as Nm, ((from[1] + to[1]) / 2) as Nm];
  return regionsAt(section, middle).some((r) => r.kind === 'sleeve');
}

export function leadEnd(
  design: Design,
  section: Section,
  legs: readonly OrientedLeg[],
  ends: readonly ConductorRegion[],
): LeadEnd {
  const onLeads = endsOnLead(section, legs, ends);
  const named = section.lays.flatMap((name) => laidLead(design, name));
  const here = new Set(named.flatMap(({ circuit, lead }) => (onLeads.includes(circuit) ? [lead] : [])));
  const [lead = null] = here.size === 1 ? here : [];
  return { lead, sleeved: [legs[0]!, legs.at(-1)!].some((leg) => isInSleeve(section, leg)) };
}

// Leads of which nothing is known, as pairs of other circuits may find them: a sleeve of which nothing is shown is a way along
// the lead, where bare metal would shut it. A build of its own for every such circuit, of only the sections with such a lead,
// alone or beside one that is known: two of which nothing is known both lie bare, and so do all where they are of many circuits.

import type { Build } from '#solver/section/build.ts';
import type { LeadChoices } from './fill-leads.ts';

/** Circuits with such leads; of more it would cost as much as all else. */
const MOST_CIRCUITS = 4;

export function pastLeads(build: Build, choices: readonly LeadChoices[]): readonly Build[] {
  const sleeved = choices.flatMap((choice) => choice.sleeved ?? []);
  const isKnown = (group: string) => sleeved.every((lay) => lay.group !== group);
  const known = build.lays.filter(({ group }) => isKnown(group));
  const circuits = [...new Set(sleeved.map(({ circuit }) => circuit))];
  if (circuits.length > MOST_CIRCUITS) return [];
  return circuits.map((circuit) => {
    const own = sleeved.filter((lay) => lay.circuit === circuit);
    const groups = [...new Set(own.map(({ group }) => group))];
    return { ...build, lays: [...known, ...own], past: { circuit, groups } };
  });
}

// What a lead does, in a few words for the line behind which its fields lie.

import type { DesignFile } from '#model/schema/schema.ts';

type Leads = DesignFile['windings'][number]['leads'];

export function leadWords(leads: Leads): string {
  if (leads === undefined || leads === 'unknown') return 'leads: don’t know';
  if (leads === 'not-judged') return 'leads: left out of the judgement';
  return `leads: ${oneLead(leads.start)}; ${oneLead(leads.finish)}`;
}

function oneLead(lead: Exclude<Leads, string | undefined>['start']): string {
  if (lead === undefined || lead === 'unknown') return 'don’t know';
  const sleeve =
    lead.sleeve === null ? 'bare' : typeof lead.sleeve === 'object' ? 'sleeved' : 'sleeve unknown';
  return `${lead.exit ?? 'side unknown'}, ${lead.way ?? 'way unknown'}, ${sleeve}`;
}

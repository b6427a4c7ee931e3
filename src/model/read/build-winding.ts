// From the read file to the design, for windings: wire, leads and the links of a split winding.

import type * as z from 'zod';
import type { Lead, Link, Winding, WindingLeads, Wire } from '#model/design/winding.ts';
import { buildSleeve, orOpen } from './build-solid.ts';
import { linkGaps } from '#model/check/link-gaps.ts';
import { leftOut, type Unknown } from '#model/quantity/reading.ts';
import type { FileRead } from '#model/schema/schema.ts';
import type { screenLead } from '#model/schema/schema-winding.ts';

type WindingRead = FileRead['windings'][number];
type LeadRead = Exclude<z.output<typeof screenLead>, 'not-judged'>;

export const buildWinding = (read: WindingRead, layers: FileRead['layers']): Winding => ({
  id: read.id,
  circuit: read.circuit,
  wire: buildWire(read.wire),
  anchored: read.anchored ?? false,
  leads: buildLeads(read.leads),
  links: buildLinks(read.links, linkGaps(layers, read.id).length),
});

const buildWire = (read: WindingRead['wire']): Wire => ({
  kind: orOpen(read.kind),
  conductor: read.conductor ?? null,
  grade: orOpen(read.grade),
  insulationLayers: orOpen(read.insulationLayers),
  approval: orOpen(read.approval),
  overallDiameter: read.overallDiameter ?? null,
  litzStrands: read.litzStrands ?? null,
  served: read.served ?? false,
  withstand: read.withstand ?? leftOut,
});

function buildLeads(read: WindingRead['leads']): WindingLeads | 'not-judged' | Unknown {
  if (read === 'not-judged') return read;
  if (read === undefined || read === 'unknown') return orOpen<WindingLeads>(read);
  return { start: buildLead(read.start), finish: buildLead(read.finish) };
}

export function buildLead(read: LeadRead | undefined): Lead | Unknown {
  const lead = orOpen(read);
  if ('kind' in lead) return lead;
  return {
    at: orOpen(lead.at),
    exit: orOpen(lead.exit),
    way: orOpen(lead.way),
    sleeve: buildSleeve(lead.sleeve),
    bareFrom: lead.bareFrom ?? leftOut,
    crossTape: lead.crossTape ?? 0,
    apart: lead.apart ?? null,
  };
}

/** A list that is too short is filled up with links of which nothing is known: what is not told counts as worst. */
function buildLinks(read: WindingRead['links'], gaps: number): readonly Link[] | Unknown {
  if (read === undefined) return gaps === 0 ? [] : leftOut;
  if (read === 'unknown') return orOpen<readonly Link[]>(read);
  const told = read.map((link): Link => ({
    side: orOpen(link.side),
    way: orOpen(link.way),
    sleeve: buildSleeve(link.sleeve),
  }));
  const untold = Array.from({ length: Math.max(0, gaps - told.length) }, () => OPEN_LINK);
  return [...told, ...untold];
}

const OPEN_LINK: Link = { side: leftOut, way: leftOut, sleeve: leftOut };

// Every way in which leads, links and screen leads may lie. At worst all that an unknown leaves open stand side by
// side; at best each is a choice of which the better counts.

import type { Book } from '#books/questions/book.ts';
import type { Filling } from '#judge/assume/fill-context.ts';
import { plainly } from '#judge/verdict/assumed.ts';
import type { NotJudged } from '#judge/verdict/remark.ts';
import { linkGaps } from '#model/check/link-gaps.ts';
import type { Design } from '#model/design.ts';
import type { Lead, Link, Winding } from '#model/design/winding.ts';
import type { Unknown } from '#model/quantity/reading.ts';
import type { BuildSleeve, BuildWire, Lay } from '#solver/section/build.ts';
import type { Nm } from '#units/quantity.ts';
import type { Side } from '#units/terms.ts';
import { possibleSleeves } from '#judge/fill/solids/fill-sleeve.ts';
import { inSleeves, sleeveName, sleevesOf } from './lead-sleeves.ts';

/** Sets of lays of which one is true; at worst there is one set, that holds them all. */
export interface LeadChoices {
  readonly options: readonly (readonly Lay[])[];
  /** Of a lead of which nothing is known: in each sleeve that it may have, as pairs of other circuits may find it. */
  readonly sleeved?: readonly Lay[];
}

export interface FilledLeads {
  readonly choices: readonly LeadChoices[];
  /** What is left out of the judgement, in words. */
  readonly notJudged: readonly NotJudged[];
}

interface Where {
  readonly name: string;
  readonly field: string;
  readonly circuit: string;
  readonly layer: number;
  readonly wire: BuildWire;
  readonly kind: Lay['kind'];
  readonly upTo: number | null;
}

const SIDES: readonly Side[] = ['left', 'right'];

const NONE: LeadChoices = { options: [[]] };

export function fillLeads(
  filling: Filling,
  design: Design,
  wires: ReadonlyMap<string, BuildWire>,
  book: Book,
): FilledLeads {
  const windings = design.windings.map((winding, w) => {
    const mine = design.layers.flatMap((layer, i) =>
      layer.kind === 'winding' && layer.winding === winding.id ? [i] : [],
    );
    if (mine.length === 0) return { choices: [], notJudged: [] };
    const wire = wires.get(winding.id)!;
    const { choices, notJudged } = windingLeads(filling, winding, w, mine, wire, book);
    // nothing says how it gets over the divider
    const isOver = new Set(mine.map((i) => design.layers[i]!.chamber)).size > 1;
    const over: readonly NotJudged[] = isOver ? [{ what: 'link', winding: winding.id }] : [];
    return {
      choices: [...choices, ...linkChoices(filling, design, winding, w, wire, book)],
      notJudged: [...notJudged, ...over],
    };
  });
  const all = [...windings, screenLeads(filling, design, book)];
  return {
    choices: all.flatMap(({ choices }) => choices),
    notJudged: all.flatMap(({ notJudged }) => notJudged),
  };
}

/** The two ends of a winding, which lies in `mine` of the file's layers. */
function windingLeads(
  filling: Filling,
  { id, circuit, leads }: Winding,
  w: number,
  mine: readonly number[],
  wire: BuildWire,
  book: Book,
): FilledLeads {
  const field = `windings[${w}].leads`;
  const at = (end: 'start' | 'finish'): Where => {
    const layer = end === 'start' ? mine[0]! : mine.at(-1)!;
    return { name: `${id} ${end}`, field, circuit, layer, wire, kind: 'lead', upTo: null };
  };
  if (leads === 'not-judged') return { choices: [], notJudged: [{ what: 'leads', winding: id }] };
  if ('kind' in leads) {
    const best = filling.unknown(field, plainly('unsleeved-risers')) === 'best';
    const choices = best ? [] : ENDS.map((end) => unknownLead(filling, at(end), book));
    return { choices, notJudged: [{ what: 'stripped-ends', winding: id }] };
  }
  return {
    choices: ENDS.map((end) =>
      leadChoices(filling, leads[end], { ...at(end), field: `${field}.${end}` }, book),
    ),
    notJudged: ENDS.flatMap((end) => {
      const known = leads[end];
      const isOpen = isUnknown(known) || known.bareFrom.kind === 'unknown';
      return isOpen ? [{ what: 'stripped-end', of: `${id} ${end}` } as const] : [];
    }),
  };
}

const ENDS = ['start', 'finish'] as const;

const isUnknown = <T extends object>(value: T | Unknown): value is Unknown =>
  'kind' in value && value.kind === 'unknown';

/**
 * Nothing is known: an unsleeved riser, at either side. To its own circuit that is the worst; between two others bare metal
 * shuts a way that a sleeve of which nothing is shown would open.
 */
function unknownLead(filling: Filling, where: Where, book: Book): LeadChoices {
  const at = (side: Side, sleeve: BuildSleeve | null, name: string) =>
    lay(where, side, side, 'riser', sleeve, 0, null, name);
  const sleeves = possibleSleeves(filling, `${where.field}.sleeve`, book);
  return {
    options: [SIDES.map((side) => at(side, null, `${where.name} ${side}`))],
    sleeved: SIDES.flatMap((side) =>
      sleeves.map((sleeve) => at(side, sleeve, `${where.name} ${side} ${sleeveName(sleeve, sleeves)}`)),
    ),
  };
}

export function lay(
  where: Where,
  at: Side,
  exit: Side,
  way: Lay['way'],
  sleeve: BuildSleeve | null,
  crossTape: number,
  apart: Nm | null,
  name: string,
): Lay {
  const { circuit, layer, wire, kind, upTo } = where;
  return {
    name,
    group: where.name,
    circuit,
    layer,
    at,
    exit,
    way,
    wire,
    sleeve,
    crossTape,
    upTo,
    kind,
    apart,
  };
}

function leadChoices(filling: Filling, lead: Lead | Unknown, where: Where, book: Book): LeadChoices {
  const { field } = where;
  if (isUnknown(lead)) {
    const counted = filling.unknown(field, plainly('unsleeved-riser'));
    return counted === 'best' ? NONE : unknownLead(filling, where, book);
  }
  const sideOf = (side: Side | Unknown, name: string): { sides: readonly Side[]; best: boolean } =>
    typeof side === 'string'
      ? { sides: [side], best: false }
      : { sides: SIDES, best: filling.unknown(`${field}.${name}`, plainly('each-side')) === 'best' };
  const at = sideOf(lead.at, 'at');
  const exit = sideOf(lead.exit, 'exit');
  const way = wayOf(filling, lead.way, field);
  const sleeves = sleevesOf(filling, lead.sleeve, `${field}.sleeve`, book);
  if (sleeves.includes('strong')) return NONE;
  const many = at.sides.length * exit.sides.length > 1;
  const apart = lead.apart?.value ?? null;
  const lays = at.sides.flatMap((from) =>
    exit.sides.map((to) => {
      const name = many ? `${where.name} ${from === to ? to : `${from} to ${to}`}` : where.name;
      return inSleeves(sleeves, name, (sleeve, named) =>
        lay(where, from, to, way, sleeve, lead.crossTape, apart, named),
      );
    }),
  );
  return at.best || exit.best ? { options: lays } : { options: [lays.flat()] };
}

/** A lead over the rim lies like a riser: it climbs the flange above its own layer. */
function wayOf(filling: Filling, way: Lead['way'], field: string): Lay['way'] {
  if (typeof way === 'string') return way === 'slot' ? 'slot' : 'riser';
  return filling.unknown(`${field}.way`, plainly('riser')) === 'best' ? 'slot' : 'riser';
}

function linkChoices(
  filling: Filling,
  design: Design,
  winding: Winding,
  w: number,
  wire: BuildWire,
  book: Book,
): readonly LeadChoices[] {
  const gaps = linkGaps(design.layers, winding.id);
  const { links } = winding;
  if ('kind' in links) {
    const best = filling.unknown(`windings[${w}].links`, plainly('unsleeved-risers')) === 'best';
    if (best) return [];
  }
  return gaps.map(({ inner, outer }, i) => {
    const where: Where = {
      name: `${winding.id} link ${i + 1}`,
      field: `windings[${w}].links[${i}]`,
      circuit: winding.circuit,
      layer: inner,
      wire,
      kind: 'link',
      upTo: outer,
    };
    const link = 'kind' in links ? undefined : links[i];
    return link ? oneLink(filling, link, where, book) : unknownLead(filling, where, book);
  });
}

function oneLink(filling: Filling, link: Link, where: Where, book: Book): LeadChoices {
  const { field, name } = where;
  const sleeves = sleevesOf(filling, link.sleeve, `${field}.sleeve`, book);
  const unknownSide = typeof link.side !== 'string';
  const best = unknownSide && filling.unknown(`${field}.side`, plainly('each-side')) === 'best';
  if (sleeves.includes('strong')) return NONE;
  const sides = typeof link.side === 'string' ? [link.side] : SIDES;
  const lays = sides.map((side) =>
    inSleeves(sleeves, unknownSide ? `${name} ${side}` : name, (sleeve, named) =>
      lay(where, side, side, 'riser', sleeve, 0, null, named),
    ),
  );
  return best ? { options: lays } : { options: [lays.flat()] };
}

function screenLeads(filling: Filling, design: Design, book: Book): FilledLeads {
  const choices: LeadChoices[] = [];
  const notJudged: NotJudged[] = [];
  design.layers.forEach((layer, i) => {
    if (layer.kind !== 'screen' || layer.circuit === null || layer.lead === null) return;
    const wire = { overall: layer.thickness.value, metal: null, cover: null, bare: true, slumps: false };
    const name = `screen ${i + 1}`;
    const field = `layers[${i}].lead`;
    const where: Where = {
      name,
      field,
      circuit: layer.circuit,
      layer: i,
      wire,
      kind: 'screen-lead',
      upTo: null,
    };
    if (layer.lead === 'not-judged') {
      notJudged.push({ what: 'lead', of: name });
      return;
    }
    if (isUnknown(layer.lead) || layer.lead.bareFrom.kind === 'unknown')
      notJudged.push({ what: 'stripped-end', of: name });
    choices.push(leadChoices(filling, layer.lead, where, book));
  });
  return { choices, notJudged };
}

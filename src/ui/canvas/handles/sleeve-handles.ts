// Handles of the sleeves in a lead section: how far each reaches inside the flange that its lead leaves by.
// Which lead a section holds is told by the names of what is laid into it: `P start`, `P link 1`, `screen 2 lead`.

import type { Design } from '#model/design.ts';
import type { WindingLayer } from '#model/design/layer.ts';
import type { Lead, Sleeve } from '#model/design/winding.ts';
import type { Side } from '#units/terms.ts';
import { isKnown } from '#model/quantity/reading.ts';
import { mm, nm } from '#units/quantity.ts';
import type { DrawnSection, Handle } from './handle.ts';

interface Sleeved {
  readonly path: string;
  readonly label: string;
  readonly exit: Side | null;
  readonly sleeve: Sleeve;
}

/** The sleeves that this layer's leads wear in this section. */
export function sleeveHandles(design: Design, section: DrawnSection, index: number): readonly Handle[] {
  const band = section.bands.find(({ layer, kind }) => layer === index && kind !== 'crossing-lead');
  const face = band && section.chambers[band.chamber];
  if (face === undefined) return [];
  return sleevesOf(design, section, index).flatMap(({ path, label, exit, sleeve }) => {
    const shells = section.regions.filter(
      (region) =>
        region.kind === 'sleeve' && region.layer === index && region.x1 > face.x0 && region.x0 < face.x1,
    );
    if (exit === null || shells.length === 0 || !isKnown(sleeve.into)) return [];
    const left = exit === 'left';
    const at = left ? Math.max(...shells.map(({ x1 }) => x1)) : Math.min(...shells.map(({ x0 }) => x0));
    const inner = shells.filter((shell) => (left ? shell.x1 : shell.x0) === at);
    return [
      {
        id: path,
        path,
        part: index,
        axis: 'x',
        at: nm(at),
        span: [nm(Math.min(...inner.map(({ y0 }) => y0))), nm(Math.max(...inner.map(({ y1 }) => y1)))],
        origin: left ? face.x0 : face.x1,
        sign: left ? 1 : -1,
        value: sleeve.into.value,
        plusMinus: sleeve.into.plusMinus,
        least: mm(0),
        most: nm(Math.max(sleeve.into.value, face.x1 - face.x0)),
        label,
        isUnknown: false,
      } satisfies Handle,
    ];
  });
}

function sleevesOf(design: Design, section: DrawnSection, index: number): readonly Sleeved[] {
  const layer = design.layers[index];
  if (layer === undefined || layer.kind === 'tape') return [];
  if (layer.kind === 'screen') {
    const isLaid = section.lays.some((name) => name.startsWith('screen ') && name.includes(' lead'));
    const { lead } = layer;
    if (!isLaid || lead === null || lead === 'not-judged' || isUnknown(lead)) return [];
    return sleeved(lead, `layers[${index}].lead`, `sleeve of the screen's lead, layer ${index + 1}`);
  }
  return windingSleeves(design, section, layer, index);
}

function windingSleeves(
  design: Design,
  section: DrawnSection,
  layer: WindingLayer,
  index: number,
): readonly Sleeved[] {
  const at = design.windings.findIndex(({ id }) => id === layer.winding);
  const winding = design.windings[at];
  if (winding === undefined) return [];
  const own = design.layers.flatMap((each, place) =>
    each.kind === 'winding' && each.winding === winding.id ? [place] : [],
  );
  const isLaid = (what: string): boolean =>
    section.lays.some((name) => name.startsWith(`${winding.id} ${what}`));
  const { leads, links } = winding;
  const path = `windings[${at}]`;
  const ends = (['start', 'finish'] as const).flatMap((end) => {
    const from = end === 'start' ? own[0] : own.at(-1);
    if (leads === 'not-judged' || isUnknown(leads) || from !== index || !isLaid(end)) return [];
    const lead = leads[end];
    return isUnknown(lead) ? [] : sleeved(lead, `${path}.leads.${end}`, `sleeve of ${winding.id} ${end}`);
  });
  const linked = (isUnknown(links) ? [] : links).flatMap(({ side, sleeve }, place): readonly Sleeved[] => {
    if (sleeve === null || isUnknown(sleeve) || !isLaid(`link ${place + 1}`)) return [];
    const label = `sleeve of ${winding.id} link ${place + 1}`;
    return [
      { path: `${path}.links[${place}].sleeve.into`, label, exit: isUnknown(side) ? null : side, sleeve },
    ];
  });
  return [...ends, ...linked];
}

function sleeved(lead: Lead, path: string, label: string): readonly Sleeved[] {
  const { sleeve, exit } = lead;
  if (sleeve === null || isUnknown(sleeve)) return [];
  return [{ path: `${path}.sleeve.into`, label, exit: isUnknown(exit) ? null : exit, sleeve }];
}

const isUnknown = (value: unknown): value is { readonly kind: 'unknown'; readonly leftOut: boolean } =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'unknown';

// Random design files as plain objects, the same file read and judged, and the changes to it that keep its meaning.

import { readDesign } from '#model/read/read-design.ts';
import { judge } from '#judge/judging/judge.ts';
import { knownIds } from '#judge/conductors/known-ids.ts';
import type { Verdict } from '#judge/verdict/verdict.ts';
import type { Section } from '#solver/section/section.ts';

// eslint-disable-next-line @typescript-eslint/no-explicit-any -- a design file before it is read has no type
export type File = any;

export const copyOf = (file: object, change: (copy: File) => void): File => {
  const copy = JSON.parse(JSON.stringify(file)) as File;
  change(copy);
  return copy;
};

const judged = new Map<string, Verdict | null>();
const drawn = new WeakMap<Verdict, readonly Section[]>();

/** Null where the change made the file invalid. Every law begins with the same files, so they are kept. */
export function verdictOf(file: object): Verdict | null {
  const text = JSON.stringify(file);
  const known = judged.get(text);
  if (known !== undefined) return known;
  const read = readDesign(JSON.parse(text), knownIds);
  const judgement = read.kind === 'bad' ? null : judge(read.design);
  if (judgement) drawn.set(judgement.verdict, judgement.sections);
  judged.set(text, judgement?.verdict ?? null);
  return judgement?.verdict ?? null;
}

/** The sections that a verdict of `verdictOf` was found on. */
export const sectionsBehind = (verdict: Verdict): readonly Section[] => drawn.get(verdict) ?? [];

const other = (side: string): string => (side === 'left' ? 'right' : 'left');
const swapped = ({ left, right }: File): File => ({ left: right, right: left });

/** Left and right exchanged throughout. */
export function mirrored(file: object): File {
  return copyOf(file, (copy) => {
    const { chambers, dividers } = copy.former;
    const last = chambers.length - 1;
    for (const layer of copy.layers) {
      const { width } = chambers[layer.chamber];
      layer.chamber = last - layer.chamber;
      if (layer.margins) layer.margins = swapped(layer.margins);
      if (layer.inset) layer.inset = swapped(layer.inset);
      if (layer.extent) layer.extent = { from: width - layer.extent.to, to: width - layer.extent.from };
    }
    for (const winding of copy.windings) for (const link of winding.links ?? []) link.side = other(link.side);
    eachLead(copy, (lead) => {
      // links have a side, which is mirrored above
      if (lead.at === undefined) return;
      lead.at = other(lead.at);
      lead.exit = other(lead.exit);
    });
    chambers.reverse();
    dividers.reverse();
  });
}

/** Every lead-out, screen lead and link that is judged. */
export function eachLead(copy: File, change: (lead: File) => unknown): void {
  const judgedLeads = (lead: File) => (lead && lead !== 'not-judged' ? [lead] : []);
  for (const layer of copy.layers) judgedLeads(layer.lead).forEach(change);
  for (const { leads, links } of copy.windings) {
    if (leads !== 'not-judged') [leads.start, leads.finish].forEach(change);
    (links ?? []).forEach(change);
  }
}

/** One layer of tape of several plies wound as two: the first ply, then the rest. */
export function split(file: object, index: number): File {
  return copyOf(file, (copy) => {
    const layer = copy.layers[index];
    copy.layers.splice(index + 1, 0, { ...JSON.parse(JSON.stringify(layer)), plies: layer.plies - 1 });
    layer.plies = 1;
    const moved = (field: string): readonly string[] => {
      const at = Number(/^layers\[(\d+)\]/.exec(field)?.[1] ?? -1);
      const next = field.replace(`[${at}]`, `[${at + 1}]`);
      return at < index ? [field] : at === index ? [field, next] : [next];
    };
    for (const entry of copy.evidence) entry.fields = entry.fields.flatMap(moved);
  });
}

/** Other names, and lists that have no order told backwards. */
export function renamed(file: object): File {
  return copyOf(file, (copy) => {
    const last = copy.windings.length - 1;
    for (const circuit of copy.circuits) circuit.id = renamedCircuit(circuit.id);
    for (const layer of copy.layers) {
      if (layer.circuit) layer.circuit = renamedCircuit(layer.circuit);
      if (layer.winding) layer.winding = `coil-${layer.winding}`;
      if (layer.id) layer.id = `foil-${layer.id}`;
    }
    for (const winding of copy.windings) {
      winding.circuit = renamedCircuit(winding.circuit);
      winding.id = `coil-${winding.id}`;
    }
    for (const working of copy.workingVoltages ?? []) working.between = working.between.map(renamedCircuit);
    for (const entry of copy.evidence) {
      entry.fields = entry.fields.map((field: string) =>
        field.replace(/^windings\[(\d+)\]/, (_, at) => `windings[${last - Number(at)}]`),
      );
    }
    copy.windings.reverse();
    copy.circuits.reverse();
  });
}

export const renamedCircuit = (id: string): string =>
  ({ pri: 'zz', out: 'mm', aux: 'aa', gnd: 'kk' })[id] ?? id;

/** Random builds are small; stretched along the axis and under a high former they have distances to lose. */
export function roomy(copy: File): void {
  const wide = (value: number) => Number((value * 6).toFixed(3));
  copy.former.height = 16;
  for (const chamber of copy.former.chambers) chamber.width = wide(chamber.width);
  for (const layer of copy.layers) {
    for (const margin of Object.values<File>(layer.margins ?? {})) {
      if (typeof margin.width === 'number') margin.width = wide(margin.width);
    }
    for (const side of Object.keys(layer.inset ?? {})) layer.inset[side] = wide(layer.inset[side]);
    for (const end of Object.keys(layer.extent ?? {})) layer.extent[end] = wide(layer.extent[end]);
  }
}

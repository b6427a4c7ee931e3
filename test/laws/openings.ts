// What of a build may be left open, one field or one winding at a time: every field that says how it is insulated or where it
// lies. Each opening is the known build with something in it `unknown`; a list of them for each build.

import { copyOf, type File } from './change-design.ts';

export type Openings = (file: File) => readonly File[];

const SIDES = ['left', 'right'] as const;
const ENDS = ['start', 'finish'] as const;

/** `change` returns false where it has nothing to open. */
const opened = (file: File, change: (copy: File) => boolean): readonly File[] => {
  let does = false;
  const copy = copyOf(file, (design) => void (does = change(design)));
  return does ? [copy] : [];
};

const perWinding =
  (change: (winding: File, layers: readonly File[]) => boolean): Openings =>
  (file) =>
    file.windings.flatMap((_: File, at: number) =>
      opened(file, (copy) => {
        const winding = copy.windings[at];
        return change(
          winding,
          copy.layers.filter((layer: File) => layer.winding === winding.id),
        );
      }),
    );

const perLayer =
  (kind: string, change: (layer: File) => boolean): Openings =>
  (file) =>
    file.layers.flatMap((layer: File, at: number) =>
      layer.kind === kind ? opened(file, (copy) => change(copy.layers[at])) : [],
    );

/** Each lead-out and each screen's lead that is judged, one at a time; `change` as above. */
const perLead =
  (change: (lead: File) => boolean): Openings =>
  (file) => {
    const places = [
      ...file.windings.flatMap(({ leads }: File, w: number) =>
        leads === 'not-judged' ? [] : ENDS.map((end) => (copy: File) => copy.windings[w].leads[end]),
      ),
      ...file.layers.flatMap(({ lead }: File, at: number) =>
        lead && lead !== 'not-judged' ? [(copy: File) => copy.layers[at].lead] : [],
      ),
    ] as ((copy: File) => File)[];
    return places.flatMap((place) => opened(file, (copy) => change(place(copy))));
  };

function unknown(of: File, field: string): boolean {
  of[field] = 'unknown';
  return true;
}

const widths = (sides: readonly ('left' | 'right')[]) => (layer: File) =>
  sides.every((side) => unknown(layer.margins[side], 'width'));

function openLeads(winding: File): boolean {
  return winding.leads !== 'not-judged' && unknown(winding, 'leads');
}

function openWire({ wire }: File): boolean {
  // bare metal that touches is worse than enamel that does, as which an unknown wire counts
  return wire.kind !== 'bare' && unknown(wire, 'kind');
}

const isCovered = ({ wire }: File): boolean => wire.kind === 'layer-insulated';

export const OPENINGS: Readonly<Record<string, Openings>> = {
  'the kind of a wire': perWinding(openWire),
  'the layers of a cover': perWinding((w) => isCovered(w) && unknown(w.wire, 'insulationLayers')),
  'the approval of a cover': perWinding((w) => isCovered(w) && unknown(w.wire, 'approval')),
  'the grade of a wire': perWinding((w) => !isCovered(w) && unknown(w.wire, 'grade')),
  'a left margin': perLayer('winding', widths(['left'])),
  'both margins': perLayer('winding', widths(SIDES)),
  'every margin of a winding': perWinding((_, layers) => layers.map(widths(SIDES)).every(Boolean)),
  'a screen’s margins': perLayer('screen', widths(SIDES)),
  'how many plies': perLayer('tape', (layer) => unknown(layer, 'plies')),
  'what a ply stands': perLayer('tape', (layer) => unknown(layer, 'plyWithstand')),
  'where a lead begins': perLead((lead) => unknown(lead, 'at')),
  'where a lead leaves': perLead((lead) => unknown(lead, 'exit')),
  'the way of a lead': perLead((lead) => unknown(lead, 'way')),
  'the sleeve of a lead': perLead((lead) => unknown(lead, 'sleeve')),
  'the wall of a sleeve': perLead(({ sleeve }) => sleeve !== null && unknown(sleeve, 'wall')),
  'how far a sleeve reaches': perLead(({ sleeve }) => sleeve !== null && unknown(sleeve, 'into')),
  'the leads of a winding': perWinding(openLeads),
  'the links of a winding': perWinding((w) => w.links.length > 0 && unknown(w, 'links')),
  'all of a winding': perWinding((winding, layers) => {
    openLeads(winding);
    layers.forEach(widths(SIDES));
    return openWire(winding);
  }),
  'the gap to the core': (file) => opened(file, ({ core }) => unknown(core, 'outerGap')),
  'the bond of the core': (file) => opened(file, ({ core }) => unknown(core, 'bond')),
  'the flange': (file) => opened(file, ({ former }) => unknown(former, 'flange')),
  'the wall': (file) => opened(file, ({ former }) => unknown(former, 'wall')),
};

/** A build with one length known to within a little, and to within more: of this the wider never reaches more. */
export type Widenings = (file: File) => readonly (readonly [narrow: File, wide: File])[];

/** `place` gives the object that holds the field, or null. */
const widened =
  (field: string, places: (file: File) => readonly ((copy: File) => File)[]): Widenings =>
  (file) =>
    places(file).flatMap((place) => {
      const value = place(file)?.[field];
      if (typeof value !== 'number' || value === 0) return [];
      const within = (share: number): File =>
        copyOf(file, (copy) => {
          place(copy)[field] = { value, plusMinus: Number((value * share).toFixed(4)) };
        });
      return [[within(0.1), within(0.6)] as const];
    });

const windingsOf = (file: File): readonly ((copy: File) => File)[] =>
  file.windings.map((_: File, w: number) => (copy: File) => copy.windings[w].wire);

const marginsOf =
  (side: 'left' | 'right') =>
  (file: File): readonly ((copy: File) => File)[] =>
    file.layers.flatMap((layer: File, at: number) =>
      layer.margins ? [(copy: File) => copy.layers[at].margins[side]] : [],
    );

const insetsOf = (file: File): readonly ((copy: File) => File)[] =>
  file.layers.flatMap((layer: File, at: number) =>
    layer.inset ? [(copy: File) => copy.layers[at].inset] : [],
  );

const sleevesOf = (file: File): readonly ((copy: File) => File)[] =>
  file.windings.flatMap(({ leads }: File, w: number) =>
    leads === 'not-judged' ? [] : ENDS.map((end) => (copy: File) => copy.windings[w].leads[end].sleeve),
  );

export const WIDENINGS: Readonly<Record<string, Widenings>> = {
  'a left margin': widened('width', marginsOf('left')),
  'a right margin': widened('width', marginsOf('right')),
  'the inset of a tape': widened('left', insetsOf),
  'a wire over all': widened('overallDiameter', windingsOf),
  'the wall of a sleeve': widened('wall', sleevesOf),
  'how far a sleeve reaches': widened('into', sleevesOf),
  'the gap to the core': widened('outerGap', () => [(copy) => copy.core]),
  'the flange': widened('flange', () => [(copy) => copy.former]),
  'the wall': widened('wall', () => [(copy) => copy.former]),
};

export interface Betterment {
  readonly file: File;
  /** Only pairs of this circuit are held to it; null: all. */
  readonly of: string | null;
}

export type Betterments = (file: File) => readonly Betterment[];

/** What never worsens a build: held ends, filled margins, a cover as thick as the enamel with it. */
export const BETTERMENTS: Readonly<Record<string, Betterments>> = {
  'taping the ends of a winding down': (file) =>
    file.windings.flatMap(({ anchored }: File, w: number) =>
      anchored
        ? []
        : [
            {
              of: null,
              file: copyOf(file, (copy) => {
                copy.windings[w].anchored = true;
                copy.evidence[0].fields.push(`windings[${w}].anchored`);
              }),
            },
          ],
    ),
  'filling the margins of a winding': (file) =>
    file.layers.flatMap(({ kind, margins }: File, at: number) =>
      kind !== 'winding' || SIDES.every((side) => margins[side].filled && margins[side].height === undefined)
        ? []
        : [
            {
              of: null,
              file: copyOf(file, (copy) => {
                for (const side of SIDES) {
                  const margin = copy.layers[at].margins[side];
                  margin.filled = true;
                  delete margin.height;
                }
              }),
            },
          ],
    ),
  // between two others what is covered no longer stands in the way as a third conductor
  'a cover instead of enamel': (file) =>
    file.windings.flatMap(({ wire, circuit }: File, w: number) =>
      wire.kind !== 'enamelled'
        ? []
        : [
            {
              of: circuit as string,
              file: copyOf(file, (copy) => {
                const covered = { kind: 'layer-insulated', insulationLayers: 3, approval: 'wire-annex' };
                Object.assign(copy.windings[w].wire, covered);
                delete copy.windings[w].wire.grade;
              }),
            },
          ],
    ),
};
